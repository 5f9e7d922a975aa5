// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.Held;
import dev.brinebook.http.HttpText;
import dev.brinebook.http.Served;
import dev.brinebook.http.Trial;
import dev.brinebook.http.limit.ConcurrencyLimiter;
import java.io.IOException;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** More calculations than the service can run: RFC 9110 sections 15.6.4 (503) and 10.2.3 (Retry-After). */
@Timeout(60)
class OverloadTest {

    private static final String HEAD = "POST " + Trial.PATH + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n"
            + "Content-Type: application/json\r\nContent-Length: 2\r\n\r\n";

    private final Held held = new Held(ConcurrencyLimiter.MOST_OF_ONE_CALLER);

    @Test
    void asksToComeBackAndStaysHealthyUntilAPermitIsFree() throws Exception {
        ExecutorService callers = Executors.newCachedThreadPool();
        try (BrinebookServer server = Served.start(List.of(Trial.doing(held::hold)), 0, Set.of())) {
            List<CompletableFuture<Integer>> running = new ArrayList<>();
            for (int i = 0; i < ConcurrencyLimiter.MOST_OF_ONE_CALLER; i++) {
                running.add(CompletableFuture.supplyAsync(() -> status(server.port()), callers));
            }
            held.awaitBegun();
            Served.given(server.port()).contentType("application/json").body("{}").post(Trial.PATH).then().statusCode(503)
                    .header("Content-Type", "application/problem+json").body("type", equalTo("/problems/overloaded"))
                    .header("Retry-After", "2");
            Served.given(server.port()).get("/health/ready").then().statusCode(200);
            assertTrue(Served.given(server.metricsPort()).get("/metrics").asString()
                    .contains("http_server_rejected_total{reason=\"permits\"} 1.0"));
            held.letEnd();
            for (CompletableFuture<Integer> each : running) {
                assertEquals(200, each.get(20, TimeUnit.SECONDS));
            }
            assertEquals(200, status(server.port()));
        } finally {
            held.letEnd();
            callers.shutdown();
        }
    }

    /** What would wait in vain is not even read, so that refusing costs little of what calculating needs. */
    @Test
    void refusesBeforeTheBodyComesWhatWouldWaitInVain() throws Exception {
        ExecutorService callers = Executors.newCachedThreadPool();
        List<Socket> waiting = new ArrayList<>();
        try (BrinebookServer server = Served.start(List.of(Trial.doing(held::hold)), 0, Set.of())) {
            for (int i = 0; i < ConcurrencyLimiter.MOST_OF_ONE_CALLER; i++) {
                callers.submit(() -> status(server.port()));
            }
            held.awaitBegun();
            String refused = "";
            for (int asked = 0; refused.isEmpty(); asked++) {
                if (asked % 10 == 0) { // those who wait are refused after a second, so that more must come
                    ask(server.port(), waiting);
                }
                refused = answerWithoutBody(server.port());
            }
            HttpText.assertProblem(refused, 503, "overloaded");
            assertTrue(refused.contains("\r\nRetry-After: 2\r\n"), refused);
            Served.given(server.port()).get("/version").then().statusCode(200);
            held.letEnd();
        } finally {
            held.letEnd();
            callers.shutdown();
            for (Socket socket : waiting) {
                socket.close();
            }
        }
    }

    private static void ask(int port, List<Socket> waiting) throws IOException {
        for (int i = 0; i < ConcurrencyLimiter.MOST_WAITING + 4; i++) {
            Socket socket = new Socket("127.0.0.1", port);
            waiting.add(socket);
            socket.getOutputStream().write((HEAD + "{}").getBytes(StandardCharsets.US_ASCII));
        }
    }

    /** What is answered to the head of a request within a while; empty when its body is waited for. */
    private static String answerWithoutBody(int port) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", port)) {
            socket.setSoTimeout(900); // a refusal takes half a second
            socket.getOutputStream().write(HEAD.getBytes(StandardCharsets.US_ASCII));
            int first = socket.getInputStream().read();
            socket.setSoTimeout(5_000);
            return (char) first + new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        } catch (SocketTimeoutException waitsForTheBody) {
            return "";
        }
    }

    /** Calculation only: more threads, or virtual ones without a bound, would but wait for processors. */
    @Test
    void threadsAndWhatWaitsForThemAreBounded() {
        QueuedThreadPool threads = ServerConnectors.threads();
        assertTrue(threads.getMaxThreads() > RequestLimit.MOST_AT_ONCE && threads.getMaxThreads() < 300);
        assertNull(threads.getVirtualThreadsExecutor());
    }

    /** More streams than permits, each with a line that does not end: one that waits for a single answer has it all the same. */
    @Test
    void streamsLeavePermitsToOthers() throws Exception {
        Held lines = new Held(ConcurrencyLimiter.AT_ONCE_IN_BULK);
        ExecutorService callers = Executors.newCachedThreadPool();
        try (BrinebookServer server = Served.start(List.of(Trial.doing(request -> "list".equals(request.text())
                ? lines.hold(request) : Trial.echo(request))), 0, Set.of())) {
            List<CompletableFuture<String>> streams = new ArrayList<>();
            for (int i = 0; i < 2 * ConcurrencyLimiter.AT_ONCE; i++) {
                streams.add(CompletableFuture.supplyAsync(() -> Served.given(server.port()).contentType("application/x-ndjson")
                        .body("{\"text\": \"list\"}\n{}".getBytes(StandardCharsets.UTF_8)).post("/v1/bulk/tryOut").asString(), callers));
            }
            lines.awaitBegun();
            assertEquals(200, status(server.port()));
            lines.letEnd();
            for (CompletableFuture<String> each : streams) {
                assertEquals(2, each.get(20, TimeUnit.SECONDS).lines().filter(line -> line.contains("\"status\":200")).count());
            }
            assertTrue(Served.given(server.metricsPort()).get("/metrics").asString()
                    .contains("bulk_lines_total{operation=\"tryOut\",outcome=\"answered\"} " + 4.0 * ConcurrencyLimiter.AT_ONCE));
        } finally {
            lines.letEnd();
            callers.shutdown();
        }
    }

    private static int status(int port) {
        return Served.given(port).contentType("application/json").body("{}").post(Trial.PATH).statusCode();
    }
}
