// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import static dev.brinebook.http.Near.near;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import dev.brinebook.http.TestServer;
import io.restassured.path.json.JsonPath;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A household measured day by day and the same one given by its own summary get the same advice. */
class SeriesAndSummaryTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final LocalDate MONDAY = LocalDate.of(2026, 1, 5);
    private static final int WEEK = 7;

    static IntStream seeds() {
        return IntStream.rangeClosed(1, 40);
    }

    private static String series(double[] litres) {
        return "{\"dailySeries\": {\"firstDate\": \"" + MONDAY + "\", \"unit\": \"L\", \"values\": " + Arrays.toString(litres)
                + "}, \"levelSpread\": 0, \"bathrooms\": 2}";
    }

    private static String weekly(double[] week) {
        return "{\"weeklyUse\": " + Arrays.stream(week).mapToObj(litres -> "{\"value\": " + litres + ", \"unit\": \"L\"}")
                .collect(Collectors.joining(", ", "[", "]")) + ", \"dayToDayVariation\": 0, \"levelSpread\": 0,"
                + " \"bathrooms\": 2}";
    }

    private static double[] repeated(double[] week) {
        return IntStream.range(0, 365).mapToDouble(i -> week[i % WEEK]).toArray();
    }

    private static JsonPath assess(String household, double hardness, int everyDays) {
        return TestServer.post("/v1/assessment?detail=full", String.format(Locale.ROOT, """
                {"water": {"hardness": {"value": %.1f, "unit": "dH"}}, "household": %s,
                 "softener": {"resinVolume": {"value": 28, "unit": "L"}, "saltDose": {"value": 160, "unit": "g/L"},
                  "control": {"kind": "clock", "everyDays": %d}},
                 "retrofit": {"cost": {"value": 300, "unit": "USD"}},
                 "preferences": {"startDate": "%s"}, "units": "metric"}""", hardness, household, everyDays, MONDAY))
                .statusCode(200).extract().jsonPath();
    }

    /** The whole answer except explanations and the uncertainty of the use, which only measured days show. */
    private static ObjectNode figures(JsonPath answer) throws JsonProcessingException {
        ObjectNode all = JSON.readValue(answer.prettify(), ObjectNode.class);
        return all.without(java.util.List.of("assumptions", "basis", "useUncertainty"));
    }

    /** Weekdays of 1,000 L, nothing at weekends: no day is above 1,000 L, so no more than a step above need be kept back. */
    @Test
    void anOfficeNeedsNoMoreThanItsLargestDayInReserve() {
        double[] week = {1000, 1000, 1000, 1000, 1000, 0, 0};
        double summed = assess(weekly(week), 18, 2).getDouble("settings.reserve.value");
        assertEquals(summed, assess(series(repeated(week)), 18, 2).getDouble("settings.reserve.value"));
        assertTrue(summed < 1000 + 10 * 3.785411784, summed + " L in steps of 10\u00a0gal");
    }

    /** A year of weeks without scatter is the same days either way, so every figure agrees to its last digit. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void evenWeeksAgreeInEveryFigure(int seed) throws JsonProcessingException {
        Random random = new Random(seed);
        double[] week = IntStream.range(0, WEEK).mapToDouble(i -> random.nextInt(4) == 0 ? 0 : 20 * random.nextInt(60))
                .toArray();
        week[random.nextInt(WEEK)] = 500;
        double hardness = 5 + 25 * random.nextDouble();
        int everyDays = 1 + random.nextInt(7);
        assertEquals(figures(assess(weekly(week), hardness, everyDays)),
                figures(assess(series(repeated(week)), hardness, everyDays)), () -> Arrays.toString(week));
    }

    private static double[] home(Random random) {
        double[] week = IntStream.range(0, WEEK).mapToDouble(i -> 100 + 60 * random.nextInt(12)).toArray();
        double scatter = random.nextDouble();
        double[] days = new double[365];
        boolean away = false;
        for (int i = 0; i < days.length; i++) {
            away = random.nextInt(100) < (away ? 70 : 3);
            days[i] = away ? 0 : week[i % WEEK] * (1 + scatter * (random.nextDouble() - 0.5));
        }
        return days;
    }

    /** What readMeter makes of a year is sent back in place of the year: meter settings agree to the six digits sent. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aYearAndItsForecastGetTheSameReserve(int seed) throws JsonProcessingException {
        double[] days = home(new Random(seed));
        JsonPath read = TestServer.post("/v1/meter-readings?detail=full", "{\"meter\": {\"unit\": \"L\"}, \"kind\": \"volume\","
                + " \"readings\": [" + IntStream.range(0, days.length).mapToObj(i -> "{\"at\": \"" + MONDAY.plusDays(i)
                + "\", \"value\": " + days[i] + "}").collect(Collectors.joining(",")) + "], \"units\": \"metric\"}")
                .statusCode(200).extract().jsonPath();
        String forecast = JSON.writeValueAsString(read.getMap("forecast")).replaceFirst("\\{", "{\"bathrooms\": 2, ");
        JsonPath measured = schedule(series(days).replace("\"levelSpread\": 0, ", ""));
        JsonPath expected = schedule(forecast);
        for (String setting : new String[] {"meterVolume", "reserve"}) {
            double litres = measured.getDouble("policies[0]." + setting + ".value");
            assertEquals(litres, expected.getDouble("policies[0]." + setting + ".value"), 1e-4 * litres, setting);
        }
        assertEquals(read.getDouble("forecast.dayToDayVariation"), measured.getDouble(
                "assumptions.find { it.pointer == '/household/dayToDayVariation' }.value"), 5e-4);
    }

    private static JsonPath schedule(String household) {
        return TestServer.post("/v1/regeneration-schedule?detail=full", "{\"water\": {\"hardness\": {\"value\": 17, \"unit\": \"dH\"}},"
                + " \"household\": " + household + ", \"softener\": {\"resinVolume\": {\"value\": 60, \"unit\": \"L\"}, \"saltDose\":"
                + " {\"value\": 100, \"unit\": \"g/L\"}}, \"policies\": [{\"name\": \"night\", \"control\": {\"kind\":"
                + " \"meteredDelayed\"}}], \"units\": \"metric\"}").statusCode(200).extract().jsonPath();
    }

    /** The garden is watered every day alike: it raises every mean and scatters with the house, as in a summary. */
    @Test
    void outdoorUseIsNoPresence() {
        double[] days = IntStream.range(0, 350).mapToDouble(i -> i % 35 < 5 ? 0 : 400).toArray();
        TestServer.post("/v1/regeneration-schedule?detail=full", "{\"water\": {\"hardness\": {\"value\": 17, \"unit\": \"dH\"}},"
                + " \"household\": "
                + series(days).replaceFirst("\\{", "{\"outdoorUse\": {\"value\": 100, \"unit\": \"L\"}, ")
                + ", \"softener\": {\"resinVolume\": {\"value\": 60, \"unit\": \"L\"}, \"control\": {\"kind\": \"meteredDelayed\","
                + " \"reserve\": {\"rule\": \"dayPercentile\"}}}, \"units\": \"metric\"}").statusCode(200)
                .body("policies[0].reserve.value", near(500, 1e-6, "400\u00a0in the house and 100\u00a0in the garden, no scatter"))
                .body("assumptions.find { it.pointer == '/household/occupancy/pattern' }.code", equalTo("chain"))
                .body("assumptions.find { it.pointer == '/household/occupancy/pattern' }.note", containsString("85.7\u00a0%"));
    }
}
