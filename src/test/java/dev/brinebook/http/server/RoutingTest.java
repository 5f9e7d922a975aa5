// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.hamcrest.Matchers.anyOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.emptyOrNullString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.http.HttpText;
import dev.brinebook.http.RawHttp;
import dev.brinebook.http.Served;
import io.restassured.response.Response;
import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Paths and methods: RFC 9110 sections 9.3.2 (HEAD), 9.3.7 (OPTIONS), 10.2.1 (Allow), 15.5.5 (404), 15.5.6 (405). */
class RoutingTest {

    private static final String QUERY = Served.CONVERSION + "?value=18.5&unit=gpg";

    @ParameterizedTest
    @ValueSource(strings = {"/v1", "/v1/nothing", "/v1/hardness-conversion/", "/V1/hardness-conversion", "/metrics",
        "/problems/no-such", "/openapi.yml", "/favicon.ico"})
    void knowsNoOtherPath(String path) {
        for (String method : List.of("GET", "POST", "OPTIONS", "PATCH")) {
            if (path.equals("/problems/no-such") && !method.equals("GET")) {
                continue;
            }
            Served.given().request(method, path).then().statusCode(404).contentType("application/problem+json")
                    .body("type", equalTo("/problems/not-found")).body("instance", startsWith(path + "#"));
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            /v1/hardness-conversion  | PUT    | GET, HEAD, OPTIONS, POST
            /v1/hardness-conversion  | DELETE | GET, HEAD, OPTIONS, POST
            /v1/hardness-conversion  | TRACE  | GET, HEAD, OPTIONS, POST
            /v1/hardness-conversion  | NONE   | GET, HEAD, OPTIONS, POST
            /version                 | POST   | GET, HEAD, OPTIONS
            /problems/not-found      | POST   | GET, HEAD, OPTIONS
            /docs                    | PATCH  | GET, HEAD, OPTIONS
            /llms.txt                | POST   | GET, HEAD, OPTIONS
            /mcp                     | DELETE | OPTIONS, POST
            """)
    void namesTheMethodsOfAPath(String path, String method, String allow) {
        Served.given().request(method, path).then().statusCode(405).header("Allow", allow)
                .body("type", equalTo("/problems/method-not-allowed"));
        Served.given().options(path).then().statusCode(204).header("Allow", allow).body(is(emptyOrNullString()))
                .header("Access-Control-Allow-Origin", emptyOrNullString());
    }

    static Stream<String> readable() {
        return Stream.of(QUERY, "/openapi.json", "/openapi.yaml", "/", "/example-shop", "/element/brinebook.js", "/docs",
                "/docs/page.css", "/problems/not-found", "/version", "/health/live", "/health/ready", "/.well-known/api-catalog",
                "/nothing", Served.CONVERSION + "?value=-1&unit=gpg");
    }

    @ParameterizedTest
    @MethodSource("readable")
    void headIsGetWithoutTheBody(String path) {
        for (String encoding : List.of("identity", "gzip")) {
            Response get = Served.given().header("X-Request-Id", "same").header("Accept-Encoding", encoding).get(path);
            Response head = Served.given().header("X-Request-Id", "same").header("Accept-Encoding", encoding).head(path);
            assertEquals(get.statusCode(), head.statusCode());
            for (String name : List.of("Content-Type", "Content-Encoding", "Content-Length", "ETag", "Cache-Control", "Vary", "Link",
                    "X-Request-Id", "Content-Security-Policy")) {
                assertEquals(get.header(name), head.header(name), name);
            }
            assertEquals(0, head.asByteArray().length);
        }
    }

    /** RFC 9112, section 9.6. No tunnel is ever opened, so that nothing more can come on the connection. */
    @ParameterizedTest
    @ValueSource(strings = {"CONNECT localhost:80 HTTP/1.1", "PUT /version HTTP/1.1"})
    void closesWhatItRefusedWhereTheCallerAsksForIt(String requestLine) throws IOException {
        String answer = RawHttp.send(Served.SERVER.port(), requestLine, "", "");
        HttpText.assertProblem(answer, 405, "method-not-allowed");
        HttpText.assertHeader(answer, "Connection", "close");
    }

    @Test
    void queryAndBodyGiveTheSameBytes() {
        String posted = Served.posting(Served.SMALLEST).post(Served.CONVERSION).asString();
        assertEquals(posted, Served.given().get(QUERY).asString());
        assertEquals(posted, Served.given().get(Served.CONVERSION + "?unit=%67pg&value=1850e-2").asString());
        assertEquals(posted, Served.posting(Served.SMALLEST).post(Served.CONVERSION).asString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            value=1&unit=%zz     | The query is not percent-encoded correctly.
            value=1&unit=%       | The query is not percent-encoded correctly.
            value=1&un%2=gpg     | The query is not percent-encoded correctly.
            value=1&unit=%ff     | The query is not UTF-8, or a part of it is longer than 128 characters.
            value=1&unit=%ed%a0%80 | The query is not UTF-8, or a part of it is longer than 128 characters.
            """)
    void refusesAQueryThatIsNotProperlyEncoded(String query, String detail) throws Exception {
        String answer = RawHttp.send(Served.SERVER.port(), "GET " + Served.CONVERSION + "?" + query + " HTTP/1.1", "", "");
        HttpText.assertProblem(answer, 400, "malformed-query");
        assertEquals(detail, io.restassured.path.json.JsonPath.from(HttpText.body(answer)).getString("detail"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            unit=gpg                        | /hardness/value | value | missing
            value=1                         | /hardness/unit  | unit  | missing
            value=1&unit=gpg&valu=2         | /valu           | valu  | unknownField
            value=1&unit=gpg&a/b~=2         | /a~1b~0         | a/b~  | unknownField
            value=1&unit=gpg&unit=gpg       | /hardness/unit  | unit  | inconsistent
            value=abc&unit=gpg              | /hardness/value | value | wrongType
            value=&unit=gpg                 | /hardness/value | value | wrongType
            value&unit=gpg                  | /hardness/value | value | wrongType
            value=1e999999999&unit=gpg      | /hardness/value | value | wrongType
            value=NaN&unit=gpg              | /hardness/value | value | wrongType
            value=-1&unit=gpg               | /hardness/value | value | outOfRange
            value=1&unit=GPG                | /hardness/unit  | unit  | unknownValue
            """)
    void namesTheParameterAtFault(String query, String pointer, String parameter, String code) {
        Served.given().get(Served.CONVERSION + "?" + query).then().statusCode(422)
                .body("errors[0].pointer", equalTo(pointer)).body("errors[0].parameter", equalTo(parameter))
                .body("errors[0].code", equalTo(code)).body("errors.size()", equalTo(1));
    }

    /** A parameter that is not read would be taken for one that counts. */
    @ParameterizedTest
    @ValueSource(strings = {Served.CONVERSION, "/v1/bulk/convertHardness"})
    void aPostOfJsonTakesNoQuery(String path) {
        String type = path.equals(Served.CONVERSION) ? "application/json" : "application/x-ndjson";
        for (String empty : List.of("", "?&")) {
            Served.given().header("Content-Type", type).body(Served.SMALLEST.getBytes()).post(path + empty).then().statusCode(200);
        }
        Served.given().header("Content-Type", type).body(Served.SMALLEST.getBytes()).post(path + "?unit=dH").then().statusCode(422)
                .body("errors[0].pointer", equalTo("/unit")).body("errors[0].parameter", equalTo("unit"))
                .body("errors[0].code", equalTo("unknownField"))
                .body("errors[0].message", startsWith("Unknown field. Known fields: "));
        Served.given().header("Content-Type", type).body(Served.SMALLEST.getBytes()).post(path + "?%ff=1").then().statusCode(400)
                .body("type", equalTo("/problems/malformed-query"));
    }

    @Test
    void refusesALongParameter() {
        Served.given().get(Served.CONVERSION + "?value=1&unit=" + "x".repeat(129)).then().statusCode(400)
                .body("detail", anyOf(containsString("longer than 128 characters")));
    }
}
