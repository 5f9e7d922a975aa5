// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.HttpText;
import dev.brinebook.http.Served;
import dev.brinebook.http.Settings;
import dev.brinebook.http.Trial;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Callers of streams that pause or break off. What a whole answer ends with: RFC 9112, sections 7.1 and 8. */
@Timeout(60)
class BulkPauseTest {

    private static final String END = "\r\n0\r\n\r\n";
    private static final int LINES = 700;
    /** So long that all of them together fill every buffer on the way: 23 MB. */
    private static final String LONG_ANSWER = "x".repeat(32_768);

    private static BrinebookServer server(long longestPauseMillis) {
        return new BrinebookServer(new Settings(0, 0, "127.0.0.1", Served.MAX_BODY_BYTES, 5, 0, Set.of()),
                List.of(Trial.doing(request -> new Trial.Answer(request.seed() == null ? "short" : LONG_ANSWER))),
                Duration.ofMillis(longestPauseMillis)).start();
    }

    @Test
    void aReaderMayPauseAndHoldsNoOtherCaller() throws Exception {
        try (BrinebookServer server = server(20_000); Socket socket = connect(server)) {
            CompletableFuture<Boolean> sent = sendAll(socket);
            TimeUnit.MILLISECONDS.sleep(1_500);
            assertFalse(sent.isDone(), "it is waited for");
            for (int i = 0; i < 20; i++) {
                Served.given(server.port()).contentType("application/json").body("{}").post(Trial.PATH).then().statusCode(200);
                assertEquals(1, Served.given(server.port()).contentType("application/x-ndjson")
                        .body("{}".getBytes(StandardCharsets.UTF_8)).post("/v1/bulk/tryOut").asString().lines().count());
            }
            String answer = read(socket);
            assertTrue(sent.get(10, TimeUnit.SECONDS));
            assertTrue(answer.endsWith(END), "it is whole");
            int at = 0;
            for (int line = 1; line <= LINES; line++) {
                at = answer.indexOf("{\"line\":" + line + ",\"status\":200,", at);
                assertTrue(at >= 0, "line " + line + " is in its place");
            }
        }
    }

    @Test
    void aReaderThatPausesTooLongIsCutOffAndSeesIt() throws Exception {
        try (BrinebookServer server = server(500); Socket socket = connect(server)) {
            CompletableFuture<Boolean> sent = sendAll(socket);
            assertFalse(sent.get(20, TimeUnit.SECONDS), "the connection is closed while it sends");
            String answer = read(socket);
            assertTrue(answer.startsWith("HTTP/1.1 200 "));
            assertFalse(answer.endsWith(END), "it is not whole");
            assertFalse(answer.contains("\"line\":" + LINES + ","));
        }
    }

    @Test
    void aSenderThatPausesTooLongGetsALastLine() throws Exception {
        try (BrinebookServer server = server(500); Socket socket = connect(server)) {
            OutputStream out = socket.getOutputStream();
            head(out, "application/x-ndjson");
            chunk(out, "{}\n{");
            String answer = read(socket);
            assertTrue(answer.contains("{\"line\":1,\"status\":200,\"answer\":"), answer);
            assertTrue(answer.contains("{\"line\":2,\"status\":408,\"problem\":{\"type\":\"/problems/request-timeout\""), answer);
            assertTrue(answer.endsWith("}\n" + END), answer);
        }
    }

    @Test
    void aHeaderThatDoesNotComeIsAProblemOfTheWhole() throws Exception {
        try (BrinebookServer server = server(500); Socket socket = connect(server)) {
            OutputStream out = socket.getOutputStream();
            head(out, "text/csv");
            chunk(out, "number,");
            HttpText.assertProblem(read(socket), 408, "request-timeout");
        }
    }

    @Test
    void aBodyThatBreaksOffIsReportedInALastLine() throws Exception {
        try (BrinebookServer server = server(20_000); Socket socket = connect(server)) {
            OutputStream out = socket.getOutputStream();
            head(out, "application/x-ndjson");
            chunk(out, "{}\n");
            out.write("no size of a chunk\r\n".getBytes(StandardCharsets.US_ASCII));
            String answer = read(socket);
            assertTrue(answer.contains("{\"line\":1,\"status\":200,\"answer\":"), answer);
            assertTrue(answer.contains("{\"line\":2,\"status\":400,\"problem\":{\"type\":\"/problems/bad-request\""), answer);
        }
    }

    private static Socket connect(BrinebookServer server) throws IOException {
        Socket socket = new Socket();
        socket.setReceiveBufferSize(8_192);
        socket.setSoTimeout(20_000);
        socket.connect(new InetSocketAddress("127.0.0.1", server.port()));
        return socket;
    }

    /** Sends every line; false when the connection is closed before. */
    private static CompletableFuture<Boolean> sendAll(Socket socket) {
        return CompletableFuture.supplyAsync(() -> {
            try {
                OutputStream out = socket.getOutputStream();
                head(out, "application/x-ndjson");
                for (int i = 0; i < LINES; i++) {
                    chunk(out, "{\"seed\": 1}" + " ".repeat(30_000) + "\n");
                }
                out.write("0\r\n\r\n".getBytes(StandardCharsets.US_ASCII));
                return true;
            } catch (IOException closed) {
                return false;
            }
        });
    }

    private static void head(OutputStream out, String type) throws IOException {
        out.write(("POST /v1/bulk/tryOut HTTP/1.1\r\nHost: a\r\nContent-Type: " + type
                + "\r\nTransfer-Encoding: chunked\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
        out.flush();
    }

    private static void chunk(OutputStream out, String text) throws IOException {
        out.write((Integer.toHexString(text.length()) + "\r\n" + text + "\r\n").getBytes(StandardCharsets.US_ASCII));
        out.flush();
    }

    /** What comes until the answer ends or the server closes, in whatever way it does. */
    private static String read(Socket socket) throws IOException {
        StringBuilder answer = new StringBuilder();
        InputStream in = socket.getInputStream();
        byte[] buffer = new byte[65_536];
        try {
            for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                answer.append(new String(buffer, 0, n, StandardCharsets.ISO_8859_1));
                if (answer.indexOf(END, answer.length() - END.length()) >= 0) {
                    break;
                }
            }
        } catch (java.net.SocketException reset) {
            // the connection was cut, as the answer then shows
        }
        return answer.toString();
    }
}
