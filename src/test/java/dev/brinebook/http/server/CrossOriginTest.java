// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import dev.brinebook.http.HttpText;
import dev.brinebook.http.RawHttp;
import dev.brinebook.http.Served;
import dev.brinebook.http.Trial;
import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What scripts of other origins may read: the Fetch standard, sections 3.3 (CORS protocol) and 4.9 (CORS check); RFC 9110
 * section 12.5.5 (Vary). Every way in which a request ends, also before any handler, for every kind of origin.
 */
class CrossOriginTest {

    private static final String LISTED = "https://shop.example";
    private static final String LISTED_TOO = "http://localhost:3000";
    private static final String EXPOSED = "ETag, Link, Retry-After, X-Request-Id, Model-Version, Content-Language, Allow, Accept-Post, "
            + "WWW-Authenticate, RateLimit, RateLimit-Policy, Table-Separator, Passed-Columns";

    private static final String CONVERSION = "POST " + Served.CONVERSION + " HTTP/1.1";
    private static final String GET = "GET " + Served.CONVERSION + "?value=18.5&unit=gpg HTTP/1.1";
    private static final String JSON = "Content-Type: application/json\r\n";
    private static final String ASKED = "Access-Control-Request-Method: POST\r\n";

    private static BrinebookServer server;

    /** How a request is made, how it ends, and whether the server came to know its headers. */
    private record Case(int status, boolean headersKnown, String requestLine, String headers, String body) {
    }

    private static final List<Case> CASES = List.of(
            new Case(200, true, GET, "", ""),
            new Case(304, true, GET, "If-None-Match: *\r\n", ""),
            new Case(200, true, CONVERSION, length(JSON, Served.SMALLEST), Served.SMALLEST),
            new Case(200, true, "POST /v1/bulk/convertHardness HTTP/1.1",
                    length("Content-Type: application/x-ndjson\r\n", Served.SMALLEST), Served.SMALLEST),
            new Case(200, true, "GET /v1/bulk/convertHardness/template HTTP/1.1", "", ""),
            new Case(200, true, "GET /health/ready HTTP/1.1", "", ""),
            new Case(204, true, "OPTIONS " + Served.CONVERSION + " HTTP/1.1", ASKED, ""),
            new Case(400, true, CONVERSION, length(JSON, "{"), "{"),
            new Case(400, true, CONVERSION, JSON + "Transfer-Encoding: chunked\r\n", "no size\r\n"),
            new Case(400, true, "GET " + Served.CONVERSION + "?unit=%zz HTTP/1.1", "", ""),
            new Case(400, true, "GET /v1/a%2fb HTTP/1.1", "", ""),
            new Case(400, false, "GET /%zz HTTP/1.1", "", ""),
            new Case(400, false, CONVERSION, JSON + "Content-Length: many\r\n", ""),
            new Case(404, true, "GET /nothing HTTP/1.1", "", ""),
            new Case(404, true, "POST /v1/bulk/nothing HTTP/1.1", length(JSON, "{}"), "{}"),
            new Case(404, true, "OPTIONS /nothing HTTP/1.1", "", ""),
            new Case(405, true, "PUT " + Served.CONVERSION + " HTTP/1.1", length(JSON, "{}"), "{}"),
            new Case(405, true, "GET /v1/settings-review HTTP/1.1", "", ""),
            new Case(406, true, GET, "Accept: image/png\r\n", ""),
            new Case(413, true, CONVERSION, JSON + "Content-Length: 99999999\r\n", ""),
            new Case(414, false, "GET /" + "x".repeat(20_000) + " HTTP/1.1", "", ""),
            new Case(415, true, CONVERSION, length("Content-Type: text/plain\r\n", "{}"), "{}"),
            new Case(422, true, CONVERSION, length(JSON, "{}"), "{}"),
            new Case(431, false, "GET /version HTTP/1.1", "X-Long: " + "x".repeat(20_000) + "\r\n", ""),
            new Case(500, true, "POST " + Trial.PATH + " HTTP/1.1", length(JSON, "{}"), "{}"),
            new Case(400, false, "GET /version HTTP/9.9", "", ""));

