// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.bulk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Main;
import dev.brinebook.http.Served;
import dev.brinebook.http.Settings;
import dev.brinebook.http.server.BrinebookServer;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A stream that moves is never ended, however long it lasts: the limits of RFC 9110, section 15.5.9 are for idle streams. */
@Timeout(60)
class LongStreamTest {

    private static final int LINES = 12;
    private static final int PAUSE_MILLISECONDS = 500;
    private static final String END = "\r\n0\r\n\r\n";

    /** Twelve lines in six seconds, where a head or a body may take one. */
    @ParameterizedTest(name = "chunked {0}, expects 100 {1}, second on its connection {2}")
    @CsvSource({"true, false, false", "true, true, false", "true, false, true", "true, true, true", "false, false, false",
        "false, true, false", "false, false, true", "false, true, true"})
    @Execution(ExecutionMode.CONCURRENT)
    void answersEveryLine(boolean chunked, boolean expects, boolean second) throws Exception {
        try (BrinebookServer server = server(); Socket socket = new Socket("127.0.0.1", server.port())) {
            socket.setSoTimeout(20_000);
            OutputStream out = socket.getOutputStream();
            BufferedReader in = new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.US_ASCII));
            if (second) {
                out.write("HEAD /version HTTP/1.1\r\nHost: a\r\n\r\n".getBytes(StandardCharsets.US_ASCII));
                assertTrue(head(in).startsWith("HTTP/1.1 200 "));
            }
            String line = Served.SMALLEST + "\n";
            String length = chunked ? "Transfer-Encoding: chunked\r\n" : "Content-Length: " + LINES * line.length() + "\r\n";
            out.write(("POST /v1/bulk/convertHardness HTTP/1.1\r\nHost: a\r\nContent-Type: application/x-ndjson\r\n" + length
                    + (expects ? "Expect: 100-continue\r\n" : "") + "\r\n").getBytes(StandardCharsets.US_ASCII));
            if (expects) {
                assertTrue(head(in).startsWith("HTTP/1.1 100 "));
            }
            StringBuilder answers = new StringBuilder();
            for (int i = 0; i < LINES; i++) {
                out.write((chunked ? Integer.toHexString(line.length()) + "\r\n" + line + "\r\n" : line)
                        .getBytes(StandardCharsets.US_ASCII));
                TimeUnit.MILLISECONDS.sleep(PAUSE_MILLISECONDS);
                while (in.ready()) {
                    answers.append((char) in.read());
                }
            }
            out.write((chunked ? "0\r\n\r\n" : "").getBytes(StandardCharsets.US_ASCII));
            while (answers.indexOf(END) < 0) {
                int next = in.read();
                assertTrue(next >= 0, "cut off after " + answers.length() + " characters");
                answers.append((char) next);
            }
            assertEquals(LINES, answers.toString().lines().filter(answer -> answer.contains("\"status\":200")).count());
        }
    }

    /** Such a stream is no slow head in the metrics either. */
    @Test
    void countsNoHeadAsLate() throws Exception {
        try (BrinebookServer server = server(); Socket socket = new Socket("127.0.0.1", server.port())) {
            socket.setSoTimeout(20_000);
            socket.getOutputStream().write("GET /version HTTP/1.1\r\nX".getBytes(StandardCharsets.US_ASCII));
            BufferedReader in = new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.US_ASCII));
            assertTrue(head(in).startsWith("HTTP/1.1 408 "));
            assertTrue(Served.given(server.metricsPort()).get("/metrics").asString()
                    .contains("http_server_rejected_total{reason=\"head\"} 1.0"));
        }
    }

    private static BrinebookServer server() {
        return new BrinebookServer(new Settings(0, 0, "127.0.0.1", 2_048, 1, 0, Set.of(), 1, 100, 0, "", 10_000),
                Main.OPERATIONS).start();
    }

    private static String head(BufferedReader in) throws IOException {
        StringBuilder head = new StringBuilder();
        while (head.indexOf("\r\n\r\n") < 0) {
            int next = in.read();
            assertTrue(next >= 0, "closed after " + head);
            head.append((char) next);
        }
        return head.toString();
    }
}
