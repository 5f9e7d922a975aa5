// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.http.Served;
import java.io.ByteArrayOutputStream;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Bodies that are not one JSON text as RFC 8259 defines it (grammar: sections 2 to 7; UTF-8 without a byte order mark:
 * section 8.1; limits that a receiver may set: section 9) are answered by 400 with the place. Lines and columns are counted
 * by hand from 1.
 */
class MalformedBodyTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            ``                                                 | The body is empty. It must be a JSON object. Line 1, column 1.
            `  `                                               | The body is empty. It must be a JSON object. Line 1, column 3.
            {                                                  | The JSON ends too early. Line 1, column 2.
            {"hardness": {"value": 1                           | The JSON ends too early. Line 1, column 25.
            hardness=1                                         | The body is not JSON. Line 1, column 1.
            {'hardness': 1}                                    | The body is not JSON. Line 1, column 2.
            {"hardness": 1,}                                   | The body is not JSON. Line 1, column 16.
            {"hardness": {"value": 01, "unit": "gpg"}}         | The body is not JSON. Line 1, column 25.
            {"hardness": {"value": .5, "unit": "gpg"}}         | The body is not JSON. Line 1, column 24.
            {"hardness": {"value": NaN, "unit": "gpg"}}        | The body is not JSON. Line 1, column 27.
            {"hardness": {"value": Infinity, "unit": "gpg"}}   | The body is not JSON. Line 1, column 32.
            {"hardness": {"value": -Infinity, "unit": "gpg"}}  | The body is not JSON. Line 1, column 33.
            {"\\ud800": 1}                                     | The body is not JSON. Line 1, column 9.
            {"hardness": {"value": 1, "unit": "gpg"}} x        | The body is not JSON. Line 1, column 43.
            {"hardness": {"value": 1, "unit": "gpg"}} {}       | There is text after the end of the JSON object. Line 1, column 43.
            {"hardness": {"value": 1, "value": 2}}             | An object has a duplicate key. Line 1, column 34.
            {"hardness": {"value": 1e400, "unit": "gpg"}}      | A number is too large or too small. Line 1, column 24.
            {"hardness": {"value": 1e-400, "unit": "gpg"}}     | A number is too large or too small. Line 1, column 24.
            {"hardness": {"value": 1e999999999, "unit": "gpg"}}| A number is too large or too small. Line 1, column 24.
            {"hardness": {"value": 0e999999999, "unit": "gpg"}}| A number is too large or too small. Line 1, column 24.
            {"hardness": {"value": 1e99999999999}}             | A number is too large or too small. Line 1, column 24.
            """)
    void saysWhereTheBodyStopsBeingJson(String body, String detail) {
        refuses(body.getBytes(StandardCharsets.UTF_8), detail);
    }

    @Test
    void countsLinesAndColumns() {
        refuses("{\n  \"hardness\": {\n    \"value\": 1 2}}".getBytes(StandardCharsets.UTF_8),
                "The body is not JSON. Line 3, column 16.");
    }

    @Test
    void holdsToLimitsOfDepthAndLength() {
        String limits = "The body exceeds a limit: nesting 32, names 128, texts 4,096, numbers 64 characters. Line 1, column ";
        refusesFrom("[".repeat(40), limits);
        refusesFrom("{\"a\":".repeat(40) + "1" + "}".repeat(40), limits);
        refusesFrom("{\"" + "n".repeat(200) + "\": 1}", limits);
        refusesFrom("{\"hardness\": {\"value\": 1, \"unit\": \"" + "t".repeat(5_000) + "\"}}", limits);
        refusesFrom("{\"hardness\": {\"value\": " + "1".repeat(65) + ", \"unit\": \"gpg\"}}", limits);
    }

    @Test
    void takesUtf8AndNothingElse() {
        refuses(Served.SMALLEST.getBytes(StandardCharsets.UTF_16BE), "The body is not JSON. Line 1, column 2.");
        refuses(Served.SMALLEST.getBytes(StandardCharsets.UTF_16), "The body is not UTF-8. Line 1, column 1.");
        refuses(Served.SMALLEST.getBytes(Charset.forName("UTF-32BE")), "The body is not JSON. Line 1, column 2.");
        refuses(("\uFEFF" + Served.SMALLEST).getBytes(StandardCharsets.UTF_8),
                "The body starts with a byte order mark. Send UTF-8 without it. Line 1, column 1.");
        refuses(with("{\n\"", 0xFF, "\": 1}"), "The body is not UTF-8. Line 2, column 2.");
        refuses(with("{\"", 0xC3, "\": 1}"), "The body is not UTF-8. Line 1, column 3.");
        refuses("{\"unit\": \"\u00e9\"}".getBytes(StandardCharsets.ISO_8859_1), "The body is not UTF-8. Line 1, column 11.");
    }

    private static byte[] with(String before, int octet, String after) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.writeBytes(before.getBytes(StandardCharsets.US_ASCII));
        bytes.write(octet);
        bytes.writeBytes(after.getBytes(StandardCharsets.US_ASCII));
        return bytes.toByteArray();
    }

    private static void refuses(byte[] body, String detail) {
        Served.given().contentType("application/json").body(body).post(Served.CONVERSION)
                .then().statusCode(400).contentType("application/problem+json")
                .body("type", equalTo("/problems/malformed-body")).body("status", equalTo(400))
                .body("detail", equalTo(detail)).body("errors", nullValue()).body("instance", startsWith(Served.CONVERSION + "#"));
    }

    private static void refusesFrom(String body, String start) {
        String detail = Served.posting(body).post(Served.CONVERSION).then().statusCode(400).extract().path("detail");
        assertEquals(start, detail.substring(0, Math.min(start.length(), detail.length())));
    }
}
