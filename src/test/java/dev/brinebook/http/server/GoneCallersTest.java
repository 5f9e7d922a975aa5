// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Main;
import dev.brinebook.http.HttpText;
import dev.brinebook.http.Served;
import dev.brinebook.http.TestServer;
import java.io.IOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Callers that are gone before they have sent or read all: they hold nothing, harm nobody and are no fault of ours. */
@Timeout(60)
class GoneCallersTest {

    private static final int CALLERS = 30;
    private static final String HALF = "POST " + Served.CONVERSION + " HTTP/1.1\r\nHost: localhost\r\n"
            + "Content-Type: application/json\r\nContent-Length: 44\r\n\r\n{\"hardness\": {\"val";
    /** Three years, more than the buffers of a socket that nobody reads hold of many answers. */
    private static final String SCHEDULE = TestServer.example("scheduleRegeneration.well-family")
            .replace("\"days\": 120", "\"days\": 1096").replace("\"everyDays\": 3", "\"everyDays\": 1");

    private final BrinebookServer server = Served.start(Main.OPERATIONS, 0, Set.of());

    @AfterEach
    void answersOthersAndLogsNoFault() throws InterruptedException {
        while (!metrics().contains("http_server_requests_in_flight 0.0\n")) {
            TimeUnit.MILLISECONDS.sleep(20);
        }
        Served.given(server.port()).get("/version").then().statusCode(200);
        assertFalse(metrics().contains("status=\"500\""), "a caller that goes is no fault of ours");
        server.close();
    }

    @Test
    void goneInTheMiddleOfABody() throws IOException {
        for (int i = 0; i < CALLERS; i++) {
            try (Socket socket = connect(HALF)) {
                socket.setSoLinger(i % 2 == 0, 0); // every other one without a word
            }
        }
    }

    /** It still listens, and is answered. */
    @Test
    void saysThatNoMoreComes() throws IOException {
        try (Socket socket = connect(HALF)) {
            socket.shutdownOutput();
            socket.setSoTimeout(10_000);
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            HttpText.assertProblem(answer, 400, "bad-request");
        }
    }

    @Test
    void goneInTheMiddleOfAnAnswer() throws IOException {
        byte[] body = SCHEDULE.getBytes(StandardCharsets.UTF_8);
        String request = "POST /v1/regeneration-schedule HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n"
                + "Content-Length: " + body.length + "\r\n\r\n" + SCHEDULE;
        for (int i = 0; i < CALLERS; i++) {
            try (Socket socket = connect(request.repeat(8))) {
                socket.setSoLinger(true, 0);
                if (i % 2 == 0) {
                    String status = new String(socket.getInputStream().readNBytes(12), StandardCharsets.US_ASCII);
                    // Where the machine does much else, those who went before still take its time.
                    assertTrue(Set.of("HTTP/1.1 200", "HTTP/1.1 503").contains(status), status);
                }
            }
        }
    }

    private Socket connect(String begin) throws IOException {
        Socket socket = new Socket("127.0.0.1", server.port());
        socket.getOutputStream().write(begin.getBytes(StandardCharsets.US_ASCII));
        return socket;
    }

    private String metrics() {
        return Served.given(server.metricsPort()).get("/metrics").asString();
    }
}
