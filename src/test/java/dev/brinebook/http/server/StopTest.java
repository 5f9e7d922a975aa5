// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.Held;
import dev.brinebook.http.Served;
import dev.brinebook.http.Settings;
import dev.brinebook.http.Trial;
import java.net.ConnectException;
import java.net.Socket;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** A stop cuts nobody off: readiness goes first, running requests finish, then the port closes. */
@Timeout(60)
class StopTest {

    /** The common pool may have one thread, which a waiting request would hold. */
    private static final Executor OWN_THREAD = task -> new Thread(task).start();

    private final Held held = new Held(1);

    @Test
    void finishesTheRunningRequestAndReportsThatItIsStopping() throws Exception {
        BrinebookServer server = Served.start(List.of(Trial.doing(held::hold)), 5, Set.of());
        int port = server.port();
        int watching = server.metricsPort();
        CompletableFuture<Integer> request = CompletableFuture.supplyAsync(() -> Served.given(port)
                .contentType("application/json").body("{}").post(Trial.PATH).then().body("got", equalTo("finished"))
                .extract().statusCode(), OWN_THREAD);
        held.awaitBegun();
        Served.given(port).get("/health/ready").then().statusCode(200);
        CompletableFuture<Void> stop = CompletableFuture.runAsync(server::close, OWN_THREAD);
        TimeUnit.MILLISECONDS.sleep(200);
        for (int each : List.of(port, watching)) {
            Served.given(each).get("/health/ready").then().statusCode(503).body("status", equalTo("stopping"))
                    .header("Retry-After", "2");
            Served.given(each).get("/health/live").then().statusCode(200);
        }
        Served.given(port).get("/version").then().statusCode(200).header("Connection", "close");
        awaitClosed(port);
        assertFalse(stop.isDone(), "stopped with a request running");
        assertFalse(request.isDone());
        held.letEnd();
        assertEquals(200, request.get(20, TimeUnit.SECONDS));
        stop.get(20, TimeUnit.SECONDS);
        assertThrows(ConnectException.class, () -> new Socket("127.0.0.1", port).close());
        assertThrows(ConnectException.class, () -> new Socket("127.0.0.1", watching).close());
    }

    private static void awaitClosed(int port) throws Exception {
        try {
            while (true) {
                new Socket("127.0.0.1", port).close();
                TimeUnit.MILLISECONDS.sleep(100);
            }
        } catch (ConnectException closed) {
            // what is waited for; the class's time limit ends a wait in vain
        }
    }

    @Test
    void doesNotWaitForConnectionsWithoutARequest() throws Exception {
        BrinebookServer server = Served.start(List.of(Trial.doing(held::hold)), 0, Set.of());
        try (Socket idle = new Socket("127.0.0.1", server.port())) {
            idle.getOutputStream().write("GET /version HTTP/1.1\r\nHost: localhost\r\n\r\n".getBytes());
            assertTrue(idle.getInputStream().read() > 0);
            long start = System.nanoTime();
            server.close();
            assertTrue(System.nanoTime() - start < TimeUnit.SECONDS.toNanos(5));
        }
    }

    @Test
    void endsInTimeEvenWithARequestThatNeverEnds() throws Exception {
        BrinebookServer server = new BrinebookServer(new Settings(0, 0, "127.0.0.1", 2_048, 1, 0, Set.of()),
                List.of(Trial.doing(held::hold))).start();
        int port = server.port();
        CompletableFuture.runAsync(() -> Served.given(port).contentType("application/json").body("{}").post(Trial.PATH),
                OWN_THREAD);
        held.awaitBegun();
        long start = System.nanoTime();
        server.close();
        assertTrue(System.nanoTime() - start < TimeUnit.SECONDS.toNanos(10));
        held.letEnd();
    }
}
