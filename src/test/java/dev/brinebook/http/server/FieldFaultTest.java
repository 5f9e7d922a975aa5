// SPDX-License-Identifier: Apache-2.0
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

/** Faults of properties, each reported by its JSON pointer (RFC 6901), all in one problem document (RFC 9457, section 3). */
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
            null                                     | ``              | wrongType    | Must be a JSON object.
            []                                       | ``              | wrongType    | Must be an object. Given: a list.
            "x"                                      | ``              | wrongType    | Must be an object. Given: a text.
            {"numbr": 1}                             | /numbr          | unknownField | Unknown field. Did you mean `number`?
            {"numbr": {"a": null}, "part": {"count": 1}} | /numbr      | unknownField | Unknown field. Did you mean `number`?
            {"a/b~c": 1}                             | /a~1b~0c        | unknownField | Unknown field. Known fields: number, positive, \
            whole, seed, flag, text, date, kind, flow, series, parts, part.
            {"part": {"count": 1, "z": [{}]}}        | /part/z         | unknownField | Unknown field. Known fields: count, kind.
            {"part": {"z": {"y": 2}, "count": 1, "kind": "plain"}} | /part/z | unknownField | Unknown field. Known fields: count, kind.
            {"parts": [{"count": 1}, {"cont": {}, "count": 1}]} | /parts/1/cont | unknownField | Unknown field. Did you mean `count`?
            {"z": 1e99999999999}                     | /z              | unknownField | Unknown field. Known fields: number, positive, \
            whole, seed, flag, text, date, kind, flow, series, parts, part.
            {"part": {}}                             | /part/count     | missing      | Missing `count`.
            {"flow": {"value": 5}}                   | /flow/unit      | missing      | Missing `unit`. Must be one of L/min, L/s, m3/h, gpm.
            {"number": null}                         | /number         | nullValue    | Omit it if unknown. `null` is not allowed.
            {"series": [1, null]}                    | /series/1       | nullValue    | Omit it if unknown. `null` is not allowed.
            {"part": null}                           | /part           | nullValue    | Omit it if unknown. `null` is not allowed.
            {"number": "5"}                          | /number         | wrongType    | Must be a number. Given: a text.
            {"number": true}                         | /number         | wrongType    | Must be a number. Given: true or false.
            {"number": [5]}                          | /number         | wrongType    | Must be a number. Given: a list.
            {"number": {"value": 5}}                 | /number         | wrongType    | Must be a number. Given: an object.
            {"whole": 1.5}                           | /whole          | wrongType    | Must be a whole number.
            {"whole": 99999999999}                   | /whole          | outOfRange   | Far out of range.
            {"seed": 1e30}                           | /seed           | outOfRange   | Far out of range.
            {"flag": 0}                              | /flag           | wrongType    | Must be true or false. Given: a number.
            {"flag": "true"}                         | /flag           | wrongType    | Must be true or false. Given: a text.
            {"text": 5}                              | /text           | wrongType    | Must be a text. Given: a number.
            {"text": "a\\u0000b"}                    | /text           | unknownValue | Must be plain text, without control, format and direction characters.
            {"text": "a\\ud800b"}                    | /text           | unknownValue | Must be plain text, without control, format and direction characters.
            {"text": ""}                             | /text           | wrongCount   | Must have from 1 to 8 characters. Given: 0.
            {"text": "far too long"}                 | /text           | wrongCount   | Must have from 1 to 8 characters. Given: 12.
            {"date": "2026-02-30"}                   | /date           | unknownValue | Must be a date from 1900 to 2199, such as 2026-03-01.
            {"date": "1-1-1"}                        | /date           | unknownValue | Must be a date from 1900 to 2199, such as 2026-03-01.
            {"date": "9999-01-01"}                   | /date           | unknownValue | Must be a date from 1900 to 2199, such as 2026-03-01.
            {"kind": 1}                              | /kind           | wrongType    | Must be one of plain, ratherSpecial. Given: a number.
            {"kind": "Plain"}                        | /kind           | unknownValue | Must be one of plain, ratherSpecial.
            {"kind": "RATHER_SPECIAL"}               | /kind           | unknownValue | Must be one of plain, ratherSpecial.
            {"flow": 5}                              | /flow           | wrongType    | Must be an object. Given: a number.
            {"flow": {"value": 5, "unit": "gpg"}}    | /flow/unit      | unknownValue | Must be one of L/min, L/s, m3/h, gpm.
            {"number": -1}                           | /number         | outOfRange   | Must be from 0 to 10\u00a0NTU. Given: \u22121\u00a0NTU.
            {"number": 10.001}                       | /number         | outOfRange   | Must be from 0 to 10\u00a0NTU. Given: 10.001\u00a0NTU.
            {"positive": 0}                          | /positive       | outOfRange   | Must be above 0. Given: 0.
            {"flow": {"value": 1, "unit": "m3/h"}}   | /flow/value     | outOfRange   | Must be from 0.06 to 0.6\u00a0m³/h. Given: 1\u00a0m³/h.
            {"flow": {"value": 0.2, "unit": "gpm"}}  | /flow/value     | outOfRange   | Must be from 0.2642 to 2.641\u00a0gpm. Given: 0.2\u00a0gpm.
            {"series": [1, 6, 2]}                    | /series/1       | outOfRange   | Must be from 0 to 5. Given: 6.
            {"series": [1]}                          | /series         | wrongCount   | Must have from 2 to 40 elements. Given: 1.
            {"series": 1}                            | /series         | wrongType    | Must be a list. Given: a number.
            {"parts": [1]}                           | /parts/0        | wrongType    | Must be an object. Given: a number.
            {"flag": true}                           | /text           | inconsistent | must be given when flag is true
            {"whole": 7}                             | /whole          | impossible   | seven cannot be
            """)
    void pointsAtOneFault(String body, String pointer, String code, String message) {
        post(body).statusCode(422).contentType("application/problem+json")
                .body("type", equalTo("/problems/invalid-request")).body("status", equalTo(422))
                .body("detail", equalTo("The request has 1 error.")).body("errors", hasSize(1))
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
    void acceptsValidFields(String body, String read) {
        post(body).statusCode(200).body("got", containsString(read));
    }

    @Test
    void reportsAllFaultsAtOnceSortedByPointer() {
        post("{\"whole\": 0, \"flow\": {\"value\": \"5\", \"unti\": \"gpm\"}, \"text\": null, \"kind\": \"plian\", \"number\": 11}")
                .statusCode(422).body("detail", equalTo("The request has 7 errors."))
                .body("errors.pointer", contains("/flow/unit", "/flow/unti", "/flow/value", "/kind", "/number", "/text",
                        "/whole"))
                .body("errors.code", contains("missing", "unknownField", "wrongType", "unknownValue", "outOfRange",
                        "nullValue", "outOfRange"))
                .body("errorsOmitted", nullValue());
    }

    @Test
    void namesTheAllowedTheGivenAndTheIntendedValue() {
        post("{\"kind\": \"plian\", \"whole\": 13}").statusCode(422)
                .body("errors[0].allowed", equalTo(List.of("plain", "ratherSpecial"))).body("errors[0].didYouMean", equalTo("plain"))
                .body("errors[0].received", equalTo("plian"))
                .body("errors[1].allowed", equalTo(List.of("from 1 to 12"))).body("errors[1].received", equalTo("13"));
        post("{\"kind\": \"<b>plain</b>\"}").statusCode(422).body("errors[0].received", nullValue());
        post("{\"kind\": \"" + "p".repeat(41) + "\"}").statusCode(422).body("errors[0].received", nullValue());
    }

    @Test
    void listsTwentyFiveFaultsAtMostAndSaysHowManyMore() {
        String series = IntStream.range(0, 40).mapToObj(i -> "9").collect(Collectors.joining(","));
        List<String> pointers = post("{\"series\": [" + series + "]}").statusCode(422)
                .body("detail", equalTo("The request has 40 errors.")).body("errorsOmitted", equalTo(15))
                .extract().path("errors.pointer");
        assertEquals(25, pointers.size());
        assertEquals(pointers.stream().sorted().toList(), pointers);
    }

    @Test
    void looksForAHundredFaultsAndSaysThatThereMayBeMore() {
        String keys = IntStream.range(0, 2_000).mapToObj(i -> "\"key" + i + "\": 1").collect(Collectors.joining(","));
        List<String> pointers = post("{" + keys + "}").statusCode(422).body("detail", equalTo("The request has at least"
                + " 100 errors. 25 of them are listed. The check stopped there.")).body("errorsOmitted", equalTo(75))
                .extract().path("errors.pointer");
        assertEquals(25, pointers.size());
    }

    @Test
    void hardnessTakesNoUnitOfAnotherKindAndNoSecondHardness() {
        Served.posting("{\"hardness\": {\"value\": 5, \"unit\": \"lb\"}}").post(Served.CONVERSION).then().statusCode(422)
                .body("errors.pointer", contains("/hardness/unit"))
                .body("errors[0].allowed", equalTo(List.of("mg/L", "gpg", "gpg-imperial", "dH", "fH", "mmol/L", "meq/L")));
        Served.posting("{\"hardness\": {\"value\": 5, \"unit\": \"gpg\"}, \"calcium\": {\"value\": 5, \"unit\": \"mg/L\"}}")
                .post(Served.CONVERSION).then().statusCode(422).body("errors[0].code", equalTo("inconsistent"));
    }

    private static ValidatableResponse post(String body) {
        return Served.given(server.port()).contentType("application/json; charset=utf-8")
                .body(body.getBytes(java.nio.charset.StandardCharsets.UTF_8)).post(Trial.PATH).then();
    }
}