    @BeforeAll
    static void start() {
        List<Operation<?, ?>> operations = Stream.concat(Main.OPERATIONS.stream(), Stream.of(Trial.doing(request -> {
            throw new IllegalStateException("for the test");
        }))).toList();
        server = Served.start(operations, 0, Set.of(LISTED, LISTED_TOO));
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    static Stream<Arguments> originsAndCases() {
        return Stream.of(LISTED, LISTED_TOO, "https://shop.example.evil.test", "null", "-").flatMap(origin -> CASES.stream()
                .map(one -> Arguments.of(origin, one.status(), one.requestLine().substring(0, Math.min(70,
                        one.requestLine().length())), one)));
    }

    @ParameterizedTest(name = "{0}: {1} {2}")
    @MethodSource("originsAndCases")
    void everyAnswerCanBeReadByTheListedOriginsAndNoOther(String origin, int status, String what, Case one)
            throws IOException {
        String from = origin.equals("-") ? "" : "Origin: " + origin + "\r\n";
        String answer = RawHttp.send(server.port(), one.requestLine(), from + one.headers(), one.body());
        assertTrue(answer.startsWith("HTTP/1.1 " + status + " "), answer);
        boolean listed = origin.equals(LISTED) || origin.equals(LISTED_TOO);
        List<String> readers = !one.headersKnown() ? List.of("*") : listed ? List.of(origin) : List.of();
        assertEquals(readers, HttpText.headers(answer, "Access-Control-Allow-Origin"));
        assertEquals(readers.isEmpty() ? List.of() : List.of(EXPOSED), HttpText.headers(answer, "Access-Control-Expose-Headers"));
        assertEquals(List.of(), HttpText.headers(answer, "Access-Control-Allow-Credentials"));
        Set<String> vary = new TreeSet<>(HttpText.headers(answer, "Vary"));
        assertTrue(vary.contains("Origin"), vary.toString());
        if (status >= 400) {
            assertEquals(List.of("application/problem+json"), HttpText.headers(answer, "Content-Type"));
        }
    }

    /** A browser sends what its question allows; the service then refuses it in words that the script can read. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            /v1/hardness-conversion | POST
            /v1/assessment          | GET
            /nothing                | POST
            /problems/nothing       | GET
            """)
    void whatIsRefusedIsAskedForFirst(String path, String method) throws IOException {
        String asked = "Access-Control-Request-Method: " + method + "\r\nAccess-Control-Request-Headers: content-type\r\n";
        String allowed = RawHttp.send(server.port(), "OPTIONS " + path + " HTTP/1.1", "Origin: " + LISTED + "\r\n" + asked, "");
        assertTrue(allowed.startsWith("HTTP/1.1 204 "), allowed);
        HttpText.assertHeader(allowed, "Access-Control-Allow-Origin", LISTED);
        assertTrue(HttpText.headers(allowed, "Access-Control-Allow-Methods").get(0).contains(method), allowed);
        assertTrue(HttpText.headers(allowed, "Access-Control-Allow-Headers").get(0).contains("Content-Type"), allowed);
        HttpText.assertHeader(allowed, "Access-Control-Max-Age", "600");
        String other = RawHttp.send(server.port(), "OPTIONS " + path + " HTTP/1.1", "Origin: https://b.test\r\n" + asked, "");
        assertEquals(List.of(), HttpText.headers(other, "Access-Control-Allow-Methods"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            /v1/hardness-conversion | GET, HEAD, OPTIONS, POST
            /v1/settings-review     | OPTIONS, POST
            /v1/bulk/assess         | OPTIONS, POST
            /problems/not-found     | GET, HEAD, OPTIONS
            /nothing                | GET, HEAD, POST
            """)
    void allowsTheMethodsOfThePathAndNoOther(String path, String methods) throws IOException {
        String allowed = RawHttp.send(server.port(), "OPTIONS " + path + " HTTP/1.1", "Origin: " + LISTED + "\r\n" + ASKED, "");
        HttpText.assertHeader(allowed, "Access-Control-Allow-Methods", methods);
    }

    /** Without a list nothing of all that is sent, so that caches keep one answer for everybody. */
    @Test
    void aServerThatListsNoOriginSaysNothingOfThem() throws IOException {
        for (Case one : CASES.stream().filter(c -> c.status() != 500).toList()) {
            String answer = RawHttp.send(Served.SERVER.port(), one.requestLine(), "Origin: " + LISTED + "\r\n" + one.headers(),
                    one.body());
            assertEquals(List.of(), HttpText.headers(answer, "Access-Control-Allow-Origin"), answer);
            assertTrue(!HttpText.headers(answer, "Vary").contains("Origin"), answer);
        }
    }

    private static String length(String headers, String body) {
        return headers + "Content-Length: " + body.length() + "\r\n";
    }
}
