// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.OperatingSystemMXBean;
import dev.brinebook.Main;
import dev.brinebook.http.Served;
import io.restassured.response.Response;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The metrics as collectors get them: Prometheus text 0.0.4, and OpenMetrics 1.0 with exemplars. */
class MetricsTest {

    private static final String TEXT = "text/plain; version=0.0.4; charset=utf-8";
    private static final String OPEN = "application/openmetrics-text; version=1.0.0; charset=utf-8";
    private static final String TRACE = "0af7651916cd43dd8448eb211c80319c";
    private static final String OTHER = "1bf7651916cd43dd8448eb211c80319d";
    private static final BrinebookServer SERVER = Served.start(Main.OPERATIONS, 0, Set.of());

    @BeforeAll
    static void ask() {
        for (String traceparent : List.of("00-" + TRACE + "-b7ad6b7169203331-01", "00-" + OTHER + "-b7ad6b7169203331-00", "nonsense")) {
            Served.given(SERVER.port()).header("traceparent", traceparent).contentType("application/json").body(Served.SMALLEST)
                    .post(Served.CONVERSION).then().statusCode(200);
        }
        Served.given(SERVER.port()).contentType("application/x-ndjson")
                .body(("{}\n" + Served.SMALLEST.replace("\n", "")).getBytes(StandardCharsets.UTF_8))
                .post("/v1/bulk/convertHardness").then().statusCode(200);
        // The first message builds the tools, within the time limit of a calculation.
        Agent.posting(SERVER.port(), Agent.request("tools/list", "{}")).post(Agent.PATH).then().statusCode(200);
        for (String arguments : List.of(Served.SMALLEST, "{}")) {
            Agent.posting(SERVER.port(), Agent.calculate("convertHardness", arguments)).post(Agent.PATH).then().statusCode(200);
        }
        Served.metrics(SERVER, text -> text.contains("route=\"/mcp\",status=\"200\"} 3"));
    }

    @AfterAll
    static void stop() {
        SERVER.close();
    }

    private static Response scrape(String accept) {
        return Served.given(SERVER.metricsPort()).header("Accept", accept).get("/metrics");
    }

