// SPDX-License-Identifier: Apache-2.0
package dev.brinebook;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.RestAssured;
import io.restassured.specification.RequestSpecification;
import java.io.BufferedReader;
import java.io.IOException;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The log of a whole run: JSON, line by line; of each request what it was and how it ended, and nothing that was sent. */
@Timeout(120)
class LogTest {

    private static final String KEY = "key-of-4711";
    /** The example of W3C Trace Context, section 3.2.3. */
    private static final String TRACE_ID = "4bf92f3577b34da6a3ce929d0e0e4736";
    /** Placed in every body, query, path and header that could find its way into the log. */
    private static final String SENT = "47114711";
    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    Path directory;

    @Test
    void logsEachRequestInJsonWithoutItsContent() throws Exception {
        Map<String, String> environment = new HashMap<>(Launched.ANYWHERE);
        String hash = HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(KEY.getBytes(UTF_8)));
        environment.put("API_KEYS_FILE", Files.writeString(directory.resolve("keys"), "shop:" + hash + "\n").toString());
        Path out = directory.resolve("out");
        Process process = Launched.with(environment).redirectOutput(out.toFile()).start();
        try (BufferedReader log = Files.newBufferedReader(out)) {
            String port = Launched.awaitReady(log, process).group(1);
            ask(port, "asked-1").header("traceparent", "00-" + TRACE_ID + "-00f067aa0ba902b7-01").contentType("application/json")
                    .body("{\"hardness\": {\"value\": " + SENT + ", \"unit\": \"gpg\"}}").post("/v1/hardness-conversion");
            ask(port, "asked-2").get("/v1/hardness-conversion?value=" + SENT + "&unit=gpg");
            ask(port, "asked-3").header("Authorization", "Bearer wrong-" + SENT).get("/" + SENT);
            ask(port, "asked-4").request("FORGED" + SENT, "/version");
            ask(port, "forged " + SENT).header("traceparent", SENT).get("/%0A%7B%22level%22:%22ERROR%22,%22a%22:" + SENT + "%7D");
            sendRaw(port, "GET /" + SENT + "%zz HTTP/1.1\r\nHost: localhost\r\n");
            sendRaw(port, "GET /version HTTP/1.1\r\nHost: localhost\r\nX-Request-Id: a\r\n {\"forged\":" + SENT + "}\r\n");
            sendRaw(port, "GET /version HTTP/1.1\r\nHost: a\r\nHost: " + SENT + "\r\n");
            sendRaw(port, SENT + "\u0000\n{\"forged\":1}\r\n");
            process.destroy();
            assertEquals(128 + 15, Launched.exitOf(process));
        } finally {
            process.destroyForcibly();
        }
        assertFalse(Files.readString(out).contains(SENT) || Files.readString(out).contains(KEY), Files.readString(out));
        List<JsonNode> lines = lines(Files.readAllLines(out));
        assertRequest(lines, "asked-1", "/v1/hardness-conversion", "POST", 422, TRACE_ID, "shop");
        assertRequest(lines, "asked-2", "/v1/hardness-conversion", "GET", 422, null, "shop");
        assertRequest(lines, "asked-3", "unmatched", "GET", 404, null, null);
        assertRequest(lines, "asked-4", "unmatched", "other", 405, null, null);
        assertEquals(5, lines.stream().filter(line -> line.path("message").asText().equals("refused before it was read")
                && line.path("status").asInt() == 400 && !line.path("requestId").asText().isEmpty()).count());
        assertTrue(lines.stream().noneMatch(line -> line.has("forged") || line.has("a") || line.get("level").asText().equals("ERROR")));
    }

    @Test
    void goesOnAnsweringWhenTheDiskIsFull() throws Exception {
        Path full = Path.of("/dev/full");
        assumeTrue(Files.exists(full), "Linux has a file that is always full");
        String port = Integer.toString(freePort());
        Map<String, String> environment = new HashMap<>(Launched.ANYWHERE);
        environment.put("PORT", port);
        Process process = Launched.with(environment).redirectOutput(full.toFile()).start();
        try {
            awaitReady(port, process);
            assertAnswers(port, 100);
        } finally {
            process.destroyForcibly();
        }
    }

    @Test
    void keepsAnsweringWhenNobodyReadsTheLogAndReportsLostLines() throws Exception {
        Process process = Launched.with(Launched.ANYWHERE).start();
        try (BufferedReader log = process.inputReader()) {
            String port = Launched.awaitReady(log, process).group(1);
            assertAnswers(port, 2_500);
            List<String> read = new ArrayList<>();
            while (read.isEmpty() || !read.get(read.size() - 1).contains(" lines were lost")) {
                read.add(log.readLine());
            }
            process.toHandle().destroy();
            log.lines().forEach(read::add);
            List<JsonNode> lines = lines(read);
            int told = (int) lines.stream().filter(line -> line.path("message").asText().equals("answered")).count();
            int lost = lines.stream().map(line -> line.path("message").asText()).filter(text -> text.endsWith(" lines were lost"))
                    .mapToInt(text -> Integer.parseInt(text.substring(0, text.indexOf(' ')))).sum();
            assertTrue(lost > 0);
            // What was lost may be a line of the service about itself as well.
            assertTrue(told <= 2_500 && told + lost >= 2_500 && told + lost <= 2_500 + 5, told + " told, " + lost + " lost: "
                    + read.stream().filter(line -> !line.contains("\"answered\"")).toList());
        } finally {
            process.destroyForcibly();
        }
    }

    private static List<JsonNode> lines(List<String> texts) throws IOException {
        List<JsonNode> lines = new ArrayList<>();
        for (String text : texts) {
            JsonNode line = JSON.readTree(text);
            assertTrue(Duration.between(Instant.parse(line.get("time").textValue()), Instant.now()).abs().toMinutes() < 10, text);
            assertTrue(Set.of("INFO", "WARN", "ERROR").contains(line.get("level").textValue()), text);
            assertTrue(line.get("logger").isTextual() && line.get("message").isTextual(), text);
            lines.add(line);
        }
        assertTrue(lines.size() > 1);
        return lines;
    }

    private static void assertRequest(List<JsonNode> lines, String id, String route, String method, int status, String traceId,
            String caller) {
        List<JsonNode> found = lines.stream().filter(line -> line.path("requestId").asText().equals(id)).toList();
        assertEquals(1, found.size(), id);
        JsonNode line = found.get(0);
        assertEquals(List.of("answered", route, method, Integer.toString(status)), List.of(line.get("message").asText(),
                line.get("route").asText(), line.get("method").asText(), line.get("status").asText()));
        assertEquals(traceId, line.path("traceId").textValue());
        assertEquals(caller, line.path("caller").textValue());
        assertTrue(line.get("milliseconds").isNumber() && line.get("milliseconds").doubleValue() > 0);
    }

    private static RequestSpecification ask(String port, String id) {
        return RestAssured.given().baseUri("http://127.0.0.1").port(Integer.parseInt(port)).header("X-Request-Id", id)
                .header("Authorization", "Bearer " + KEY).urlEncodingEnabled(false);
    }

    private static void sendRaw(String port, String head) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", Integer.parseInt(port))) {
            socket.getOutputStream().write((head + "Connection: close\r\n\r\n").getBytes(UTF_8));
            socket.getInputStream().readAllBytes();
        }
    }

    private static void assertAnswers(String port, int times) throws IOException {
        byte[] ask = "GET /version HTTP/1.1\r\nHost: localhost\r\n\r\n".getBytes(UTF_8);
        byte[] part = new byte[4_096];
        try (Socket socket = new Socket("127.0.0.1", Integer.parseInt(port))) {
            socket.setSoTimeout(20_000);
            for (int i = 0; i < times; i++) {
                socket.getOutputStream().write(ask);
                int count = socket.getInputStream().read(part);
                assertTrue(new String(part, 0, count, UTF_8).startsWith("HTTP/1.1 200 "));
            }
        }
    }

    private static int freePort() throws IOException {
        try (ServerSocket any = new ServerSocket(0)) {
            return any.getLocalPort();
        }
    }

    /** Until it keeps connections, which it does not before it is ready. */
    private static void awaitReady(String port, Process process) throws InterruptedException {
        byte[] ask = "GET /version HTTP/1.1\r\nHost: localhost\r\n\r\n".getBytes(UTF_8);
        while (process.isAlive()) {
            try (Socket socket = new Socket("127.0.0.1", Integer.parseInt(port))) {
                socket.getOutputStream().write(ask);
                byte[] part = new byte[4_096];
                int count = socket.getInputStream().read(part);
                if (count > 0 && !new String(part, 0, count, UTF_8).contains("Connection: close")) {
                    return;
                }
            } catch (IOException notYet) {
                TimeUnit.MILLISECONDS.sleep(50);
            }
        }
        throw new AssertionError("it ended before it was ready");
    }
}
