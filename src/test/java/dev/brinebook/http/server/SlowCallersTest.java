// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Main;
import dev.brinebook.http.HttpText;
import dev.brinebook.http.RawHttp;
import dev.brinebook.http.Served;
import dev.brinebook.http.Settings;
import java.io.IOException;
import java.net.Socket;
import java.net.SocketException;
import java.net.SocketTimeoutException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Callers that hold what others need: connections that say nothing, bodies that drip in (RFC 9110, section 15.5.9). */
@Timeout(60)
class SlowCallersTest {

    private static final String POST = "POST " + Served.CONVERSION + " HTTP/1.1\r\nHost: localhost\r\n"
            + "Content-Type: application/json\r\nContent-Length: 1000\r\n\r\n";
    private static final int CONNECTIONS = 10;

    private final List<Socket> sockets = new ArrayList<>();

    private BrinebookServer start(int requestSeconds) {
        return new BrinebookServer(new Settings(0, 0, "127.0.0.1", 2_048, 1, 0, Set.of(), requestSeconds, CONNECTIONS, 0, "", 10_000),
                Main.OPERATIONS).start();
    }

    /** A byte now and then keeps the connection from being idle, but not the body from being late. */
    @Test
    void refusesABodyThatDripsIn() throws Exception {
        try (BrinebookServer server = start(1); Socket socket = connect(server.port(), POST)) {
            Thread drip = new Thread(() -> {
                try {
                    for (int i = 0; i < 100; i++) {
                        socket.getOutputStream().write(' ');
                        TimeUnit.MILLISECONDS.sleep(100);
                    }
                } catch (IOException | InterruptedException refused) {
                    // what is wanted
                }
            });
            long start = System.nanoTime();
            drip.start();
            String answer = new String(socket.getInputStream().readNBytes(15), StandardCharsets.US_ASCII);
            assertEquals("HTTP/1.1 408 Re", answer);
            assertTrue(System.nanoTime() - start < TimeUnit.SECONDS.toNanos(5), "long before the drip ends");
            drip.interrupt();
            drip.join();
        }
    }

    /** Heads that drip in hold connections, which are bounded, and no thread: others are answered meanwhile. */
    @Test
    void slowHeadsDelayNoOtherCaller() throws Exception {
        try (BrinebookServer server = start(10)) {
            for (int i = 0; i < CONNECTIONS - 1; i++) {
                sockets.add(connect(server.port(), "GET /version HTTP/1.1\r\nX: "));
            }
            for (int i = 0; i < 5; i++) {
                for (Socket socket : sockets) {
                    socket.getOutputStream().write('a');
                }
                String answer = RawHttp.send(server.port(), "GET /version HTTP/1.1", "", "");
                assertTrue(answer.startsWith("HTTP/1.1 200 "), answer);
                Served.given(server.metricsPort()).get("/health/ready").then().statusCode(200);
            }
            String metrics = metrics(server);
            assertTrue(metrics.contains("http_server_requests_in_flight 0.0\n"), metrics);
            assertTrue(metrics.contains("jetty_connections_current_connections{connector_name=\"service\"} "
                    + (CONNECTIONS - 1) + ".0\n"), metrics);
        } finally {
            for (Socket socket : sockets) {
                socket.close();
            }
        }
    }

    /** No request has begun that could be late, and the connection is never idle; yet it holds a place that others need. */
    @Test
    void closesAConnectionWhoseHeadDripsIn() throws Exception {
        try (BrinebookServer server = start(1); Socket socket = connect(server.port(), "GET /version HTTP/1.1\r\nX-Slow: ")) {
            socket.setSoTimeout(100);
            long start = System.nanoTime();
            boolean open = true;
            while (open) {
                open = takesAnother(socket);
            }
            assertTrue(System.nanoTime() - start < TimeUnit.SECONDS.toNanos(20));
        }
    }

    private static boolean takesAnother(Socket socket) throws IOException {
        try {
            socket.getOutputStream().write('a');
            return socket.getInputStream().read() >= 0;
        } catch (SocketTimeoutException noAnswer) {
            return true;
        } catch (SocketException reset) {
            return false;
        }
    }

