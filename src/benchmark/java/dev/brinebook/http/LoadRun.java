// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Loads the packaged service and two peers that only parse and write the same JSON, one after another and round after round, by
 * wrk with 32 connections, and prints medians as ratios. Arguments: rounds, seconds of each.
 *
 * <pre>
 * mvn -q -Pbenchmark -DskipTests package
 * mvn -q -Pbenchmark exec:exec@load</pre>
 */
public final class LoadRun {

    private static final int CONNECTIONS = 32;
    private static final int WARM_SECONDS = 10;
    private static final int BULK_CONNECTIONS = 2;
    private static final int BULK_LINES = 1_000;
    private static final Pattern REQUESTS = Pattern.compile("(\\d+) requests in ");
    private static final Pattern RATE = Pattern.compile("Requests/sec:\\s+([\\d.]+)");

    private LoadRun() {
    }

    public static void main(String[] arguments) throws Exception {
        int rounds = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 5;
        int seconds = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 5;
        compare("compensateHardness.well-family", "/v1/compensated-hardness", rounds, seconds);
        compare("assess.well-family", "/v1/assessment", rounds, seconds);
        compareBulk("compensateHardness", rounds, seconds);
    }

    /** Lines of streams against single calls of the bare Javalin. */
    private static void compareBulk(String calculator, int rounds, int seconds) throws Exception {
        Path single = Path.of("openapi/examples", calculator + ".well-family.request.json");
        Path answer = Path.of("openapi/examples", calculator + ".well-family.response.json");
        Path lines = Path.of("target", "lines.ndjson");
        Files.writeString(lines, (Files.readString(single).replaceAll("\\s*\\n\\s*", "") + "\n").repeat(BULK_LINES));
        Load bulk = new Load("/v1/bulk/" + calculator, "application/x-ndjson", lines, BULK_CONNECTIONS);
        Load calls = new Load("/v1/compensated-hardness", "application/json", single, CONNECTIONS);
        try (Running own = Running.brinebook(18_101); Running javalin = Running.peer("javalin", 18_102, answer)) {
            double[][] rates = new double[2][rounds];
            bulk.on(own, WARM_SECONDS);
            calls.on(javalin, WARM_SECONDS);
            for (int round = 0; round < rounds; round++) {
                rates[0][round] = BULK_LINES * number(RATE, bulk.on(own, seconds));
                rates[1][round] = number(RATE, calls.on(javalin, seconds));
            }
            print("bulk %s: %.0f lines/s; javalin %.0f single calls/s; ratio %.2f", calculator, median(rates[0]), median(rates[1]),
                    ratio(rates[0], rates[1]));
        }
    }

    private static void compare(String example, String path, int rounds, int seconds) throws Exception {
        Load load = new Load(path, "application/json", Path.of("openapi/examples", example + ".request.json"), CONNECTIONS);
        Path answer = Path.of("openapi/examples", example + ".response.json");
        try (Running own = Running.brinebook(18_101);
                Running javalin = Running.peer("javalin", 18_102, answer);
                Running jetty = Running.peer("jetty", 18_103, answer)) {
            List<Running> all = List.of(own, javalin, jetty);
            double[][] rates = new double[all.size()][rounds];
            long[] allocated = new long[all.size()];
            for (Running one : all) {
                load.on(one, WARM_SECONDS);
            }
            for (int round = 0; round < rounds; round++) {
                for (int turn = 0; turn < all.size(); turn++) {
                    int which = (turn + round) % all.size();
                    long before = all.get(which).allocatedBytes();
                    String told = load.on(all.get(which), seconds);
                    rates[which][round] = number(RATE, told);
                    allocated[which] = (long) ((all.get(which).allocatedBytes() - before) / number(REQUESTS, told));
                }
            }
            double[] medians = Arrays.stream(rates).mapToDouble(LoadRun::median).toArray();
            print("%s: %.0f requests/s, %d B each; javalin %.0f, %d B; jetty %.0f, %d B", example, medians[0], allocated[0],
                    medians[1], allocated[1], medians[2], allocated[2]);
            print("  to javalin %.3f, to jetty %.3f (medians of ratios within a round, %d rounds)",
                    ratio(rates[0], rates[1]), ratio(rates[0], rates[2]), rounds);
        }
    }

    private static double ratio(double[] own, double[] peer) {
        double[] ratios = new double[own.length];
        Arrays.setAll(ratios, round -> own[round] / peer[round]);
        return median(ratios);
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return (sorted[(sorted.length - 1) / 2] + sorted[sorted.length / 2]) / 2;
    }

    private record Load(String path, String type, Path body, int connections) {

        /** The results that wrk reports. */
        String on(Running server, int seconds) throws Exception {
            Path script = Path.of("target", "post.lua");
            Files.writeString(script, """
                    wrk.method = "POST"
                    wrk.headers["Content-Type"] = "%s"
                    wrk.headers["Accept"] = "application/json"
                    wrk.headers["Accept-Encoding"] = "gzip, deflate, br"
                    wrk.headers["User-Agent"] = "load-run"
                    wrk.body = io.open("%s"):read("*a")
                    """.formatted(type, body));
            Process process = new ProcessBuilder("wrk", "-t1", "-c" + connections, "-d" + seconds + "s", "-s", script.toString(),
                    "http://127.0.0.1:" + server.port() + path).redirectErrorStream(true).start();
            String told = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            if (process.waitFor() != 0 || told.contains("Non-2xx") || told.contains("Socket errors")) {
                throw new IOException(told);
            }
            return told;
        }
    }

    private static double number(Pattern pattern, String told) throws IOException {
        Matcher matcher = pattern.matcher(told);
        if (!matcher.find()) {
            throw new IOException(told);
        }
        return Double.parseDouble(matcher.group(1));
    }

    private static void print(String form, Object... values) {
        System.out.println(String.format(Locale.ROOT, form, values));
    }
}
