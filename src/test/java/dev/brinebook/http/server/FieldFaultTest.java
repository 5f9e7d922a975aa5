package dev.brinebook.http.server;

import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.http.Served;
import dev.brinebook.http.Trial;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Faults of properties, each told by its JSON pointer (RFC 6901), all in one problem document (RFC 9457, section 3). */
class FieldFaultTest {

    private static BrinebookServer server;

    @BeforeAll
    static void start() {
        server = Served.start(List.of(Trial.doing(Trial::echo)), 0, Set.of());
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            null                                     | ``              | wrongType    | must be a JSON object
            []                                       | ``              | wrongType    | must be an object, is a list
            "x"                                      | ``              | wrongType    | must be an object, is a text
            {"numbr": 1}                             | /numbr          | unknownField | is not known here: did you mean number?
            {"numbr": {"a": null}, "part": {"count": 1}} | /numbr      | unknownField | is not known here: did you mean number?
            {"a/b~c": 1}                             | /a~1b~0c        | unknownField | is not known here: known are number, positive, whole, seed, flag, text, date, kind, flow, series, parts, part
            {"part": {"count": 1, "z": [{}]}}        | /part/z         | unknownField | is not known here: known are count, kind
            {"part": {"z": {"y": 2}, "count": 1, "kind": "plain"}} | /part/z | unknownField | is not known here: known are count, kind
            {"parts": [{"count": 1}, {"cont": {}, "count": 1}]} | /parts/1/cont | unknownField | is not known here: did you mean count?
            {"z": 1e99999999999}                     | /z              | unknownField | is not known here: known are number, positive, whole, seed, flag, text, date, kind, flow, series, parts, part
            {"part": {}}                             | /part/count     | missing      | count is missing: How many.
            {"flow": {"value": 5}}                   | /flow/unit      | missing      | unit is missing: The unit of the number. It must be one of L/min, L/s, m3/h, gpm
            {"number": null}                         | /number         | nullValue    | must not be null: leave it out when it is unknown
            {"series": [1, null]}                    | /series/1       | nullValue    | must not be null: leave it out when it is unknown
            {"part": null}                           | /part           | nullValue    | must not be null: leave it out when it is unknown
            {"number": "5"}                          | /number         | wrongType    | must be a number, is a text
            {"number": true}                         | /number         | wrongType    | must be a number, is true or false
            {"number": [5]}                          | /number         | wrongType    | must be a number, is a list
            {"number": {"value": 5}}                 | /number         | wrongType    | must be a number, is an object
            {"whole": 1.5}                           | /whole          | wrongType    | must be a whole number
            {"whole": 99999999999}                   | /whole          | outOfRange   | is far out of range
            {"seed": 1e30}                           | /seed           | outOfRange   | is far out of range
            {"flag": 0}                              | /flag           | wrongType    | must be true or false, is a number
            {"flag": "true"}                         | /flag           | wrongType    | must be true or false, is a text
            {"text": 5}                              | /text           | wrongType    | must be a text, is a number
            {"text": "a\\u0000b"}                    | /text           | unknownValue | must be plain text without control characters
            {"text": "a\\ud800b"}                    | /text           | unknownValue | must be plain text without control characters
            {"text": ""}                             | /text           | wrongCount   | must have from 1 to 8 characters, has 0
            {"text": "far too long"}                 | /text           | wrongCount   | must have from 1 to 8 characters, has 12
            {"date": "2026-02-30"}                   | /date           | unknownValue | must be a date such as 2026-03-01, from 1900 to 2199
            {"date": "1-1-1"}                        | /date           | unknownValue | must be a date such as 2026-03-01, from 1900 to 2199
            {"date": "9999-01-01"}                   | /date           | unknownValue | must be a date such as 2026-03-01, from 1900 to 2199
            {"kind": 1}                              | /kind           | wrongType    | must be one of the texts plain, ratherSpecial, is a number
            {"kind": "Plain"}                        | /kind           | unknownValue | must be one of plain, ratherSpecial
            {"kind": "RATHER_SPECIAL"}               | /kind           | unknownValue | must be one of plain, ratherSpecial
            {"flow": 5}                              | /flow           | wrongType    | must be an object, is a number
            {"flow": {"value": 5, "unit": "gpg"}}    | /flow/unit      | unknownValue | must be one of L/min, L/s, m3/h, gpm
            {"number": -1}                           | /number         | outOfRange   | must be from 0 to 10 NTU, was -1 NTU
            {"number": 10.001}                       | /number         | outOfRange   | must be from 0 to 10 NTU, was 10.001 NTU
            {"positive": 0}                          | /positive       | outOfRange   | must be above 0, was 0
            {"flow": {"value": 1, "unit": "m3/h"}}   | /flow/value     | outOfRange   | must be from 0.06 to 0.6 m3/h, was 1 m3/h
            {"flow": {"value": 0.2, "unit": "gpm"}}  | /flow/value     | outOfRange   | must be from 0.264173 to 2.64172 gpm, was 0.2 gpm
            {"series": [1, 6, 2]}                    | /series/1       | outOfRange   | must be from 0 to 5, was 6
            {"series": [1]}                          | /series         | wrongCount   | must have from 2 to 40 elements, has 1
            {"series": 1}                            | /series         | wrongType    | must be a list, is a number
            {"parts": [1]}                           | /parts/0        | wrongType    | must be an object, is a number
            {"flag": true}                           | /text           | inconsistent | must be given when flag is true
            {"whole": 7}                             | /whole          | impossible   | seven cannot be
            """)
    void pointsAtOneFault(String body, String pointer, String code, String message) {
        post(body).statusCode(422).contentType("application/problem+json")
                .body("type", equalTo("/problems/invalid-request")).body("status", equalTo(422))
                .body("detail", equalTo("1 fault in the request.")).body("errors", hasSize(1))
                .body("errors[0].pointer", equalTo(pointer)).body("errors[0].code", equalTo(code))
                .body("errors[0].message", equalTo(message)).body("errors[0].parameter", nullValue());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {"whole": 3.0}                           | whole=3
            {"whole": 1e1}                           | whole=10
            {"seed": -123456789012345678}            | seed=-123456789012345678
            {"number": 0}                            | number=0
            {"number": 1E+1}                         | number=1E+1
            {"flow": {"value": 10, "unit": "L/min"}} | value=10
            {"text": "naïve"}                        | text=naïve
            {"date": "2024-02-29"}                   | date=2024-02-29
            {"kind": "ratherSpecial"}                | kind=RATHER_SPECIAL
            {}                                       | number=null
            """)
    void takesWhatIsRight(String body, String read) {
        post(body).statusCode(200).body("got", containsString(read));
    }

