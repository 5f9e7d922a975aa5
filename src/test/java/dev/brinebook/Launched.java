// SPDX-License-Identifier: Apache-2.0
package dev.brinebook;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The service as a process of its own. */
final class Launched {

    /** Any free ports. */
    static final Map<String, String> ANYWHERE = Map.of("PORT", "0", "METRICS_PORT", "0", "HOST", "127.0.0.1");

    private static final Pattern READY = Pattern.compile(".*answers on port (\\d+), metrics on port (\\d+).*");

    private Launched() {
    }

    /** A process with these and no other settings, not yet started. */
    static ProcessBuilder with(Map<String, String> environment, String... arguments) {
        List<String> command = new ArrayList<>(List.of(ProcessHandle.current().info().command().orElseThrow(),
                "-cp", System.getProperty("java.class.path"), Start.class.getName()));
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        builder.environment().keySet().removeAll(List.of("PORT", "METRICS_PORT", "HOST", "JAVA_TOOL_OPTIONS"));
        builder.environment().putAll(environment);
        return builder;
    }

    /** Its ports, which are the groups of what is found, when it is ready. */
    static Matcher awaitReady(BufferedReader log, Process process) throws IOException, InterruptedException {
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

    static int exitOf(Process process) throws InterruptedException {
        assertTrue(process.waitFor(60, TimeUnit.SECONDS), "still running");
        return process.exitValue();
    }
}
