// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import dev.brinebook.http.HttpText;
import dev.brinebook.http.RawHttp;
import dev.brinebook.http.Served;
import io.restassured.response.Response;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.zip.GZIPInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Headers of answers: RFC 9110 sections 8.8.3 (ETag), 12.5.5 (Vary), 13.1.2 (If-None-Match); RFC 9111 section 5.2
 * (Cache-Control); RFC 8288 (Link); the Fetch standard (nosniff, CORS); W3C Content Security Policy.
 */
class HeadersTest {

    private static final String QUERY = Served.CONVERSION + "?value=18.5&unit=gpg";

    @ParameterizedTest
    @ValueSource(strings = {QUERY, "/openapi.json", "/openapi.yaml", "/docs", "/docs/try", "/docs/assets/swagger-ui.css",
        "/problems/not-found", "/docs/operations/assess", "/docs/sources", "/v1/sources", "/v1/changelog", "/changelog.atom", "/llms.txt",
        "/.well-known/api-catalog"})
    void callersMayKeepAndAskAgain(String path) {
        Response first = Served.given().get(path);
        String tag = first.header("ETag");
        assertEquals("public, max-age=300", first.header("Cache-Control"));
        assertFalse(tag.startsWith("W/"), "strong");
        for (String held : List.of(tag, "W/" + tag, "\"other\", " + tag, "\"a\",W/" + tag + ",\"b\"", "*")) {
            Response again = Served.given().header("If-None-Match", held).get(path);
            assertEquals(304, again.statusCode(), held);
            assertEquals(tag, again.header("ETag"));
            assertEquals("public, max-age=300", again.header("Cache-Control"));
            assertEquals(0, again.asByteArray().length);
        }
        assertEquals(200, Served.given().header("If-None-Match", "\"other\"").get(path).statusCode());
        assertEquals(304, Served.given().header("If-None-Match", tag).head(path).statusCode());
    }

    @Test
    void differentAnswersHaveDifferentTags() {
        assertNotEquals(Served.given().get(QUERY).header("ETag"),
                Served.given().get(Served.CONVERSION + "?value=18.6&unit=gpg").header("ETag"));
    }

    @Test
    void postsAndFaultsAreNotCached() {
        Served.posting(Served.SMALLEST).header("If-None-Match", "*").post(Served.CONVERSION).then().statusCode(200)
                .header("Cache-Control", "no-store").header("ETag", nullValue());
        Served.posting("{").post(Served.CONVERSION).then().statusCode(400).header("Cache-Control", "no-store");
        Served.given().get(Served.CONVERSION).then().statusCode(422).header("Cache-Control", "no-store")
                .header("ETag", nullValue());
    }

    @Test
    void compressedFormsAreMarkedAndTaggedApart() throws IOException {
        Response plain = Served.given().header("Accept-Encoding", "identity").get("/openapi.json");
        Response small = Served.given().header("Accept-Encoding", "gzip").get("/version");
        assertEquals("Accept-Encoding", plain.header("Vary"));
        assertEquals("Accept-Encoding", small.header("Vary"));
        assertEquals(null, small.header("Content-Encoding"));
        String answer = RawHttp.sendBytes(Served.SERVER.port(), "GET /openapi.json HTTP/1.1", "Accept-Encoding: br;q=1, gzip\r\n");
        HttpText.assertHeader(answer, "Content-Encoding", "gzip");
        HttpText.assertHeader(answer, "Vary", "Accept-Encoding");
        assertNotEquals(List.of(plain.header("ETag")), HttpText.headers(answer, "ETag"));
        byte[] packed = HttpText.body(answer).getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);
        HttpText.assertHeader(answer, "Content-Length", Integer.toString(packed.length));
        assertArrayEquals(plain.asByteArray(), new GZIPInputStream(new ByteArrayInputStream(packed)).readAllBytes());
        String refused = RawHttp.sendBytes(Served.SERVER.port(), "GET /openapi.json HTTP/1.1", "Accept-Encoding: gzip;q=0\r\n");
        assertEquals(List.of(), HttpText.headers(refused, "Content-Encoding"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"a", "4bf92f3577b34da6a3ce929d0e0e4736", "client:1/2.3_4-5+6="})
    void echoesASafeRequestId(String id) {
        Served.given().header("X-Request-Id", id).get("/nothing").then().header("X-Request-Id", id)
                .body("requestId", equalTo(id));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "<script>", "two words", "a\"b", "${x}",
        "12345678901234567890123456789012345678901234567890123456789012345"})
    void replacesAnUnsafeRequestId(String id) {
        Served.given().header("X-Request-Id", id).get("/version").then().header("X-Request-Id", matchesPattern("[0-9a-f]{16}"));
    }

    @ParameterizedTest
    @ValueSource(strings = {QUERY, "/nothing", "/docs", "/version", "/openapi.yaml"})
    void everyAnswerPointsToTheContractAndIsNotSniffed(String path) {
        Served.given().get(path).then().header("X-Content-Type-Options", "nosniff").header("Referrer-Policy", "no-referrer")
                .header("Link", "</openapi.yaml>; rel=\"service-desc\", </docs>; rel=\"service-doc\"")
                .header("Server", nullValue()).header("X-Powered-By", nullValue());
    }

    @ParameterizedTest
    @ValueSource(strings = {"/docs", "/docs/try", "/problems/not-found"})
    void pagesRunNothingFromElsewhere(String path) {
        String policy = Served.given().get(path).then().contentType("text/html; charset=utf-8").extract()
                .header("Content-Security-Policy");
        List<String> directives = List.of(policy.split("; "));
        assertEquals(true, directives.containsAll(List.of("default-src 'none'", "frame-ancestors 'none'", "base-uri 'none'")), policy);
        assertEquals(true, directives.containsAll(List.of("script-src 'self'", "connect-src 'self'")), policy);
        assertFalse(policy.contains("http"), policy);
        assertFalse(policy.contains("*"), policy);
    }
}