    @Test
    void tellsAllFaultsAtOnceSortedByPointer() {
        post("{\"whole\": 0, \"flow\": {\"value\": \"5\", \"unti\": \"gpm\"}, \"text\": null, \"kind\": \"plian\", \"number\": 11}")
                .statusCode(422).body("detail", equalTo("7 faults in the request."))
                .body("errors.pointer", contains("/flow/unit", "/flow/unti", "/flow/value", "/kind", "/number", "/text",
                        "/whole"))
                .body("errors.code", contains("missing", "unknownField", "wrongType", "unknownValue", "outOfRange",
                        "nullValue", "outOfRange"))
                .body("errorsOmitted", nullValue());
    }

    @Test
    void saysWhatIsAllowedWhatCameAndWhatWasMeant() {
        post("{\"kind\": \"plian\", \"whole\": 13}").statusCode(422)
                .body("errors[0].allowed", equalTo("plain, ratherSpecial")).body("errors[0].didYouMean", equalTo("plain"))
                .body("errors[0].received", equalTo("plian"))
                .body("errors[1].allowed", equalTo("from 1 to 12")).body("errors[1].received", equalTo("13"));
        post("{\"kind\": \"<b>plain</b>\"}").statusCode(422).body("errors[0].received", nullValue());
        post("{\"kind\": \"" + "p".repeat(41) + "\"}").statusCode(422).body("errors[0].received", nullValue());
    }

    @Test
    void listsTwentyFiveFaultsAtMostAndSaysHowManyMore() {
        String series = IntStream.range(0, 40).mapToObj(i -> "9").collect(Collectors.joining(","));
        List<String> pointers = post("{\"series\": [" + series + "]}").statusCode(422)
                .body("detail", equalTo("40 faults in the request.")).body("errorsOmitted", equalTo(15))
                .extract().path("errors.pointer");
        assertEquals(25, pointers.size());
        assertEquals(pointers.stream().sorted().toList(), pointers);
    }

    @Test
    void looksForAHundredFaultsAndSaysThatThereMayBeMore() {
        String keys = IntStream.range(0, 2_000).mapToObj(i -> "\"key" + i + "\": 1").collect(Collectors.joining(","));
        List<String> pointers = post("{" + keys + "}").statusCode(422).body("detail", equalTo("At least 100 faults in the"
                + " request: 25 of them are listed, and no more were looked for.")).body("errorsOmitted", equalTo(75))
                .extract().path("errors.pointer");
        assertEquals(25, pointers.size());
    }

    @Test
    void hardnessTakesNoUnitOfAnotherKindAndNoSecondHardness() {
        Served.posting("{\"hardness\": {\"value\": 5, \"unit\": \"lb\"}}").post(Served.CONVERSION).then().statusCode(422)
                .body("errors.pointer", contains("/hardness/unit"))
                .body("errors[0].allowed", equalTo("mg/L, gpg, gpg-imperial, dH, fH, mmol/L, meq/L"));
        Served.posting("{\"hardness\": {\"value\": 5, \"unit\": \"gpg\"}, \"calcium\": {\"value\": 5, \"unit\": \"mg/L\"}}")
                .post(Served.CONVERSION).then().statusCode(422).body("errors[0].code", equalTo("inconsistent"));
    }

    private static ValidatableResponse post(String body) {
        return Served.given(server.port()).contentType("application/json; charset=utf-8")
                .body(body.getBytes(java.nio.charset.StandardCharsets.UTF_8)).post(Trial.PATH).then();
    }
}
