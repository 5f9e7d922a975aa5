package dev.brinebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.Settings;
import io.restassured.RestAssured;
import java.io.BufferedReader;
import java.io.IOException;
import java.net.ServerSocket;
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
        try (ServerSocket taken = new ServerSocket(0)) {
            assertEquals(1, exitOf(start(Map.of("PORT", Integer.toString(taken.getLocalPort()), "METRICS_PORT", "0"))));
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
            process.destroy();
            assertEquals(128 + 15, exitOf(process), "ended by SIGTERM");
        } finally {
            process.destroyForcibly();
        }
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
