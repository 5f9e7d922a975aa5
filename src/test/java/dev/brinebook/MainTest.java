package dev.brinebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.Settings;
import io.restassured.RestAssured;
import io.restassured.specification.RequestSpecification;
import java.io.BufferedReader;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The process as an operator meets it: options, faulty settings, start, SIGTERM. */
@Timeout(90)
class MainTest {

    private static final Pattern READY = Pattern.compile(".*answers on port (\\d+), metrics on port (\\d+).*");

    private static final String TRACE = "00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01";

    @TempDir
    Path directory;

    @Test
    void printsItsSettings() throws Exception {
        Process process = start(Map.of(), "--help");
        assertEquals(0, exitOf(process));
        assertEquals(Settings.help().strip(), output().strip());
    }

    @Test
    void refusesWhatItDoesNotKnow() throws Exception {
        assertEquals(2, exitOf(start(Map.of(), "--hlep")));
        assertEquals("unknown option --hlep", output().strip());
    }

    @Test
    void refusesFaultySettings() throws Exception {
        assertEquals(2, exitOf(start(Map.of("PORT", "none"))));
        assertEquals("PORT must be a whole number from 0 to 65535, was none", output().strip());
    }

    @Test
    void saysThatAPortIsTaken() throws Exception {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            assertEquals(1, exitOf(start(Map.of("PORT", Integer.toString(taken.getLocalPort()), "METRICS_PORT", "0", "HOST",
                    "127.0.0.1"))));
            assertTrue(output().contains("cannot listen"), output());
            assertFalse(output().contains("\tat "), output());
        }
    }

    @Test
    void startsAnswersAndStopsOnSigterm() throws Exception {
        Process process = start(Map.of("PORT", "0", "METRICS_PORT", "0", "HOST", "127.0.0.1"));
        try (BufferedReader log = Files.newBufferedReader(directory.resolve("out"))) {
            Matcher ready = awaitReady(log, process);
            RestAssured.given().get("http://127.0.0.1:" + ready.group(1) + "/health/ready").then().statusCode(200);
            RestAssured.given().get("http://127.0.0.1:" + ready.group(2) + "/metrics").then().statusCode(200);
            ask(ready.group(1), "asked-1").header("traceparent", TRACE).contentType("application/json")
                    .body("{\"hardness\": {\"value\": 47114711, \"unit\": \"gpg\"}}").post("/v1/hardness-conversion");
            ask(ready.group(1), "asked-2").get("/v1/hardness-conversion?value=47114711&unit=gpg");
            ask(ready.group(1), "asked-3").get("/47114711");
            try (Socket socket = new Socket("127.0.0.1", Integer.parseInt(ready.group(1)))) {
                socket.getOutputStream().write(("GET /47114711%zz HTTP/1.1\r\nHost: localhost\r\n"
                        + "Connection: close\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
                socket.getInputStream().readAllBytes();
            }
            process.destroy();
            assertEquals(128 + 15, exitOf(process), "ended by SIGTERM");
            assertLogged("request asked-1 trace " + TRACE + ": POST /v1/hardness-conversion 422 in ");
            assertLogged("request asked-2 trace -: GET /v1/hardness-conversion 422 in ");
            assertLogged("request asked-3 trace -: GET unmatched 404 in ");
            assertLogged(" trace -: refused with 400 before it was read");
            assertFalse(output().contains("47114711"), "what callers send is not logged");
        } finally {
            process.destroyForcibly();
        }
    }

    private static RequestSpecification ask(String port, String id) {
        return RestAssured.given().baseUri("http://127.0.0.1").port(Integer.parseInt(port)).header("X-Request-Id", id);
    }

    private void assertLogged(String begin) throws IOException {
        Pattern line = Pattern.compile(".*INFO.*" + Pattern.quote(begin) + "(\\d+\\.\\d+ ms)?");
        assertEquals(1, output().lines().filter(each -> line.matcher(each).matches()).count(), begin + "\n" + output());
    }

    private static Matcher awaitReady(BufferedReader log, Process process) throws IOException, InterruptedException {
        while (process.isAlive()) {
            String line = log.readLine();
            Matcher ready = READY.matcher(line == null ? "" : line);
            if (ready.matches()) {
                return ready;
            }
            if (line == null) {
                TimeUnit.MILLISECONDS.sleep(50);
            }
        }
        throw new AssertionError("it ended before it was ready");
    }

    private Process start(Map<String, String> environment, String... arguments) throws IOException {
        List<String> command = new ArrayList<>(List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp", System.getProperty("java.class.path"), Main.class.getName()));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true)
                .redirectOutput(Files.createFile(directory.resolve("out")).toFile());
        builder.environment().keySet().removeAll(List.of("PORT", "METRICS_PORT", "HOST", "JAVA_TOOL_OPTIONS"));
        builder.environment().putAll(environment);
        return builder.start();
    }

    private static int exitOf(Process process) throws InterruptedException {
        assertTrue(process.waitFor(60, TimeUnit.SECONDS), "still running");
        return process.exitValue();
    }

    private String output() throws IOException {
        return Files.readString(directory.resolve("out"), StandardCharsets.UTF_8);
    }
}