    /** It has said nothing since its last answer, so that there is no head to wait for. */
    @Test
    void keepsAConnectionBetweenTwoRequests() throws Exception {
        byte[] request = "HEAD /version HTTP/1.1\r\nHost: localhost\r\n\r\n".getBytes(StandardCharsets.US_ASCII);
        try (BrinebookServer server = start(1); Socket socket = connect(server.port(), "")) {
            socket.setSoTimeout(10_000);
            for (int i = 0; i < 3; i++) {
                socket.getOutputStream().write(request);
                StringBuilder head = new StringBuilder();
                while (head.indexOf("\r\n\r\n") < 0) {
                    int next = socket.getInputStream().read();
                    assertTrue(next >= 0, "closed after " + head);
                    head.append((char) next);
                }
                assertTrue(head.toString().startsWith("HTTP/1.1 200 "), head.toString());
                TimeUnit.MILLISECONDS.sleep(2_500);
            }
        }
    }

    /** The port of the service is full; that of the orchestrator answers, and silent connections soon make room. */
    @Test
    void takesNoMoreConnectionsThanItMayAndStaysHealthy() throws Exception {
        try (BrinebookServer server = start(10)) {
            for (int i = 0; i < CONNECTIONS; i++) {
                sockets.add(connect(server.port(), ""));
                TimeUnit.MILLISECONDS.sleep(50);
            }
            try (Socket next = connect(server.port(), "GET /version HTTP/1.1\r\nHost: localhost\r\n\r\n")) {
                next.setSoTimeout(500);
                assertThrows(SocketTimeoutException.class, () -> next.getInputStream().read(), "is not yet taken");
                Served.given(server.metricsPort()).get("/health/ready").then().statusCode(200);
                next.setSoTimeout(20_000);
                assertEquals('H', next.getInputStream().read(), "is taken when the silent ones are closed");
            }
        } finally {
            for (Socket socket : sockets) {
                socket.close();
            }
        }
    }

    /** Bodies that do not come hold neither threads nor permits: more of them than there are threads leave others what they need. */
    @Test
    void missingBodiesDelayNoOtherCaller() throws Exception {
        try (BrinebookServer server = Served.start(Main.OPERATIONS, 0, Set.of())) {
            for (int i = 0; i < 2 * RequestLimit.MOST_AT_ONCE; i++) {
                sockets.add(connect(server.port(), POST + "{"));
            }
            for (int i = 0; i < 20; i++) {
                Served.given(server.port()).contentType("application/json").body(Served.SMALLEST).post(Served.CONVERSION).then()
                        .statusCode(200);
            }
            assertTrue(metrics(server).contains("http_server_requests_in_flight 0.0\n"));
        } finally {
            for (Socket socket : sockets) {
                socket.close();
            }
        }
    }

    /** The deadline of a body does not move, whether a byte comes now and then or none at all. */
    @ParameterizedTest
    @ValueSource(ints = {0, 100, 900})
    void endsABodyThatIsLate(int pauseMilliseconds) throws Exception {
        try (BrinebookServer server = start(1); Socket socket = connect(server.port(), POST + "{")) {
            socket.setSoTimeout(pauseMilliseconds == 0 ? 10_000 : pauseMilliseconds);
            long start = System.nanoTime();
            StringBuilder answer = new StringBuilder();
            while (!answer.toString().contains("request-timeout")) {
                try {
                    int next = socket.getInputStream().read();
                    assertTrue(next >= 0, "closed after " + answer);
                    answer.append((char) next);
                } catch (SocketTimeoutException notYet) {
                    socket.getOutputStream().write(' ');
                }
            }
            HttpText.assertProblem(answer + new String(socket.getInputStream().readAllBytes(), StandardCharsets.US_ASCII), 408,
                    "request-timeout");
            long milliseconds = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
            assertTrue(milliseconds >= 950 && milliseconds < 5_000, milliseconds + " ms");
        }
    }

    private static String metrics(BrinebookServer server) {
        return Served.given(server.metricsPort()).get("/metrics").asString();
    }

    private static Socket connect(int port, String begin) throws IOException {
        Socket socket = new Socket("127.0.0.1", port);
        socket.getOutputStream().write(begin.getBytes(StandardCharsets.US_ASCII));
        return socket;
    }
}
