// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import static dev.brinebook.http.Near.exactly;
import static dev.brinebook.http.Near.near;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.http.TestServer;
import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Test;

/**
 * Dates of regenerations and of salt, worked by hand: 1 ft3 at 8 lb/ft3 has 24,000 gr, and 100 gal at 30 gpg load 3,000 gr
 * on every day from 2026-01-01 on.
 */
class ScheduleCalendarTest {

    /** The constant household with {@code more} of the softener and {@code rest} of the request. */
    private static ValidatableResponse schedule(String more, String rest) {
        return TestServer.post("/v1/regeneration-schedule?detail=full", """
                {"water": {"hardness": {"value": 30, "unit": "gpg"}},
                 "household": {"dailyUse": {"value": 100, "unit": "gal"}, "dayToDayVariation": 0},
                 "softener": {"resinVolume": {"value": 1, "unit": "ft3"}, "saltDose": {"value": 8, "unit": "lb/ft3"}%s},
                 %s}""".formatted(more, rest));
    }

    private static String clock(int days) {
        return ", \"control\": {\"kind\": \"clock\", \"everyDays\": " + days + "}";
    }

    /** 24,000 / 3,000 is 8 days: the 8th ends the capacity, an immediate meter starts on it, the night follows on the 9th. */
    @Test
    void aDelayedMeterWaitsForTheNightThatAnImmediateOneDoesNot() {
        schedule("", """
                "days": 9, "policies": [
                 {"name": "night", "control": {"kind": "meteredDelayed",
                   "reserve": {"rule": "volume", "volume": {"value": 0, "unit": "gal"}}}},
                 {"name": "at once", "control": {"kind": "meteredImmediate"}},
                 {"name": "weekdays", "control": {"kind": "clock", "weekdays": ["thursday", "monday"]}}]""").statusCode(200)
                .body("policies[0].events.date", contains("2026-01-09"))
                .body("policies[1].events.date", contains("2026-01-08"))
                .body("policies[2].events.date", contains("2026-01-05", "2026-01-08"))
                .body("policies[0].events[0].reason", equalTo("meter"))
                .body("policies[0].totals.bypassedWater.value", exactly(0))
                .body("policies[1].totals.bypassedWater.value", greaterThan(0.0))
                .body("policies[0].meterVolume.value", near(800, 0.01, "24,000 gr / 30 gpg"))
                .body("policies[0].reserve.value", exactly(0)).body("policies[1].reserve", nullValue())
                .body("policies[2].weekdays", contains("monday", "thursday")).body("policies[2].everyDays", nullValue());
    }

    /** Half of 24,000 gr lasts four days, so the fifth runs hard. */
    @Test
    void startsWithTheCapacityThatIsLeft() {
        schedule(clock(10), "\"days\": 10, \"chargeLeftShare\": 0.5").statusCode(200)
                .body("policies[0].everyDays", exactly(10)).body("policies[0].firstHardDate", equalTo("2026-01-05"))
                .body("policies[0].totals.hardDays", exactly(6))
                .body("policies[0].totals.hardnessRemoved.value", near(12_000, 0.01, "half of 24,000 gr"))
                .body("policies[0].nextRegeneration", equalTo("2026-01-21"));
    }

    /**
     * 20 lb less the first 8 are below two doses: 5 bags of 40 lb fit into 220.46 lb beside 12, which makes 212. After 25
     * more, 104 days from the start, 12 are left again; the 27th takes 8 of 212.
     */
    @Test
    void buysSaltBeforeItRunsOut() {
        schedule(clock(4) + """
                , "brineTankCapacity": {"value": 100, "unit": "kg"}, "saltOnHand": {"value": 20, "unit": "lb"}""",
                "\"days\": 108").statusCode(200)
                .body("policies[0].salt.purchases.date", contains("2026-01-05", "2026-04-15"))
                .body("policies[0].salt.purchases.bags", contains(5, 5)).body("policies[0].salt.bags", exactly(10))
                .body("policies[0].salt.bag.value", near(40, 1e-3, "the default bag"))
                .body("policies[0].salt.leftAtEnd.value", near(204, 1e-3, "212 - 8"))
                .body("policies[0].salt.leastBrineTankCapacity", nullValue())
                .body("assumptions.find {it.pointer == '/prices/saltBag/mass'}.value", exactly(40))
                .body("assumptions.find {it.pointer == '/prices/saltBag/mass'}.unit", equalTo("lb"));
    }

