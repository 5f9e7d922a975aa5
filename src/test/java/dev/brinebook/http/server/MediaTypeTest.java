// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.HttpText;
import dev.brinebook.http.RawHttp;
import dev.brinebook.http.Served;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Media types: RFC 9110 sections 8.3 and 15.5.16 (415), 12.5.1 and 15.5.7 (406); Accept-Post: W3C Linked Data Platform 1.0. */
class MediaTypeTest {

    @ParameterizedTest
    @ValueSource(strings = {"application/json", "application/json;charset=UTF-8", "Application/JSON; charset=\"utf-8\"",
        "application/json; profile=x"})
    void takesJsonInUtf8(String type) {
        Served.given().header("Content-Type", type).body(Served.SMALLEST.getBytes()).post(Served.CONVERSION)
                .then().statusCode(200).contentType("application/json");
    }

    @ParameterizedTest
    @ValueSource(strings = {"text/plain", "text/json", "application/xml", "multipart/mixed",
        "application/problem+json", "application/json; charset=utf-16", "application/json; charset=iso-8859-1",
        "application/json; charset=nonsense", "json"})
    void refusesEveryOtherType(String type) {
        Served.given().header("Content-Type", type).body(Served.SMALLEST.getBytes()).post(Served.CONVERSION)
                .then().statusCode(415).contentType("application/problem+json").header("Accept-Post", "application/json")
                .body("type", equalTo("/problems/unsupported-media-type"));
    }

    @Test
    void refusesABodyOfNoTypeAndAForm() throws Exception {
        for (String type : List.of("", "Content-Type: application/x-www-form-urlencoded\r\n")) {
            String answer = RawHttp.send(Served.SERVER.port(), "POST " + Served.CONVERSION + " HTTP/1.1",
                    type + "Content-Length: 2\r\n", "{}");
            HttpText.assertProblem(answer, 415, "unsupported-media-type");
            HttpText.assertHeader(answer, "Accept-Post", "application/json");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"gzip", "br", "deflate, gzip"})
    void refusesACompressedBody(String encoding) {
        Served.posting(Served.SMALLEST).header("Content-Encoding", encoding).post(Served.CONVERSION)
                .then().statusCode(415).header("Accept-Encoding", "identity");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            application/json                  | 200
            application/*                     | 200
            */*                               | 200
            text/html, */*;q=0.1              | 200
            APPLICATION/JSON;q=0.5            | 200
            text/html, application/json       | 200
            application/json;q=1, */*;q=0     | 200
            text/html                         | 406
            application/xml, text/*           | 406
            application/json;q=0              | 406
            application/json;q=0.000, */*     | 406
            application/*;q=0, */*            | 406
            application/problem+json          | 406
            """)
    void answersInJsonOrNot(String accept, int status) {
        Served.posting(Served.SMALLEST).header("Accept", accept).post(Served.CONVERSION).then().statusCode(status);
        Served.given().header("Accept", accept).get(Served.CONVERSION + "?value=18.5&unit=gpg").then().statusCode(status);
    }

    @Test
    void readsAListOverSeveralLines() throws Exception {
        String answer = RawHttp.send(Served.SERVER.port(), "GET " + Served.CONVERSION + "?value=1&unit=gpg HTTP/1.1",
                "Accept: text/html\r\nAccept: application/json\r\nIf-None-Match: \"a\"\r\nIf-None-Match: *\r\n", "");
        assertTrue(answer.startsWith("HTTP/1.1 304 "), answer);
    }
}