    /** RFC 9110, section 12.5.1; the last is what Prometheus 3 sends. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "*/*|text", "text/plain|text", "application/openmetrics-text|open", "application/openmetrics-text;q=0|text",
        "application/openmetrics-text;q=0.2,text/plain;q=0.5|text", "text/plain,application/openmetrics-text|open",
        "application/json|text", "application/*|text",
        "application/openmetrics-text;version=1.0.0;escaping=allow-utf-8;q=0.5,text/plain;version=0.0.4;q=0.3,*/*;q=0.2|open"})
    void answersInTheFormatAskedFor(String accept, String format) {
        scrape(accept).then().statusCode(200).header("Content-Type", format.equals("open") ? OPEN : TEXT);
    }

    /** OpenMetrics 1.0, "Exemplars": at buckets and counters, at most 128 characters; here of traces that are kept. */
    @Test
    void showsTheTraceOfASampledRequestBesideItsBucket() {
        List<String> lines = scrape(OPEN).asString().lines().filter(line -> line.contains(" # ")).toList();
        assertEquals(1, lines.size(), lines.toString());
        assertTrue(lines.get(0).matches("http_server_requests_seconds_bucket\\{method=\"POST\",route=\"/v1/hardness-conversion\","
                + "status=\"200\",le=\"[^\"]+\"} [1-3] # \\{span_id=\"b7ad6b7169203331\",trace_id=\"" + TRACE + "\"} \\S+ \\S+"),
                lines.get(0));
        assertTrue(scrape(TEXT).asString().lines().noneMatch(line -> line.contains(TRACE)), "the older format has none");
    }

    /** OpenMetrics 1.0: ends with EOF, names units, and each family comes once, in one piece. */
    @Test
    void isWellFormed() {
        String text = scrape(OPEN).asString();
        assertTrue(text.endsWith("\n# EOF\n"));
        assertTrue(text.contains("# UNIT http_server_requests_seconds seconds\n"));
        List<String> families = text.lines().filter(line -> line.startsWith("# TYPE ")).map(line -> line.split(" ")[2]).toList();
        assertEquals(families.size(), Set.copyOf(families).size());
        Map<Boolean, List<String>> samples = text.lines().filter(line -> !line.startsWith("#")).collect(Collectors.partitioningBy(
                line -> line.matches("[a-z_0-9]+(\\{[a-z_]+=\"[^\"]*\"(,[a-z_]+=\"[^\"]*\")*})? \\S+( # \\{[^}]*} \\S+ \\S+)?")));
        assertEquals(List.of(), samples.get(false));
        assertTrue(samples.get(true).size() > 50, "it saw some");
    }

    @Test
    void timesRequestsUpToTheirDeadline() {
        Set<Double> bounds = scrape(TEXT).asString().lines()
                .filter(line -> line.contains("_bucket{") && line.contains("hardness-conversion"))
                .map(line -> line.replaceAll(".*le=\"([^\"]+)\".*", "$1").replace("+Inf", "Infinity")).map(Double::parseDouble)
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(new TreeSet<>(Set.of(0.0005, 0.001, 0.002, 0.005, 0.02, 0.1, 0.25, 0.5, 1.0, 2.5, 5.0, 10.0, 30.0,
                Double.POSITIVE_INFINITY)),
                bounds);
    }

    @Test
    void countsLinesAndCallsOfAgentsByOperation() {
        String text = scrape(TEXT).asString();
        for (String line : List.of("bulk_lines_total{operation=\"convertHardness\",outcome=\"answered\"} 1.0",
                "bulk_lines_total{operation=\"convertHardness\",outcome=\"refused\"} 1.0",
                "agent_calls_total{operation=\"convertHardness\",outcome=\"answered\"} 1.0",
                "agent_calls_total{operation=\"convertHardness\",outcome=\"refused\"} 1.0")) {
            assertTrue(text.contains(line + "\n"), text);
        }
    }

    /** Each with the buckets of requests, which reach to the deadline. */
    @ParameterizedTest
    @CsvSource({"bulk_line_duration_seconds", "agent_call_duration_seconds"})
    void timesLinesAndCallsOfAgentsByOperation(String name) {
        String text = scrape(TEXT).asString();
        List<String> buckets = text.lines().filter(line -> line.startsWith(name + "_bucket{operation=\"convertHardness\"")).toList();
        assertEquals(List.of("5.0E-4", "0.001", "0.002", "0.005", "0.02", "0.1", "0.25", "0.5", "1.0", "2.5", "5.0", "10.0", "30.0",
                "+Inf"), buckets.stream().map(line -> line.replaceAll(".*le=\"([^\"]+)\".*", "$1")).toList());
        assertTrue(text.contains(name + "_count{operation=\"convertHardness\"} 2\n"), text);
        double seconds = sample(text, name + "_sum{operation=\"convertHardness\"}");
        assertTrue(seconds > 1e-6 && seconds < 60, "" + seconds);
    }

    /** The time of its processors as Prometheus names it ("process metrics" of its client libraries), in seconds. */
    @Test
    void countsTheProcessorTimeInSeconds() {
        String text = scrape(TEXT).asString();
        double seconds = sample(text, "process_cpu_seconds_total");
        double own = ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime() / 1e9;
        assertTrue(seconds > own / 2 && seconds <= own, seconds + " of " + own);
        assertTrue(text.lines().noneMatch(line -> line.startsWith("process_cpu_time_ns")));
    }

    private static double sample(String text, String name) {
        return text.lines().filter(line -> line.startsWith(name + " ")).mapToDouble(line -> Double.parseDouble(line.substring(
                name.length() + 1))).findFirst().orElseThrow();
    }
}
