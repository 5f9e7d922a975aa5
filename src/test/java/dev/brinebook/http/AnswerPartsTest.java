// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import static org.hamcrest.Matchers.aMapWithSize;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What the parameters detail and fields leave out of an answer, and what they never do. */
class AnswerPartsTest {

    private static final JsonMapper JSON = JsonMapper.builder().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS).build();
    private static final String ASSESSMENT = "/v1/assessment";
    private static final Set<String> ALWAYS = Set.of("cautions", "modelVersion");

    static Stream<Arguments> examples() {
        return Main.OPERATIONS.stream().flatMap(operation -> operation.examples().stream()
                .map(name -> Arguments.of(operation.id(), name, operation)));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("examples")
    void lessDetailIsAPartOfMore(String id, String name, Operation<?, ?> operation) throws JsonProcessingException {
        String request = TestServer.example(id + "." + name);
        JsonNode full = answer(operation.path() + "?detail=full", request);
        JsonNode standard = answer(operation.path() + "?detail=standard", request);
        JsonNode numbers = answer(operation.path() + "?detail=numbers", request);
        assertEquals(standard, answer(operation.path(), request), "the default");
        assertEquals(List.of(), notIn(numbers, standard, ""));
        assertEquals(List.of(), notIn(standard, full, ""));
        Set<String> left = names(full);
        left.removeAll(names(standard));
        assertEquals(Set.of("assumptions", "basis"), left);
        assertTrue(!numbers.has("summary") && !numbers.path("verdict").isObject() && numbers.has("modelVersion"));
        assertEquals(serious(full), texts(numbers.path("cautions")), "stop and warning, whole");
        assertEquals(numbersOf(standard), numbersOf(numbers), "no number is lost but those of the verdict");
        assertEquals(serious(full), texts(answer(operation.path() + "?fields=modelVersion", request).path("cautions")));
    }

    /** Numbers and codes outside the verdict and the cautions, each with its place. */
    private static Set<String> numbersOf(JsonNode answer) {
        Set<String> found = new TreeSet<>();
        answer.properties().stream().filter(part -> !part.getKey().equals("cautions")
                && !(part.getKey().equals("verdict") && part.getValue().isObject())).forEach(part -> gather(part.getValue(),
                        "/" + part.getKey(), found));
        return found;
    }

    private static void gather(JsonNode node, String pointer, Set<String> found) {
        if (node.isNumber() || node.isBoolean()) {
            found.add(pointer + " " + node.asText());
        }
        IntStream.range(0, node.isArray() ? node.size() : 0).forEach(i -> gather(node.get(i), pointer + "/" + i, found));
        node.properties().forEach(part -> gather(part.getValue(), pointer + "/" + part.getKey(), found));
    }

    /** What {@code part} has and {@code whole} has not, or not so. */
    private static List<String> notIn(JsonNode part, JsonNode whole, String pointer) {
        List<String> more = new ArrayList<>();
        if (pointer.equals("/cautions")) {
            part.forEach(caution -> more.addAll(texts(whole).contains(caution.toString()) ? List.of() : List.of(caution.toString())));
        } else if (part.isObject()) {
            part.properties().forEach(each -> more.addAll(notIn(each.getValue(), whole.path(each.getKey()),
                    pointer + "/" + each.getKey())));
        } else if (part.isArray() && part.size() == whole.size()) {
            IntStream.range(0, part.size()).forEach(i -> more.addAll(notIn(part.get(i), whole.get(i), pointer + "/" + i)));
        } else if (!part.equals(whole)) {
            more.add(pointer);
        }
        return more;
    }

    private static List<String> serious(JsonNode answer) {
        return texts(answer.path("cautions")).stream().filter(caution -> !caution.contains("\"severity\":\"info\"")).toList();
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(each -> texts.add(each.toString()));
        return texts;
    }

    private static Set<String> names(JsonNode object) {
        Set<String> names = new TreeSet<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }

    private static JsonNode answer(String path, String request) throws JsonProcessingException {
        return JSON.readTree(TestServer.post(path, request).statusCode(200).extract().asString());
    }

    /** The places where the answer has a plain value, beside what every answer has; of a list, its first element. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            fields=settings.reserve                         | /settings/reserve/unit /settings/reserve/value
            fields=settings.reserve.value                   | /settings/reserve/value
            fields=settings.reserve,settings.reserve.value  | /settings/reserve/unit /settings/reserve/value
            fields=verdict.step,findings.code               | /findings/0/code /verdict/step
            fields=findings.code&detail=numbers             | /findings/0/code
            fields=summary&detail=numbers                   | /summary
            fields=verdict.step&detail=numbers              | /verdict/step
            fields=demand.dailyUse&detail=full              | /demand/dailyUse/unit /demand/dailyUse/value
            fields=basis.pointer                            | /basis/0/pointer
            fields=basis.pointer,basis.formula&detail=numbers | /basis/0/formula /basis/0/pointer
            fields=assumptions.pointer&detail=standard      | /assumptions/0/pointer
            fields=modelVersion                             | ``
            fields=cautions.code                            | ``
            """)
    void fieldsChooseExactly(String query, String expected) throws JsonProcessingException {
        JsonNode answer = answer(ASSESSMENT + "?" + query, TestServer.example("assess.well-family"));
        Set<String> found = new TreeSet<>();
        answer.properties().stream().filter(part -> !ALWAYS.contains(part.getKey())).forEach(part ->
                places(part.getValue(), "/" + part.getKey(), found));
        assertEquals(expected, String.join(" ", found));
        assertTrue(names(answer).containsAll(ALWAYS));
        assertFalse(serious(answer).isEmpty());
        answer.path("cautions").forEach(caution -> assertTrue(caution.has("message") && caution.has("source"), caution.toString()));
        boolean named = query.contains("cautions");
        assertEquals(named, texts(answer.path("cautions")).size() > serious(answer).size(), "info only where named");
    }

    private static void places(JsonNode node, String pointer, Set<String> found) {
        if (node.isValueNode()) {
            found.add(pointer);
        } else if (node.isArray() && !node.isEmpty()) {
            places(node.get(0), pointer + "/0", found);
        }
        node.properties().forEach(part -> places(part.getValue(), pointer + "/" + part.getKey(), found));
    }

    /** Every name of the answer may be asked for alone, and is then the same as in the whole. */
    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("examples")
    void everyPropertyCanBeNamed(String id, String name, Operation<?, ?> operation) throws JsonProcessingException {
        String request = TestServer.example(id + "." + name);
        JsonNode full = answer(operation.path() + "?detail=full", request);
        Set<String> parts = names(full);
        JsonNode named = answer(operation.path() + "?fields=" + String.join(",", parts), request);
        assertEquals(full, named);
        assertEquals(new ArrayList<>(iterable(full)), new ArrayList<>(iterable(named)), "in the same order");
    }

    private static List<String> iterable(JsonNode object) {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            detail=number                | /detail   | detail | unknownValue | numbers
            detail=                      | /detail   | detail | unknownValue | ``
            detail=full&detail=full      | /detail   | detail | inconsistent | ``
            fields=settings.reserv       | /fields/0 | fields | unknownField | settings.reserve
            fields=summary,sumary        | /fields/1 | fields | unknownField | summary
            fields=refillMinutes         | /fields/0 | fields | unknownField | settings.refillMinutes
            fields=settings.reserve.valu | /fields/0 | fields | unknownField | settings.reserve.value
            fields=summary.text          | /fields/0 | fields | unknownField | ``
            fields=x                     | /fields/0 | fields | unknownField | ``
            fields=%3Cb%3E               | /fields/0 | fields | unknownField | ``
            fields=.                     | /fields/0 | fields | unknownField | ``
            fields=summary,,cautions     | /fields/1 | fields | unknownField | ``
            fields=                      | /fields   | fields | wrongCount   | ``
            fields=summary&fields=cycle  | /fields   | fields | inconsistent | ``
            field=summary                | /field    | field  | unknownField | fields
            a=1                          | /a        | a      | unknownField | ``
            """)
    void refusesWhatItDoesNotKnow(String query, String pointer, String parameter, String code, String didYouMean) {
        Response refused = Served.posting(TestServer.example("assess.well-family")).post(ASSESSMENT + "?" + query);
        refused.then().statusCode(422).body("errors.pointer", contains(pointer)).body("errors[0].parameter", equalTo(parameter))
                .body("errors[0].code", equalTo(code)).body("errors[0].didYouMean", equalTo(didYouMean.isEmpty() ? null : didYouMean));
    }

    @Test
    void saysHowManyNamesAndWhichDetailsThereAre() {
        String names = "summary,".repeat(100);
        Served.posting(Served.SMALLEST).post(Served.CONVERSION + "?fields=" + names + "summary").then().statusCode(422)
                .body("errors[0].message", equalTo("Must be 1 to 100 names with commas between them. Given: 101."));
        Served.posting(Served.SMALLEST).post(Served.CONVERSION + "?fields=" + names.substring(0, names.length() - 1)).then().statusCode(200)
                .body("", aMapWithSize(3));
        Served.posting(Served.SMALLEST).post(Served.CONVERSION + "?detail=all").then().statusCode(422)
                .body("errors[0].message", equalTo("Must be one of numbers, standard, full."));
        Served.posting(Served.SMALLEST).post(Served.CONVERSION + "?fields=clases,x&detail=all&y=1").then().statusCode(422)
                .body("errors.pointer", contains("/detail", "/fields/0", "/fields/1", "/y"));
        Served.posting("{}").post(Served.CONVERSION + "?fields=summary").then().statusCode(422)
                .body("errors.pointer", contains("/hardness")).body("errors[0].parameter", equalTo(null));
    }

    @Test
    void theShortFormHasBothParametersAndIsCached() throws JsonProcessingException {
        String path = Served.CONVERSION + "?value=18.5&unit=gpg";
        for (String query : List.of("", "&detail=numbers", "&detail=full", "&fields=summary,classes.usgs")) {
            Response got = Served.given().get(path + query);
            JsonNode posted = answer(Served.CONVERSION + (query.isEmpty() ? "" : "?" + query.substring(1)), Served.SMALLEST);
            assertEquals(posted, JSON.readTree(got.then().statusCode(200).extract().asString()));
            Served.given().header("If-None-Match", got.header("ETag")).get(path + query).then().statusCode(304);
        }
        Served.given().get(path + "&fields=clases").then().statusCode(422).body("errors[0].parameter", equalTo("fields"))
                .body("errors[0].didYouMean", equalTo("classes"));
    }

    /** A sheet, a calendar and a table have no properties to choose. */
    @ParameterizedTest
    @CsvSource({"detail=full, /detail", "fields=summary, /fields"})
    void otherFormsHaveNoParts(String query, String pointer) {
        for (Operation<?, ?> operation : Main.OPERATIONS) {
            operation.forms().forEach(form -> Served.posting(TestServer.example(operation.id() + "." + form.example()))
                    .accept(form.mediaType()).post(operation.path() + "?" + query).then().statusCode(422)
                    .body("errors.pointer", contains(pointer)).body("errors[0].code", equalTo("inconsistent")));
        }
    }

    /** A text that is read into a request is answered in parts too, beside its own settings. */
    @Test
    void aTableOfReadingsIsAnsweredInPartsToo() {
        String csv = "at,reading\n2026-01-01,100\n2026-01-02,101\n2026-01-03,102\n";
        Map<String, Object> answer = TestServer.postCsv("/v1/meter-readings?unit=m3&fields=coverage.rows", csv).statusCode(200).extract()
                .jsonPath().getMap("");
        assertEquals(Set.of("coverage", "cautions", "modelVersion"), answer.keySet());
        TestServer.postCsv("/v1/meter-readings?unit=m3&fields=coverag", csv).statusCode(422).body("errors[0].didYouMean",
                equalTo("coverage"));
    }
}
