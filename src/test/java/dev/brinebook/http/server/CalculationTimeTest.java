// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Main;
import dev.brinebook.api.Operation;
import dev.brinebook.http.Served;
import io.restassured.path.json.JsonPath;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The requests that take longest of all that are allowed, each a third of a second to a second of processor time, end when
 * their time is over: RFC 9110, section 15.6.4 (503). What ends is ended for good: the processors have nothing left to do.
 */
@Tag("processorTime")
@Timeout(60)
class CalculationTimeTest {

    private static final int LIMIT_MILLISECONDS = 50;
    private static final int COLUMN_MILLISECONDS = 10;
    private static final String DETAIL = "The calculation took longer than 50 milliseconds and was stopped.";
    /** A little of the work that would be left, and far more than threads take that wait for the next request. */
    private static final long IDLE_NANOS_IN_A_MOMENT = TimeUnit.MILLISECONDS.toNanos(100);
    private static final long MOMENT_MILLISECONDS = 300;

    private static BrinebookServer server;

    /** The case of a household; no other test asks for columns of this water. */
    private static final String CASE = """
            {"water": {"hardness": {"value": 19.371, "unit": "gpg"}, "sodium": {"value": 41, "unit": "mg/L"},
            "dissolvedSolids": {"value": 877, "unit": "mg/L"}}, "household": {"people": 7, "dayToDayVariation": 1.49},
            "softener": {"resinVolume": {"value": 28, "unit": "L"}, "saltDose": {"value": 200, "unit": "g/L"},
            "control": {"kind": "%s"%s}}""";

    private record Heavy(String operation, String body) {

        @Override
        public String toString() {
            return operation;
        }
    }

    static List<Heavy> heaviest() {
        String water = CASE.substring(0, CASE.indexOf(" \"household\""));
        String series = listed(1_096, i -> Integer.toString(100 + i * 7_919 % 1_000));
        return List.of(
                new Heavy("sizeSoftener", water + "\"household\": {\"dailySeries\": {\"firstDate\": \"2023-01-01\","
                        + " \"unit\": \"L\", \"values\": [" + series + "]}}, \"candidates\": [" + listed(250, i ->
                        "{\"sku\": \"no. %d\", \"brineDirection\": \"counterCurrent\", \"resinVolume\": {\"value\": %d, \"unit\": \"L\"}}"
                                .formatted(i, 20 + i)) + "]}"),
                new Heavy("scheduleRegeneration", CASE.formatted("meteredImmediate", "") + ", \"years\": 400, \"policies\": ["
                        + listed(8, i -> "{\"name\": \"no. %d\", \"control\": {\"kind\": \"meteredImmediate\", \"capacitySetting\":"
                        .formatted(i) + " {\"value\": 1, \"unit\": \"g\"}}}") + "]}"),
                new Heavy("compareAlternatives", unevenWeek(CASE.formatted("meteredDelayed", ", \"dayOverride\": 99"))
                        + ", \"horizonYears\": 30,"
                        + " \"uncertainty\": {\"draws\": 1250}, \"alternatives\": [" + listed(8, i ->
                        "{\"name\": \"no. %d\", \"kind\": \"twinBeds\"}".formatted(i)) + "]}"));
    }

    /** Each weekday is another, and the home is vacant at times: what takes longest of all. */
    private static String unevenWeek(String household) {
        return household.replace("\"people\": 7,", "\"weeklyUse\": [" + listed(7, i -> "{\"value\": %d, \"unit\": \"L\"}".formatted(
                100 + i * i * 10)) + "], \"occupancy\": {\"pattern\": \"chain\", \"leavePerDay\": 0.3, \"returnPerDay\": 0.2},");
    }

    private static String listed(int count, java.util.function.IntFunction<String> element) {
        return IntStream.range(0, count).mapToObj(element).collect(Collectors.joining(","));
    }

    @BeforeAll
    static void start() {
        server = Served.hasty(LIMIT_MILLISECONDS);
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    @ParameterizedTest
    @MethodSource("heaviest")
    void endsWhatTakesTooLongAndLeavesTheProcessorsIdle(Heavy heavy) throws InterruptedException {
        String path = operation(heavy.operation()).path();
        Served.given(server.port()).contentType("application/json").body(heavy.body()).post(path).then().statusCode(503)
                .contentType("application/problem+json").header("Retry-After", "2")
                .body("type", equalTo("/problems/calculation-too-long")).body("detail", equalTo(DETAIL));
        long before = processorNanos();
        TimeUnit.MILLISECONDS.sleep(MOMENT_MILLISECONDS);
        long used = processorNanos() - before;
        assertTrue(used < IDLE_NANOS_IN_A_MOMENT, used / 1_000 + " microseconds of work after the end");
    }

    /** The columns of one water take less than the 50 milliseconds once all is compiled. */
    @Test
    void endsAmongTheColumnsOfAWater() {
        String water = CASE.substring(0, CASE.indexOf(" \"household\""));
        String doses = listed(40, i -> "{\"value\": %d, \"unit\": \"g/L\"}".formatted(50 + 5 * i));
        try (BrinebookServer hastier = Served.hasty(COLUMN_MILLISECONDS)) {
            Served.given(hastier.port()).contentType("application/json").body(water + "\"brineDirection\": \"counterCurrent\","
                    + " \"resin\": {\"stages\": 40}, \"saltDoses\": [" + doses + "]}").post("/v1/resin-capacity").then().statusCode(503);
        }
    }

    @Test
    void aLineThatTakesTooLongIsAFaultOfThatLine() {
        String heavy = heaviest().get(1).body().replace("\n", " ");
        List<JsonPath> lines = Served.given(server.port()).contentType("application/x-ndjson").body((heavy + "\n{}\n" + heavy).getBytes())
                .post("/v1/bulk/scheduleRegeneration").then().statusCode(200).extract().asString().lines().map(JsonPath::from).toList();
        assertEquals(List.of(503, 422, 503), lines.stream().map(line -> line.getInt("status")).toList());
        assertEquals(DETAIL, lines.get(2).getString("problem.detail"));
    }

    @Test
    void aToolThatTakesTooLongReportsItToItsModel() {
        Heavy heavy = heaviest().get(1);
        Agent.posting(server.port(), Agent.calculate(heavy.operation(), heavy.body())).post(Agent.PATH).then().statusCode(200)
                .body("result.isError", equalTo(true)).body("result.content[0].text", org.hamcrest.Matchers.containsString(DETAIL));
    }

    @Test
    void countsCancelledCalculations() {
        Heavy heavy = heaviest().get(1);
        double before = ended();
        Served.given(server.port()).contentType("application/json").body(heavy.body()).post("/v1/regeneration-schedule");
        assertEquals(before + 1, ended());
        Served.given(server.port()).contentType("application/json").body(Served.SMALLEST).post(Served.CONVERSION).then()
                .statusCode(200);
    }

    private static double ended() {
        String name = "http_server_rejected_total{reason=\"time\"} ";
        return Served.given(server.metricsPort()).get("/metrics").asString().lines().filter(line -> line.startsWith(name))
                .mapToDouble(line -> Double.parseDouble(line.substring(name.length()))).sum();
    }

    private static Operation<?, ?> operation(String id) {
        return Main.OPERATIONS.stream().filter(operation -> operation.id().equals(id)).findFirst().orElseThrow();
    }

    /** Processor time of all threads so far, of those that calculate too. */
    private static long processorNanos() {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        return LongStream.of(threads.getAllThreadIds()).map(threads::getThreadCpuTime).filter(nanos -> nanos > 0).sum();
    }
}
