// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.Held;
import dev.brinebook.http.Served;
import dev.brinebook.http.Trial;
import dev.brinebook.http.limit.ConcurrencyLimiter;
import dev.brinebook.log.LogOutput;
import io.restassured.response.Response;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What agents may not send, and what becomes of them when the service is busy or fails: Model Context Protocol, revision
 * 2025-11-25 where no other is named, "Streamable HTTP" and "Security Warning"; JSON-RPC 2.0, section 5.1; RFC 9110.
 */
class AgentFaultTest {

    private static final String ORIGIN = "https://example.org";
    private static final String PING = Agent.request("ping", "{}");
    private static final String SECRET = "secret-of-the-inside";

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "''                                                         | -32700",
        "{                                                          | -32700",
        "{\"jsonrpc\":\"2.0\",\"id\":1,\"method\":\"ping\"}}        | -32700",
        "{\"jsonrpc\":\"2.0\",\"id\":1,\"method\":\"ping\"} {}      | -32700",
        "{\"jsonrpc\":\"2.0\",\"id\":1,\"id\":2,\"method\":\"ping\"}| -32700",
        "{\"id\":1,\"method\":NaN}                                  | -32700",
        "{\"params\":{\"arguments\":{\"a\":1,\"a\":2}}}             | -32700",
        "{\"params\":{\"arguments\":{\"a\":1                        | -32700",
        "[]                                                         | -32600",
        "[1]                                                        | -32600",
        "null                                                       | -32600",
        "{}                                                         | -32600",
        "{\"jsonrpc\":\"1.0\",\"id\":1,\"method\":\"ping\"}         | -32600",
        "{\"id\":1,\"method\":\"ping\"}                             | -32600",
        "{\"jsonrpc\":\"2.0\",\"id\":null,\"method\":\"ping\"}      | -32600",
        "{\"jsonrpc\":\"2.0\",\"id\":1.5,\"method\":\"ping\"}       | -32600",
        "{\"jsonrpc\":\"2.0\",\"id\":{},\"method\":\"ping\"}        | -32600",
        "{\"jsonrpc\":\"2.0\",\"id\":1}                             | -32600",
        "{\"jsonrpc\":\"2.0\",\"id\":1,\"result\":{}}               | -32600",
        "{\"jsonrpc\":\"2.0\",\"id\":1,\"method\":[\"ping\"]}       | -32600",
        "{\"jsonrpc\":\"2.0\",\"id\":1,\"method\":\"ping\",\"params\":[]} | -32600"})
    void refusesInvalidMessages(String message, int code) {
        Response response = Agent.send(message);
        response.then().statusCode(400).contentType("application/json").body("jsonrpc", equalTo("2.0"))
                .body("id", nullValue()).body("error.code", equalTo(code)).body("result", nullValue());
        assertTellsNoInside(response);
    }

    @Test
    void refusesALargerMessageThanItTakes() {
        String message = Agent.calculate("convertHardness", Served.SMALLEST + " ".repeat(Served.MAX_BODY_BYTES));
        Agent.send(message).then().statusCode(413).contentType("application/problem+json").header("Connection", "close")
                .body("type", equalTo("/problems/body-too-large"));
        String largest = " ".repeat(Served.MAX_BODY_BYTES - PING.length()) + PING;
        Agent.send(largest).then().statusCode(200);
    }

    @Test
    void isHeldToTheSameHeadersAsEveryCaller() {
        Served.given().contentType("text/plain").body(PING).post(Agent.PATH).then().statusCode(415)
                .header("Accept-Post", "application/json");
        Served.posting(PING).accept("text/event-stream").post(Agent.PATH).then().statusCode(406);
        Served.posting(PING).post(Agent.PATH).then().statusCode(200).header("X-Content-Type-Options", "nosniff");
        Served.posting(PING).header("X-Request-Id", "mine").post(Agent.PATH).then().header("X-Request-Id", "mine");
        Served.given().contentType("application/json").body(new byte[] {'{', (byte) 0xff}).post(Agent.PATH).then()
                .statusCode(400).body("type", equalTo("/problems/malformed-body"));
    }

    /** Revision 2025-06-18, "Protocol Version Header": 400. The error is one of the protocol, so that no client takes it for another's. */
    @Test
    void speaksOnlyTheVersionsThatItAgreesTo() {
        for (String version : List.of("2025-03-26", "2025-06-18", "2025-11-25")) {
            Served.posting(PING).header("MCP-Protocol-Version", version).post(Agent.PATH).then().statusCode(200);
        }
        Served.posting(PING).header("MCP-Protocol-Version", "1999-01-01").post(Agent.PATH).then().statusCode(400)
                .contentType("application/json").body("error.code", equalTo(-32022))
                .body("error.data.supported", equalTo(List.of("2026-07-28", "2025-11-25", "2025-06-18", "2025-03-26")));
    }

    /** Revision 2025-03-26, "Batching": a server must take batches. No later revision has them. */
    @Test
    void takesBatchesWhereTheRevisionHasThem() {
        String batch = "[" + PING + ",{\"jsonrpc\":\"2.0\",\"method\":\"notifications/initialized\"},"
                + Agent.calculate("convertHardness", Served.SMALLEST) + "," + Agent.request("initialize", "{}") + "]";
        Agent.send(batch).then().statusCode(200).body("size()", equalTo(3)).body("[0].result.size()", equalTo(0))
                .body("[1].result.isError", equalTo(false)).body("[2].error.code", equalTo(-32600));
        Agent.send("[{\"jsonrpc\":\"2.0\",\"method\":\"notifications/initialized\"}]").then().statusCode(202);
        Agent.send("[" + (PING + ",").repeat(10) + PING + "]").then().statusCode(400).body("error.code", equalTo(-32600));
        Agent.posting(Served.SERVER.port(), batch).header("MCP-Protocol-Version", "2025-06-18").post(Agent.PATH).then()
                .statusCode(400).body("error.code", equalTo(-32600));
    }

    @ParameterizedTest
    @ValueSource(strings = {"GET", "DELETE", "PUT", "HEAD"})
    void hasNeitherStreamsNorSessions(String method) {
        Response response = Served.given().request(method, Agent.PATH);
        response.then().statusCode(405).header("Allow", "OPTIONS, POST");
        if (!method.equals("HEAD")) {
            response.then().body("type", equalTo("/problems/method-not-allowed"));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"https://example.com", "null", "http://127.0.0.1", "https://example.org.evil.test", ""})
    void refusesPagesOfOtherOrigins(String origin) {
        try (BrinebookServer open = Served.start(List.of(Trial.doing(Trial::echo)), 0, Set.of(ORIGIN))) {
            Stream.of("POST", "GET", "OPTIONS").forEach(method -> Agent.posting(open.port(), PING).header("Origin", origin)
                    .request(method, Agent.PATH).then().statusCode(403).contentType("application/problem+json")
                    .body("type", equalTo("/problems/origin-refused")).header("Access-Control-Allow-Origin", nullValue()));
            Agent.posting(open.port(), PING).header("Origin", ORIGIN).post(Agent.PATH).then().statusCode(200)
                    .header("Access-Control-Allow-Origin", ORIGIN);
            Served.given(open.port()).header("Origin", ORIGIN).header("Access-Control-Request-Method", "POST")
                    .options(Agent.PATH).then().statusCode(204).header("Allow", "OPTIONS, POST")
                    .header("Access-Control-Allow-Methods", containsString("POST"))
                    .header("Access-Control-Allow-Headers", containsString("MCP-Protocol-Version"));
        }
        Agent.posting(Served.SERVER.port(), PING).header("Origin", ORIGIN).post(Agent.PATH).then().statusCode(403);
    }

    /** A message that is far deeper than any request is not read to its end. */
    @Test
    void refusesAMessageThatIsNestedTooDeeply() {
        String deep = "[".repeat(50_000) + "]".repeat(50_000);
        for (String message : List.of("{\"jsonrpc\":\"2.0\",\"id\":1,\"method\":\"ping\",\"other\":" + deep + "}",
                Agent.calculate("tryOut", "{\"text\":" + deep + "}"))) {
            Response response = Agent.send(message);
            assertEquals(400, response.statusCode());
            assertEquals(-32_700, response.jsonPath().getInt("error.code"));
        }
    }

    @Test
    @Timeout(60)
    void asksToComeBackWhenTooManyCallsRun() throws Exception {
        Held held = new Held(ConcurrencyLimiter.MOST_OF_ONE_CALLER);
        ExecutorService callers = Executors.newCachedThreadPool();
        try (BrinebookServer server = Served.start(List.of(Trial.doing(held::hold)), 0, Set.of())) {
            String call = Agent.calculate("tryOut", "{}");
            Supplier<Integer> calling = () -> Agent.posting(server.port(), call).post(Agent.PATH).statusCode();
            List<CompletableFuture<Integer>> running = Stream.generate(
                    () -> CompletableFuture.supplyAsync(calling, callers)).limit(ConcurrencyLimiter.MOST_OF_ONE_CALLER).toList();
            held.awaitBegun();
            Agent.posting(server.port(), call).post(Agent.PATH).then().statusCode(503).header("Retry-After", "2")
                    .contentType("application/problem+json").body("type", equalTo("/problems/overloaded"));
            held.letEnd();
            for (CompletableFuture<Integer> each : running) {
                assertEquals(200, each.get(20, TimeUnit.SECONDS));
            }
            Agent.posting(server.port(), PING).post(Agent.PATH).then().statusCode(200);
        } finally {
            held.letEnd();
            callers.shutdown();
        }
    }

    @Test
    void revealsNoInternalsAndLogsNothingOfTheCaller() {
        PrintStream real = System.out;
        ByteArrayOutputStream log = new ByteArrayOutputStream();
        System.setOut(new PrintStream(log, true, StandardCharsets.UTF_8));
        try (BrinebookServer server = Served.start(List.of(Trial.doing(request -> {
            throw new IllegalArgumentException(SECRET);
        })), 0, Set.of())) {
            Response failed = Agent.posting(server.port(), Agent.calculate("tryOut", "{}")).header("X-Request-Id", "mine-1")
                    .post(Agent.PATH);
            failed.then().statusCode(500).contentType("application/problem+json")
                    .body("type", equalTo("/problems/internal-error")).body("requestId", equalTo("mine-1"));
            assertTellsNoInside(failed);
            String params = "{\"protocolVersion\":\"forged\\nline\",\"capabilities\":{},"
                    + "\"clientInfo\":{\"name\":\"forged\\nline\",\"version\":\"1\"}}";
            for (String method : List.of("forged\\nline", "initialize", "notifications/forged\\nline")) {
                String message = Agent.request(method, params);
                assertTellsNoInside(Agent.posting(server.port(), message).post(Agent.PATH));
            }
            String notification = "{\"jsonrpc\":\"2.0\",\"method\":\"forged\\nline\"}";
            Agent.posting(server.port(), notification).post(Agent.PATH).then().statusCode(202);
            LogOutput.finish();
        } finally {
            System.setOut(real);
        }
        String lines = log.toString(StandardCharsets.UTF_8);
        assertTrue(lines.contains("\"message\":\"failed\",\"requestId\":\"mine-1\",\"error\":") && lines.contains(SECRET), lines);
        assertFalse(lines.contains("forged") || lines.lines().anyMatch(line -> line.startsWith("line")), lines);
    }

    @Test
    void countsTheRequestsOfAgents() {
        Agent.send(PING).then().statusCode(200);
        Pattern count = Pattern.compile("http_server_requests_seconds_count\\{method=\"POST\",route=\"/mcp\",status=\"200\"");
        String metrics = Served.metrics(Served.SERVER, count.asPredicate());
        assertTrue(count.matcher(metrics).find(), metrics);
    }

    private static void assertTellsNoInside(Response response) {
        for (String inside : List.of("stackTrace", "Exception", "dev.brinebook", "fasterxml", "reactor", SECRET)) {
            assertFalse(response.asString().contains(inside), response.asString());
        }
    }
}