    /** A bag of 40 lb beside the 8 lb of a regeneration needs 48 lb. */
    @Test
    void statesTheSmallestBrineTankThatHoldsABag() {
        schedule(clock(4) + ", \"brineTankCapacity\": {\"value\": 47, \"unit\": \"lb\"}", "\"days\": 30").statusCode(200)
                .body("policies[0].salt.leastBrineTankCapacity.value", near(48, 1e-3, "40 + 8"))
                .body("policies[0].salt.leftAtEnd", nullValue())
                .body("policies[0].salt.missingBecause", containsString("48\u00a0lb"));
        schedule(clock(4) + ", \"brineTankCapacity\": {\"value\": 49, \"unit\": \"lb\"}", "\"days\": 30").statusCode(200)
                .body("policies[0].salt.missingBecause", nullValue());
    }

    @Test
    void listsFourHundredOfTheLongestCalendar() {
        schedule(clock(1) + ", \"brineTankCapacity\": {\"value\": 10, \"unit\": \"kg\"}", """
                "days": 1096, "prices": {"saltBag": {"price": {"value": 1, "unit": "USD"}, "mass": {"value": 1, "unit": "kg"}}}
                """).statusCode(200)
                .body("policies[0].totals.regenerations", exactly(1096)).body("policies[0].events", hasSize(400))
                .body("policies[0].eventsOmitted", exactly(696)).body("policies[0].salt.purchases", hasSize(400))
                .body("policies[0].salt.purchasesOmitted", greaterThan(0))
                .body("policies[0].perYear.regenerations", near(365, 1e-3, "one a night"));
    }

    /** 91.25 and 36.5 regenerations a year: 54.75 x 8 lb less; the ninth and the tenth day of each ten are hard. */
    @Test
    void doesNotPraiseAThriftThatRunsHard() {
        schedule("", """
                "days": 365, "policies": [{"name": "4", "control": {"kind": "clock", "everyDays": 4}},
                  {"name": "10", "control": {"kind": "clock", "everyDays": 10}}]""").statusCode(200)
                .body("summary", containsString("Policy \u201c10\u201d, compared with \u201c4\u201d: 440\u00a0lb less salt a year and 73 "
                        + "more hard days."))
                .body("comparisons[0].salt.value", near(-438, 1e-3, "54.75 x 8"))
                .body("comparisons[0].regenerations", exactly(-54.75)).body("comparisons[0].hardDays", exactly(73));
    }

    /** Gamma of mean 1 and CV 0.45: 1.602 at 90 %, 2.331 at 99 %, from any table or library of the gamma distribution. */
    @Test
    void keepsBackWhatThePreferredProbabilityAsks() {
        assertEquals(2.331 / 1.602, reserveGallons(0.99) / reserveGallons(0.9), 0.001, "three decimals printed");
    }

    private static double reserveGallons(double probability) {
        return TestServer.post("/v1/regeneration-schedule?detail=full", """
                {"water": {"hardness": {"value": 30, "unit": "gpg"}}, "household": {"dailyUse": {"value": 100, "unit": "gal"}},
                 "softener": {"resinVolume": {"value": 1, "unit": "ft3"}, "control": {"kind": "meteredDelayed",
                 "reserve": {"rule": "dayPercentile", "probability": %s}}}}""".formatted(probability)).statusCode(200)
                .extract().jsonPath().getDouble("policies[0].reserve.value");
    }

    @Test
    void statesTheHourOfEachPolicy() {
        schedule("", """
                "days": 5, "policies": [{"name": "a", "control": {"kind": "clock", "everyDays": 4}},
                  {"name": "b", "control": {"kind": "clock", "everyDays": 4, "regenerationHour": 23}}]""").statusCode(200)
                .body("policies.regenerationHour", contains(2, 23))
                .body("assumptions.find {it.pointer == '/policies/0/control/regenerationHour'}.origin", equalTo("default"))
                .body("assumptions.find {it.pointer == '/policies/1/control/regenerationHour'}.origin", equalTo("caller"))
                .body("summary", endsWith("Policy \u201cb\u201d, compared with \u201ca\u201d: the same amount of salt a year "
                        + "and the same number of hard days."));
    }

    @Test
    void refusesTwoPoliciesOfOneName() {
        schedule("", """
                "policies": [{"name": "a", "control": {"kind": "clock", "everyDays": 4}},
                  {"name": "a", "control": {"kind": "clock", "everyDays": 5}}]""").statusCode(422)
                .body("errors.pointer", contains("/policies/1/name"));
    }
}
