// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.TestServer;
import io.restassured.path.json.JsonPath;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What must hold of every schedule: conservation of charge and of water, and one set of days for all policies. */
class SchedulePropertyTest {

    /** Answers have six digits, so a sum is known to a few millionths of what is in it. */
    private static final double DIGITS = 1e-5;
    private static final double MAX_DAY_LITRES = 900;

    static IntStream seeds() {
        return IntStream.rangeClosed(1, 20);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void conservesChargeAndWaterUnderEveryPolicy(int seed) {
        Random random = new Random(seed);
        double charge = random.nextInt(3) / 2.0;
        String household = household(random);
        JsonPath path = schedule(household, charge, random, household.contains("Series") ? "" : "\"days\": "
                + (1 + random.nextInt(800)) + ",");
        double hardness = path.getDouble("hardness.real.value");
        double drawn = 0;
        for (int i = 0; i < path.getList("policies").size(); i++) {
            String at = "policies[" + i + "].";
            double regenerations = path.getDouble(at + "totals.regenerations");
            double restored = regenerations * path.getDouble("capacity.value");
            double start = charge * path.getDouble("capacity.value");
            double removed = path.getDouble(at + "totals.hardnessRemoved.value");
            double hard = path.getDouble(at + "totals.hardWater.value") * hardness / 1000;
            double bypassed = path.getDouble(at + "totals.bypassedWater.value") * hardness / 1000;
            assertEquals(restored - path.getDouble(at + "totals.capacityThrownAway.value") + start
                    - path.getDouble(at + "leftAtEnd.value"), removed, DIGITS * (restored + start + 1), at + " charge");
            drawn = i == 0 ? removed + hard + bypassed : drawn;
            assertEquals(drawn, removed + hard + bypassed, DIGITS * (drawn + 1), at + " the same days");
            assertEquals(regenerations * path.getDouble("saltPerRegeneration.value"),
                    path.getDouble(at + "totals.salt.value"), DIGITS * (1 + path.getDouble(at + "totals.salt.value")));
            assertEquals(path.getDouble(at + "totals.hardDays") > 0, path.getString(at + "firstHardDate") != null, at);
            datesAreInOrder(path, at, (int) regenerations);
        }
    }

    /** A reserve of the largest day that the series has, on a bed that holds more than two of them. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void isNeverHardWithAReserveOfTheLargestDay(int seed) {
        Random random = new Random(seed);
        int largest = 100 + random.nextInt((int) MAX_DAY_LITRES - 100);
        JsonPath path = TestServer.post("/v1/regeneration-schedule", """
                {"water": {"hardness": {"value": 20, "unit": "fH"}}, "household": %s,
                 "softener": {"resinVolume": {"value": %d, "unit": "L"}, "saltDose": {"value": 100, "unit": "g/L"},
                  "control": {"kind": "meteredDelayed", "hardnessSetting": {"value": 20, "unit": "fH"}, "dayOverride": %d,
                   "reserve": {"rule": "volume", "volume": {"value": %d, "unit": "L"}}}}, "units": "metric"}"""
                .formatted(series(random, largest), 10 + random.nextInt(40), random.nextInt(15), largest))
                .statusCode(200).extract().jsonPath();
        assertTrue(path.getDouble("capacity.value") > 2 * largest * 0.2, "the bed holds two of the largest days");
        assertEquals(0, path.getDouble("policies[0].totals.hardDays"), "seed " + seed);
        assertTrue(path.getDouble("policies[0].totals.regenerations") > 0, "seed " + seed);
    }

    private static void datesAreInOrder(JsonPath path, String at, int regenerations) {
        List<LocalDate> dates = path.getList(at + "events.date", String.class).stream().map(LocalDate::parse).toList();
        Integer omitted = path.get(at + "eventsOmitted");
        assertEquals(regenerations, dates.size() + (omitted == null ? 0 : omitted), at);
        assertEquals(dates.stream().sorted().toList(), dates, at);
        LocalDate first = LocalDate.parse(path.getString("firstDate"));
        LocalDate after = first.plusDays(path.getInt("days"));
        assertTrue(dates.stream().allMatch(date -> !date.isBefore(first) && !date.isAfter(after)), at);
        if (omitted == null) {
            long overrides = path.getList(at + "events.reason").stream().filter("override"::equals).count();
            assertEquals(overrides, path.getDouble(at + "totals.overrides"), at);
        }
    }

    private static JsonPath schedule(String household, double charge, Random random, String days) {
        return TestServer.post("/v1/regeneration-schedule", String.format(Locale.ROOT, """
                {"water": {"hardness": {"value": %.3f, "unit": "dH"}, "iron": {"value": %.2f, "unit": "mg/L"}},
                 "household": %s, %s "chargeLeftShare": %s, "seed": %d, "units": "metric",
                 "softener": {"resinVolume": {"value": %.2f, "unit": "L"}, "saltDose": {"value": %.1f, "unit": "g/L"}},
                 "policies": [
                  {"name": "clock", "control": {"kind": "clock", "everyDays": %d}},
                  {"name": "weekdays", "control": {"kind": "clock", "weekdays": ["friday"], "dayOverride": %d}},
                  {"name": "night", "control": {"kind": "meteredDelayed", "dayOverride": %d}},
                  {"name": "share", "control": {"kind": "meteredDelayed", "reserve": {"rule": "share", "share": 0.2}}},
                  {"name": "at once", "control": {"kind": "meteredImmediate"}}]}""", 2 + 40 * random.nextDouble(),
                3 * random.nextDouble(), household, days, charge, random.nextInt(1_000), 5 + 60 * random.nextDouble(),
                50 + 250 * random.nextDouble(), 1 + random.nextInt(14), random.nextInt(8), random.nextInt(15)))
                .statusCode(200).extract().jsonPath();
    }

    private static String household(Random random) {
        return switch (random.nextInt(3)) {
            case 0 -> "{\"people\": " + (1 + random.nextInt(8)) + ", \"leftHard\": [\"toilets\"]}";
            case 1 -> "{\"dailyUse\": {\"value\": " + random.nextInt(1_500) + ", \"unit\": \"L\"}, \"dayToDayVariation\": 0.9}";
            default -> series(random, (int) MAX_DAY_LITRES);
        };
    }

    /** A dated series, idle days among the others, whose largest day is {@code largest}. */
    private static String series(Random random, int largest) {
        int days = 30 + random.nextInt(1_067);
        int largestAt = random.nextInt(days);
        return "{\"dailySeries\": {\"firstDate\": \"2024-02-20\", \"unit\": \"L\", \"values\": ["
                + IntStream.range(0, days).mapToObj(day -> String.valueOf(day == largestAt ? largest
                        : random.nextInt(4) == 0 ? 0 : random.nextInt(largest))).collect(Collectors.joining(",")) + "]}}";
    }
}
