// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.limit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Main;
import dev.brinebook.http.Served;
import dev.brinebook.http.server.BrinebookServer;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Places for bulk streams: whoever has the most gives one up, the idlest of its streams first. */
@Timeout(60)
class StreamSlotsTest {

    private static final String HEAD = "POST /v1/bulk/convertHardness HTTP/1.1\r\nHost: a\r\n"
            + "Content-Type: application/x-ndjson\r\nTransfer-Encoding: chunked\r\n\r\n";

    private final StreamSlots slots = new StreamSlots(3);
    private final List<String> ended = new ArrayList<>();

    private StreamSlots.Slot take(String caller, String name) {
        return slots.take(caller, () -> ended.add(name)).orElse(null);
    }

    @Test
    void givesTheIdlestPlaceOfTheCallerWithTheMostToOneWithFewer() throws Exception {
        StreamSlots.Slot first = take("one", "first");
        TimeUnit.MILLISECONDS.sleep(2);
        StreamSlots.Slot second = take("one", "second");
        take("one", "third");
        TimeUnit.MILLISECONDS.sleep(2);
        first.moved();
        assertTrue(take("other", "fourth") != null);
        assertEquals(List.of("second"), ended);
        assertTrue(second.isTaken() && !first.isTaken());
    }

    @Test
    void refusesACallerWhoWouldHaveAsMany() {
        take("one", "first");
        take("one", "second");
        take("other", "third");
        assertFalse(slots.take("other", () -> ended.add("none")).isPresent());
        assertFalse(slots.take("one", () -> ended.add("none")).isPresent());
        assertTrue(ended.isEmpty());
    }

    @Test
    void takesAPlaceThatWasGivenBack() {
        take("one", "first");
        take("one", "second");
        slots.giveBack(take("one", "third"));
        assertTrue(take("one", "fourth") != null);
    }

    /** Silent streams of one address have every place; another address streams all the same, and the stream that ends says why. */
    @Test
    void silentStreamsBlockNoOtherCaller() throws Exception {
        List<Socket> silent = new ArrayList<>();
        try (BrinebookServer server = Served.start(Main.OPERATIONS, 0, Set.of())) {
            for (int i = 0; i < StreamSlots.MOST_AT_ONCE; i++) {
                Socket socket = new Socket("127.0.0.1", server.port());
                silent.add(socket);
                socket.getOutputStream().write((HEAD + "1\r\n{\r\n").getBytes(StandardCharsets.US_ASCII));
            }
            while (!Served.given(server.metricsPort()).get("/metrics").asString()
                    .contains("http_server_requests_in_flight " + StreamSlots.MOST_AT_ONCE + ".0\n")) {
                TimeUnit.MILLISECONDS.sleep(20);
            }
            try (Socket other = new Socket(InetAddress.getByName("127.0.0.1"), server.port(), InetAddress.getByName("127.0.0.2"), 0)) {
                other.setSoTimeout(10_000);
                String line = Served.SMALLEST + "\n";
                other.getOutputStream().write((HEAD + Integer.toHexString(line.length()) + "\r\n" + line + "\r\n0\r\n\r\n")
                        .getBytes(StandardCharsets.US_ASCII));
                assertEquals("HTTP/1.1 200 ", new String(other.getInputStream().readNBytes(13), StandardCharsets.US_ASCII));
            }
            // Their threads took the places in whatever order.
            Socket ended = null;
            while (ended == null) {
                TimeUnit.MILLISECONDS.sleep(20);
                for (Socket socket : silent) {
                    ended = socket.getInputStream().available() > 0 ? socket : ended;
                }
            }
            StringBuilder answer = new StringBuilder();
            while (answer.indexOf("0\r\n\r\n") < 0) {
                int next = ended.getInputStream().read();
                assertTrue(next >= 0, "cut off after " + answer);
                answer.append((char) next);
            }
            assertTrue(answer.toString().contains("\"line\":1,\"status\":503") && answer.toString().contains("needed its place"),
                    answer.toString());
        } finally {
            for (Socket socket : silent) {
                socket.close();
            }
        }
    }
}
