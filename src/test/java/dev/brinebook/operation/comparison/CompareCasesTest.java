// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.comparison;

import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import dev.brinebook.http.Served;
import dev.brinebook.http.TestServer;
import dev.brinebook.model.ModelChange;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What two versions answer to a case, value by value, and why. */
class CompareCasesTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String PATH = "/v1/comparison";
    private static final String SMALLEST = "\"calculator\": \"convertHardness\", \"thisCase\": " + Served.SMALLEST;

    static Stream<String> calculators() {
        return Main.OPERATIONS.stream().map(Operation::id).filter(id -> !id.equals("compareCases"));
    }

    @ParameterizedTest
    @MethodSource("calculators")
    void aVersionDoesNotDifferFromItself(String calculator) throws IOException {
        String example = Main.OPERATIONS.stream().filter(one -> one.id().equals(calculator)).findFirst().orElseThrow().examples().get(0);
        JsonNode answer = ask("{\"calculator\": \"" + calculator + "\", \"modelVersion\": \"2.2.0\", \"otherModelVersion\": \"2.2.0\","
                + "\"thisCase\": " + TestServer.example(calculator + "." + example) + "}");
        assertEquals(0, answer.path("differences").size(), answer.path("differences").toString());
        assertEquals(0, answer.path("changes").size());
        assertTrue(answer.path("equalNumbers").asInt() > 0);
        assertEquals(answer.at("/before"), answer.at("/after"));
    }

    /** Counts by hand: of the two committed cases, what the changes move; the second case gives the size of no tank. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # example   | differences | cause                  | pointer                 | before  | after
            well-family | 9           | brine-by-weight        | /brine/dilutedPercent   | 9.53065 | 9.50266
            apartment   | 17          | assumed-tanks-refuse-nothing | /candidates/0/continuousFlow/limit | 10.5709 | 13.3681
            """)
    void namesTheChangeThatCausesADifference(String example, int differences, String cause, String pointer, double before, double after)
            throws IOException {
        JsonNode answer = ask(TestServer.example("compareCases." + example));
        assertEquals(differences, answer.path("differences").valueStream()
                .filter(each -> (each.path("causes") + " " + each.path("together")).equals("[\"" + cause + "\"] false")).count());
        JsonNode one = answer.path("differences").valueStream().filter(each -> each.path("pointer").asText().equals(pointer)).findFirst()
                .orElseThrow();
        assertEquals(before, one.at("/before/value").asDouble());
        assertEquals(after, one.at("/after/value").asDouble());
        assertEquals(one.at("/after/value").decimalValue().subtract(one.at("/before/value").decimalValue()).doubleValue(),
                one.path("change").asDouble(), 1e-12);
        for (JsonNode change : answer.path("changes")) {
            assertTrue(!change.path("id").asText().equals(cause) || differences == change.path("differences").asInt(), change.toString());
            assertEquals("2.3.0", change.path("version").asText());
        }
        assertEquals(ModelChange.values().length, answer.path("changes").size());
    }

    /** What is true or false is a flag, and has no code; a change is worded in the language of the caller. */
    @Test
    void aFlagIsNoCode() throws IOException {
        String cases = "{\"calculator\": \"designCycle\", \"thisCase\": %s, \"otherCase\": %s}";
        JsonNode one = JSON.readTree(TestServer.example("designCycle.well-family"));
        JsonNode other = one.deepCopy();
        ((ObjectNode) other.at("/softener")).putObject("tankHeight").put("value", 40).put("unit", "in");
        JsonNode answer = ask(String.format(cases, one, other));
        List<String> flags = answer.path("differences").valueStream().filter(each -> each.at("/after").has("flag"))
                .map(each -> each.path("before") + " " + each.path("after")).distinct().toList();
        assertTrue(flags.contains("{\"flag\":true} {\"flag\":false}"), answer.toString());
        assertTrue(answer.findValuesAsText("code").stream().noneMatch(code -> code.equals("true") || code.equals("false")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            en | Brine flow and suction
            de | Soledurchfluss und Ansaugdurchfluss
            es | El caudal de salmuera
            fr | Le débit de saumure
            """)
    void wordsAChangeInTheLanguageOfTheCaller(String language, String begins) {
        Served.given().contentType("application/json").header("Accept-Language", language)
                .body(TestServer.example("compareCases.well-family"))
                .post(PATH).then().statusCode(200).body("changes.find { it.id == 'brine-by-weight' }.text", startsWith(begins));
    }

    @ParameterizedTest
    @CsvSource({"well-family", "apartment"})
    void isTheSameBackwards(String example) throws IOException {
        JsonNode there = ask(TestServer.example("compareCases." + example));
        JsonNode request = JSON.readTree(TestServer.example("compareCases." + example));
        JsonNode back = ask("{\"calculator\": " + request.path("calculator") + ", \"thisCase\": " + request.path("thisCase")
                + ", \"modelVersion\": \"2.3.0\", \"otherModelVersion\": \"2.2.0\"}");
        assertEquals(there.path("before"), back.path("after"));
        assertEquals(there.path("after"), back.path("before"));
        assertEquals(there.path("equalNumbers"), back.path("equalNumbers"));
        assertEquals(lines(there, "before", "after", 1), lines(back, "after", "before", -1));
    }

    private static List<String> lines(JsonNode answer, String before, String after, int sign) {
        List<String> lines = new ArrayList<>();
        answer.path("differences").forEach(one -> lines.add(one.path("pointer").asText().replaceAll("^/cautions/\\d+", "/cautions/*") + " "
                + one.path(before) + " " + one.path(after) + " " + (0.0 + sign * one.path("change").asDouble()) + one.path("causes")));
        Collections.sort(lines); // what one answer alone has comes last
        return lines;
    }

    /** A test with less iron: calcium and magnesium of the water are the same, and no change of the model is asked for. */
    @Test
    void comparesTwoCasesByOneVersion() throws IOException {
        JsonNode answer = ask(TestServer.example("compareCases.two-cases"));
        assertEquals("2.3.0 2.3.0", answer.at("/before/modelVersion").asText() + " " + answer.at("/after/modelVersion").asText());
        assertEquals(0, answer.path("changes").size());
        assertTrue(answer.path("differences").size() > 0);
        answer.path("differences").forEach(one -> assertTrue(one.path("causes").isMissingNode() && one.path("together").isMissingNode()));
        assertTrue(answer.toString().contains("{\"pointer\":\"/hardness/controllerSetting\",\"before\":{\"value\":28,\"unit\":\"gpg\"},"
                + "\"after\":{\"value\":25,\"unit\":\"gpg\"},\"change\":-3}"), answer::toString);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            # request, in part                                                         | pointer                    | code         | did you mean
            "calculator": "asess", "thisCase": {}                                       | /calculator                | unknownValue | assess
            "calculator": "compareCases", "thisCase": {}                                | /calculator                | unknownValue |
            "calculator": "convertHardness"                                            | /thisCase                   | missing      |
            "calculator": "convertHardness", "thisCase": []                             | /thisCase                   | wrongType    |
            "calculator": "convertHardness", "thisCase": {"hardnes": 1}                 | /thisCase/hardnes           | unknownField | hardness
            "calculator": "convertHardness", "thisCase": {"hardness": {"value": -1, "unit": "gpg"}} | /thisCase/hardness/value | outOfRange |
            "calculator": "convertHardness", "thisCase": {"hardness": {"value": null, "unit": "gpg"}} | /thisCase/hardness/value | nullValue |
            "calculator": "convertHardness", "thisCase": {"hardness": {"value": 1, "unit": "gpg"}}, "otherCase": {} | /otherCase/hardness | missing |
            "calculator": "convertHardness", "thisCase": {}, "modelVersion": "1.0.0"     | /modelVersion             | unknownValue |
            "calculator": "convertHardness", "thisCase": {}, "otherModelVersion": "2.3.1"  | /otherModelVersion      | unknownValue | 2.3.0
            "calculator": "convertHardness", "thisCase": {}, "otherCase": {}, "otherModelVersion": "2.3.0" | /otherModelVersion | inconsistent |
            """)
    void pointsToTheFault(String request, String pointer, String code, String meant) {
        TestServer.post(PATH, "{" + request + "}").statusCode(422).body("errors[0].pointer", equalTo(pointer),
                "errors[0].code", equalTo(code), "errors[0].didYouMean", equalTo(meant));
    }

    /** The header sets the version to compare with, and is that of the answer. */
    @Test
    void theHeaderChoosesTheSecondVersion() {
        Served.given().header("Model-Version", "2.2.0").contentType("application/json").body("{" + SMALLEST + "}").post(PATH).then()
                .statusCode(200).header("Model-Version", "2.2.0").body("before.modelVersion", equalTo("2.2.0"),
                        "after.modelVersion", equalTo("2.2.0"), "modelVersion", equalTo("2.2.0"), "differences", hasSize(0));
    }

    @Test
    void tellsWhoseAdviceChangedLineByLine() throws IOException {
        String well = JSON.readTree(TestServer.example("compareCases.well-family")).toString();
        String[] lines = Served.given().contentType("application/x-ndjson")
                .body((well + "\n{" + SMALLEST + "}\n{}\n").getBytes(StandardCharsets.UTF_8)).post("/v1/bulk/compareCases")
                .asString().split("\n");
        assertEquals(3, lines.length);
        assertEquals(9, JSON.readTree(lines[0]).at("/answer/differences").size());
        assertEquals(0, JSON.readTree(lines[1]).at("/answer/differences").size());
        assertEquals(422, JSON.readTree(lines[2]).at("/status").asInt());
        Served.given().contentType("text/csv").body("calculator\nassess\n".getBytes(StandardCharsets.UTF_8))
                .post("/v1/bulk/compareCases").then().statusCode(415);
    }

    private static JsonNode ask(String request) throws IOException {
        return JSON.readTree(TestServer.post(PATH, request).statusCode(200).extract().asString());
    }
}
