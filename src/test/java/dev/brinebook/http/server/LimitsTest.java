// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.HttpText;
import dev.brinebook.http.RawHttp;
import dev.brinebook.http.Served;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is too large, or no HTTP at all: RFC 9110 sections 15.5.14 (413) and 15.5.15 (414), RFC 6585 section 5 (431). */
class LimitsTest {

    private static final String PADDED = "{\"hardness\": {\"value\": 18.5, \"unit\": \"gpg\"}";
    private static final String POST = "POST " + Served.CONVERSION + " HTTP/1.1";
    private static final String JSON = "Content-Type: application/json\r\n";

    private final int port = Served.SERVER.port();

    @Test
    void takesABodyOfExactlyTheLimit() {
        String body = PADDED + " ".repeat(Served.MAX_BODY_BYTES - PADDED.length() - 1) + "}";
        Served.posting(body).post(Served.CONVERSION).then().statusCode(200);
    }

    @Test
    void refusesALargerBody() {
        String body = PADDED + " ".repeat(Served.MAX_BODY_BYTES - PADDED.length()) + "}";
        Served.posting(body).post(Served.CONVERSION).then().statusCode(413).header("Connection", "close")
                .body("type", equalTo("/problems/body-too-large"))
                .body("detail", containsString(String.format(java.util.Locale.ROOT, "%,d bytes", Served.MAX_BODY_BYTES)));
    }

    @Test
    void countsABodyThatComesInChunks() throws IOException {
        String chunk = " ".repeat(0x10000);
        String body = ("10000\r\n" + chunk + "\r\n").repeat(4) + "1\r\n \r\n0\r\n\r\n";
        String answer = RawHttp.send(port, POST, JSON + "Transfer-Encoding: chunked\r\n", body);
        HttpText.assertProblem(answer, 413, "body-too-large");
        String small = Integer.toHexString(Served.SMALLEST.length()) + "\r\n" + Served.SMALLEST + "\r\n0\r\n\r\n";
        assertTrue(RawHttp.send(port, POST, JSON + "Transfer-Encoding: chunked\r\n", small).startsWith("HTTP/1.1 200 "));
    }

    /** RFC 9110, section 15.5.9. */
    @Test
    void refusesABodyThatComesTooSlowly() throws IOException {
        try (BrinebookServer server = Served.impatient()) {
            HttpText.assertProblem(RawHttp.send(server.port(), POST, JSON + "Content-Length: 44\r\n", "{"), 408, "request-timeout");
        }
    }

    @Test
    void refusesALongUri() throws IOException {
        String answer = RawHttp.send(port, "GET /" + "x".repeat(20_000) + " HTTP/1.1", "", "");
        HttpText.assertProblem(answer, 414, "uri-too-long");
    }

    @Test
    void refusesLargeHeaders() throws IOException {
        String answer = RawHttp.send(port, "GET /version HTTP/1.1", "X-Long: " + "x".repeat(20_000) + "\r\n", "");
        HttpText.assertProblem(answer, 431, "headers-too-large");
    }

    @ParameterizedTest
    @ValueSource(strings = {"GET /%zz HTTP/1.1", "GET /v1/%2e%2e/metrics HTTP/1.1", "GET /v1//hardness-conversion HTTP/1.1",
        "GET /v1/a%2fb HTTP/1.1", "GET /%c0%ae HTTP/1.1", "GET / HTTP/9.9", "GET / HTTP/2.0", "GET / HTTP/0.9",
        "GET http://other.example/ HTTP/1.1",
        "GET /docs/assets/../../../pom.xml HTTP/1.1"})
    void refusesMalformedRequests(String requestLine) throws IOException {
        HttpText.assertProblem(RawHttp.send(port, requestLine, "", ""), 400, "bad-request");
    }

    /** What could be read as one request by one server and as two by the next: RFC 9112, sections 3.2, 6.1 and 6.3. */
    @ParameterizedTest
    @ValueSource(strings = {"Content-Length: 5\r\nContent-Length: 6", "Content-Length: 2\r\nTransfer-Encoding: chunked",
        "Content-Length: -1", "Content-Length: 99999999999999999999", "Transfer-Encoding: chunked\r\nX: a\u0000b",
        "Host: other.example\r\nContent-Length: 2", "Expect: a-wonder\r\nContent-Length: 2", "No colon\r\nContent-Length: 2"})
    void refusesMalformedHeads(String headers) throws IOException {
        HttpText.assertProblem(RawHttp.send(port, POST, JSON + headers + "\r\n", "{}"), 400, "bad-request");
    }

    /** The rest of it is not waited for. */
    @ParameterizedTest
    @ValueSource(strings = {"99999999999", "600000"})
    void refusesByContentLengthBeforeTheBodyComesHoweverItIsAnnounced(String length) throws IOException {
        for (String expect : new String[] {"", "Expect: 100-continue\r\n"}) {
            String answer = RawHttp.send(port, POST, JSON + expect + "Content-Length: " + length + "\r\n", "{");
            HttpText.assertProblem(answer, 413, "body-too-large");
        }
    }

    @Test
    void echoesNoPathThatItCouldNotRead() throws IOException {
        String answer = RawHttp.send(port, "GET /%zz HTTP/1.1", "X-Request-Id: mine\r\n", "");
        HttpText.assertProblem(answer, 400, "bad-request");
        assertTrue(!HttpText.body(answer).contains("instance"), answer);
    }

    /** As long as the headers may be: looked through without a step of the stack for each sign. */
    @ParameterizedTest
    @ValueSource(strings = {"a", "%C3%A4"})
    void readsTheLongestQuery(String sign) throws Exception {
        String query = "unit=" + sign.repeat(12_000 / sign.length());
        String answer = RawHttp.send(Served.SERVER.port(), "GET " + Served.CONVERSION + "?" + query + " HTTP/1.1", "", "");
        HttpText.assertProblem(answer, 400, "malformed-query");
    }
}
