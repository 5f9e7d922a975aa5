// SPDX-License-Identifier: Apache-2.0
package dev.brinebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.Settings;
import io.restassured.RestAssured;
import java.io.BufferedReader;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The process as an operator meets it: options, faulty settings, start, SIGTERM. */
@Timeout(90)
class MainTest {

    @TempDir
    Path directory;

    @Test
    void printsItsSettings() throws Exception {
        Process process = start(Map.of(), "--help");
        assertEquals(0, Launched.exitOf(process));
        assertEquals(Settings.help().strip(), output().strip());
    }

    @Test
    void refusesUnknownArguments() throws Exception {
        assertEquals(2, Launched.exitOf(start(Map.of(), "--hlep")));
        assertEquals("unknown option --hlep", output().strip());
    }

    @Test
    void refusesFaultySettings() throws Exception {
        assertEquals(2, Launched.exitOf(start(Map.of("PORT", "none"))));
        assertEquals("PORT must be a whole number from 0 to 65535, was none", output().strip());
    }

    @Test
    void saysThatAPortIsTaken() throws Exception {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            assertEquals(1, Launched.exitOf(start(Map.of("PORT", Integer.toString(taken.getLocalPort()), "METRICS_PORT", "0",
                    "HOST", "127.0.0.1"))));
            assertTrue(output().contains("another process listens there"), output());
            assertFalse(output().contains("\tat "), output());
        }
    }

    /** With so few that not even every library could be opened. */
    @Test
    void saysThatItMayOpenTooFewFiles() throws Exception {
        List<String> command = new ArrayList<>(List.of("sh", "-c", "ulimit -n 64 && exec \"$@\"", "sh"));
        ProcessBuilder process = Launched.with(Launched.ANYWHERE);
        command.addAll(process.command());
        assertEquals(1, Launched.exitOf(process.command(command).redirectOutput(directory.resolve("out").toFile()).start()));
        assertEquals("the process may open 64 files (ulimit -n), MAX_CONNECTIONS 2000 needs 2356: raise the limit or lower"
                + " MAX_CONNECTIONS", output().strip());
    }

    @Test
    void startsAnswersAndStopsOnSigterm() throws Exception {
        Process process = start(Launched.ANYWHERE);
        try (BufferedReader log = Files.newBufferedReader(directory.resolve("out"))) {
            Matcher ready = Launched.awaitReady(log, process);
            RestAssured.given().get("http://127.0.0.1:" + ready.group(1) + "/health/ready").then().statusCode(200);
            RestAssured.given().get("http://127.0.0.1:" + ready.group(2) + "/metrics").then().statusCode(200);
            process.destroy();
            assertEquals(128 + 15, Launched.exitOf(process), "ended by SIGTERM");
        } finally {
            process.destroyForcibly();
        }
    }

    private Process start(Map<String, String> environment, String... arguments) throws IOException {
        return Launched.with(environment, arguments).redirectOutput(directory.resolve("out").toFile()).start();
    }

    private String output() throws IOException {
        return Files.readString(directory.resolve("out"), StandardCharsets.UTF_8);
    }
}
