// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.brinebook.Main;
import dev.brinebook.api.Explainer;
import dev.brinebook.api.Operation;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.http.json.JsonWriter;
import dev.brinebook.model.Model;
import dev.brinebook.source.Sources;
import dev.brinebook.text.Language;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Single results explained, held to the whole answer of the operation. */
class ExplanationTest {

    private static final JsonMapper JSON = JsonMapper.builder().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS).build();
    private static final String PATH = "/v1/explanation/";

    private static JsonNode explained(String calculator, String example, String... pointers) throws JsonProcessingException {
        return JSON.readTree(TestServer.post(PATH + calculator + "?pointer=" + String.join("&pointer=", pointers),
                TestServer.example(calculator + "." + example)).statusCode(200).extract().asString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            assess         | well-family | /settings/reserve          | FELLER          | 1 of at most 1           | 1 1 2.2 3
            assess         | well-family | /settings/meterVolume      | WQP-2009        | 29,700 grains ÷ 28          | 29700 28
            assess         | well-family | /settings/saltPerRegeneration | WQP-2009   | Salt dose                   | *
            assess         | well-family | /settings/capacity         | CP-WORKING-TABLE | What                  | *
            assess         | well-family | /demand/highestDailyUse    | DAIAD           | 0.999 quantile              | ``
            assess         | well-family | /settings/dayOverride      | WT-2010         | at least every 3 days       | 3 14 0.3
            assess         | well-family | /hardness/compensated      | CP-IRON-FACTORS | tested hardness + factor ×  | ``
            assess         | apartment   | /settings/hardness/value   | CP-IRON-FACTORS | ``                          | *
            convertHardness | us         | /inEveryUnit/1             | NIST-SP811      | ``                          | ``
            sizeSoftener   | well-family | /candidates/0/daysBetweenRegenerations | FELLER | expected regenerations   | *
            """)
    void theFormulaHasItsNumbersAndItsSource(String calculator, String example, String pointer, String key, String words, String numbers)
            throws JsonProcessingException {
        JsonNode one = explained(calculator, example, pointer).at("/explanations/0");
        assertEquals(pointer, one.path("pointer").asText());
        JsonNode whole = JSON.readTree(TestServer.post(operation(calculator).path(), TestServer.example(calculator + "." + example))
                .extract().asString());
        assertEquals(whole.at(pointer), one.path("value"), "as in the answer");
        JsonNode formula = one.path("formulas").get(0);
        assertTrue(one.path("formulas").findValuesAsText("key").contains(key), one.toString());
        assertTrue(formula.path("formula").asText().replace('\u00a0', ' ').contains(words), formula.toString());
        if (!numbers.equals("*")) {
            assertEquals(numbers, String.join(" ", formula.path("numbers").findValuesAsText("value")));
        }
        assertEquals(Sources.get(formula.at("/source/key").asText()).cited(), formula.at("/source/title").asText());
    }

    private static Operation<?, ?> operation(String id) {
        return Main.OPERATIONS.stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow();
    }

    /** The inputs by hand, from how each is calculated; origins as in the request. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # calculator      | example     | pointer                 | it rests on                                        | not on
            assess            | well-family | /hardness/tested        | /water/hardness caller                             | /water/iron
            assess            | well-family | /hardness/compensated   | /water/compensation/set default                    | /water/sodium
            assess            | well-family | /hardness/compensated   | /water/iron caller                                 | /prices/saltBag
            assess            | well-family | /settings/hardness      | /water/hardnessUncertainty caller                  | /household/people
            assess            | well-family | /settings/hardness      | /preferences/controller/hardnessStep default       | /seed
            assess            | well-family | /settings/reserve       | /preferences/serviceStandard/hardDaysPerYear default | /seed
            assess            | well-family | /settings/reserve       | /household/usePerPerson country                    | /retrofit/cost
            assess            | well-family | /settings/reserve/value | /household/dayToDayVariation default               | /household/continuousFlow
            assess            | well-family | /demand/dailyUse        | /household/people caller                           | /water/hardness
            assess            | well-family | /retrofit/payback       | /prices/discountPercentPerYear default             | /seed
            assess            | well-family | /fit/capacity           | columnStages default                               | saltDoseStep
            designCycle       | well-family | /brine/saltPerRegeneration | /softener/saltDose caller                       | /softener/tankHeight
            convertHardness   | us          | /inEveryUnit/1          | /hardness caller                                   | /seed
            estimatePeakFlow  | well-family | /exact/peak             | /percentile default                                | /people
            """)
    void aResultComesWithWhatItRestsOn(String calculator, String example, String pointer, String input, String not)
            throws JsonProcessingException {
        List<String> inputs = new ArrayList<>();
        explained(calculator, example, pointer).at("/explanations/0/assumptions").forEach(one -> inputs.add(
                one.path("pointer").asText(one.path("name").asText()) + " " + one.path("origin").asText()));
        assertTrue(inputs.contains(input), inputs.toString());
        assertTrue(inputs.stream().noneMatch(one -> one.startsWith(not + " ")), inputs.toString());
        assertEquals(inputs.stream().sorted(Comparator.comparing(one -> !one.endsWith("caller"))).toList(), inputs, "given ones first");
    }

    /** What grids of doses, reserves and hours hide in a single case: each was seen to move the result of this household by trial. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            # result                                   | inputs that moved it
            /settings/saltPerRegeneration              | /water/iron /household/dayToDayVariation
            /settings/capacity                         | /household/dayToDayVariation
            /settings/reserve                          | /softener/resinAgeYears /softener/yearlyCapacityLossPercent
            /year/metered/salt                         | /softener/yearlyCapacityLossPercent
            /retrofit/payback/simplePaybackYears       | /water/manganese
            """)
    void aResultRestsOnAllThatCanMoveIt(String pointer, String inputs) throws IOException {
        JsonNode assumptions = explainedWell(pointer).path("assumptions");
        assertEquals(List.of(), Stream.of(inputs.split(" ")).filter(input -> !assumptions.findValuesAsText("pointer").contains(input))
                .toList());
    }

    /** By hand from the answer: 480 EUR / 75.94 EUR a year over the corrected settings. */
    @Test
    void aNumberThatMayNotExistComesWithItsValue() throws IOException {
        assertEquals(6.32, explainedWell("/retrofit/payback/simplePaybackYears").path("value").doubleValue(), 0.005);
    }

    private static JsonNode explainedWell(String pointer) throws IOException {
        return JSON.readTree(TestServer.post(PATH + "assess?pointer=" + pointer, Files.readString(Path.of(
                "src/test/resources/dependencies/well-metric.json"))).statusCode(200).extract().asString()).at("/explanations/0");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            assess       | well-family | /settings/capacity        | /settings/saltDose /fit/resinVolume
            assess       | well-family | /settings/saltPerRegeneration | /settings/saltDose /fit/resinVolume
            assess       | well-family | /tradeOff/doses/0/capacity | /tradeOff/doses/0/saltDose
            assess       | well-family | /softenedWater/addedSodium | /hardness/real
            assess       | well-family | /year/metered/salt        | /year/metered/regenerations
            assess       | well-family | /hardness/compensated     | /hardness/tested /hardness/iron /hardness/manganese
            assess       | well-family | /settings/meterVolume     | /settings/capacity /settings/hardness
            assess       | well-family | /fit/fullChargeDays       | /fit/capacity /demand/dailyLoad
            assess       | well-family | /tradeOff/doses/1/costPerYear | /tradeOff/doses/1/saltPerYear /tradeOff/doses/1/waterPerYear
            assess       | well-family | /year/saltSaved           | /year/asFound/salt /year/metered/salt
            assess       | well-family | /refill/saltInTenthMinutes | /refill/tenthMinutes /refill/flow /refill/saltInWater
            designCycle  | well-family | /waterPerCapacity         | /cycle/water /capacity
            compareCases | well-family | /differences/0/change     | /differences/0/before /differences/0/after
            """)
    void aResultComesWithTheResultsItTakes(String calculator, String example, String pointer, String operands)
            throws JsonProcessingException {
        JsonNode from = explained(calculator, example, pointer).at("/explanations/0/from");
        JsonNode whole = JSON.readTree(TestServer.post(operation(calculator).path(), TestServer.example(calculator + "." + example))
                .extract().asString());
        assertEquals(operands, String.join(" ", from.findValuesAsText("pointer")));
        from.forEach(one -> assertEquals(whole.at(one.path("pointer").asText()), one.path("value"), "as in the answer"));
    }

    @Test
    void aComparedValueIsExplainedWithItsValue() throws JsonProcessingException {
        assertEquals("{\"value\":29.3023,\"unit\":\"gal\"}", explained("compareCases", "well-family", "/differences/0/before")
                .at("/explanations/0/value").toString());
    }

    @Test
    void comesWithTheCautionsToShow() throws JsonProcessingException {
        JsonNode answer = explained("assess", "well-family", "/hardness/compensated");
        assertFalse(answer.path("cautions").isEmpty());
        assertFalse(answer.path("cautions").findValuesAsText("severity").contains("info"));
    }

    @Test
    void aPartExplainsAllThatItHolds() throws JsonProcessingException {
        JsonNode one = explained("assess", "well-family", "/settings").at("/explanations/0");
        assertFalse(one.has("value"));
        assertTrue(one.path("formulas").findValuesAsText("pointer").containsAll(List.of("/settings/hardness", "/settings/reserve",
                "/settings/regenerationHour")));
        JsonNode every = explained("assess", "well-family", "/tradeOff/doses/*/reserve").at("/explanations/0");
        assertFalse(every.has("value"));
        assertTrue(every.path("formulas").findValuesAsText("pointer").contains("/tradeOff/doses/*/reserve"));
        assertEquals(every.path("formulas"), explained("assess", "well-family", "/tradeOff/doses/3/reserve")
                .at("/explanations/0/formulas"), "every element has the formulas of each");
    }

    static Stream<Arguments> examples() {
        return Main.OPERATIONS.stream().flatMap(operation -> operation.examples().stream()
                .map(name -> Arguments.of(operation.id(), name, operation)));
    }

    /** Without the way over HTTP, and with all pointers of an answer at once, which no caller may send. */
    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("examples")
    <Q extends Record> void everyPointerOfEveryBasisIsExplained(String id, String name, Operation<Q, ?> operation) throws IOException {
        JsonWriter writer = new JsonWriter();
        Q request = new JsonReader().read(TestServer.example(id + "." + name).getBytes(StandardCharsets.UTF_8), operation.requestType());
        JsonNode basis = JSON.readTree(writer.write(operation.answer(request), Language.ENGLISH)).path("basis");
        Set<String> pointers = new LinkedHashSet<>(basis.findValuesAsText("pointer"));
        JsonNode explanations = JSON.readTree(writer.write(Explainer.explain(operation, request, Model.CURRENT,
                List.copyOf(pointers)), Language.ENGLISH))
                .path("explanations");
        List<String> lost = new ArrayList<>();
        int at = 0;
        for (String pointer : pointers) {
            List<String> formulas = new ArrayList<>();
            explanations.get(at++).path("formulas").forEach(each -> formulas.add(each.path("pointer").asText() + each.path("formula")));
            basis.forEach(entry -> lost.addAll(!entry.path("pointer").asText().equals(pointer)
                    || formulas.contains(pointer + entry.path("formula")) ? List.of() : List.of(entry.toString())));
        }
        assertEquals(List.of(), lost);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            pointer=/settings/reserv           | /pointer/0 | pointer | unknownValue | /settings/reserve
            pointer=/summary&pointer=/sumary   | /pointer/1 | pointer | unknownValue | /summary
            pointer=settings                   | /pointer/0 | pointer | unknownValue | /settings
            pointer=/settings/reserve/value/x  | /pointer/0 | pointer | unknownValue | ``
            pointer=/cycle/steps/17            | /pointer/0 | pointer | unknownValue | ``
            pointer=/cycle/steps/01            | /pointer/0 | pointer | unknownValue | ``
            pointer=                           | /pointer/0 | pointer | unknownValue | ``
            pointer=/                          | /pointer/0 | pointer | unknownValue | ``
            pointer=/a&pointer=/b&pointer=/c&pointer=/d&pointer=/e&pointer=/f | /pointer | pointer | wrongCount | ``
            pointer=/summary&points=/a         | /points    | points  | unknownField | pointer
            """)
    void refusesWhatTheAnswerHasNot(String query, String pointer, String parameter, String code, String didYouMean) {
        Served.posting(TestServer.example("assess.well-family")).post(PATH + "assess?" + query).then().statusCode(422)
                .body("errors.pointer", contains(pointer)).body("errors[0].parameter", equalTo(parameter))
                .body("errors[0].code", equalTo(code)).body("errors[0].didYouMean", equalTo(didYouMean.isEmpty() ? null : didYouMean));
    }

    @Test
    void requestsAreHeldToTheirOperation() {
        Served.posting("{\"pointer\": 1}").post(PATH + "convertHardness?pointer=/classes").then().statusCode(422)
                .body("errors.pointer", contains("/pointer")).body("errors[0].parameter", equalTo(null));
        Served.posting("{").post(PATH + "convertHardness?pointer=/classes").then().statusCode(400);
        Served.posting("{}").post(PATH + "convert?pointer=/classes").then().statusCode(404)
                .body("detail", containsString("convertHardness"));
        Served.given().get(PATH + "convertHardness?pointer=/classes").then().statusCode(405).header("Allow", "OPTIONS, POST");
        Served.posting(Served.SMALLEST).accept("text/html").post(PATH + "convertHardness?pointer=/classes").then().statusCode(406);
        Served.posting(Served.SMALLEST).header("Accept-Language", "de").post(PATH + "convertHardness?pointer=/classes").then()
                .statusCode(200).header("Content-Language", "de").header("Cache-Control", "no-store")
                .body("explanations[0].formulas[0].source.url", containsString("https://"));
    }

    @Test
    void namesWhatThereIsWhereNothingIsNear() {
        Served.posting(Served.SMALLEST).post(PATH + "convertHardness?pointer=/classes/zzzzzzzzz").then().statusCode(422)
                .body("errors[0].allowed", equalTo(List.of("/classes/usgs", "/classes/german", "/classes/trade")));
    }
}
