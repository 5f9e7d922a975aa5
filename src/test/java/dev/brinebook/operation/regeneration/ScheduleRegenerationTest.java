// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import static dev.brinebook.http.Near.exactly;
import static dev.brinebook.http.Near.near;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.http.TestServer;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Exact checks of the schedule over HTTP: 1 ft3 at 8 lb/ft3 has 24,000 gr, and 100 gal at 30 gpg load 3,000 gr a day. */
class ScheduleRegenerationTest {

    private static final String CONSTANT = """
            {"water": {"hardness": {"value": 30, "unit": "gpg"}},
             "household": {"dailyUse": {"value": 100, "unit": "gal"}, "dayToDayVariation": 0},
             "softener": {"resinVolume": {"value": 1, "unit": "ft3"}, "saltDose": {"value": 8, "unit": "lb/ft3"}},
             "policies": [%s], "days": %d}""";

    private static ValidatableResponse schedule(String body) {
        return TestServer.post("/v1/regeneration-schedule?detail=full", body);
    }

    private static String policy(String name, String control) {
        return "{\"name\": \"" + name + "\", \"control\": " + control + "}";
    }

    @ParameterizedTest(name = "{0}: {1} regenerations in {2} days")
    @CsvSource(delimiter = '|', value = {
        "clock every 4 days | {\"kind\": \"clock\", \"everyDays\": 4} | 365 | 91 | 365/4 whatever the use",
        "clock every day | {\"kind\": \"clock\", \"everyDays\": 1} | 365 | 365 | 365/1",
        "Mondays and Thursdays | {\"kind\": \"clock\", \"weekdays\": [\"monday\", \"thursday\"]} | 364 | 104 | two a week",
        "reserve 0, 24/3 whole | {\"kind\": \"meteredDelayed\", \"reserve\": {\"rule\": \"volume\", \"volume\": {\"value\": 0,"
            + " \"unit\": \"gal\"}}} | 80 | 10 | interval floor(C/(uH)) = 8",
        "reserve of a day | {\"kind\": \"meteredDelayed\", \"reserve\": {\"rule\": \"meanDay\"}} | 70 | 10 |"
            + " interval ceil(C/(uH) - 1) = 7",
        "at once | {\"kind\": \"meteredImmediate\", \"dayOverride\": 0} | 81 | 10 | floor(total drawn / C), 30 gpg x 100 gal"
            + " x 81 days = 243,000 gr"})
    void regeneratesAsOftenAsItMust(String name, String control, int days, int expected, String why) {
        schedule(CONSTANT.formatted(policy(name, control), days)).statusCode(200)
                .body("policies[0].totals.regenerations", near(expected, 0, why));
    }

    @Test
    void overridesEveryFourteenDaysWhereNothingIsUsed() {
        String none = CONSTANT.replace("\"value\": 100", "\"value\": 0");
        schedule(none.formatted(policy("metered", "{\"kind\": \"meteredDelayed\", \"dayOverride\": 14}"), 365))
                .statusCode(200).body("policies[0].totals.regenerations", exactly(26.0))
                .body("policies[0].totals.overrides", exactly(26.0)).body("dailyLoad.value", exactly(0.0));
    }

    /** Common practice: a reserve is set by the water and the use, and not by a hardness that is set wrong. */
    @Test
    void aReserveThatWasNotReadDoesNotMakeUpForAWrongHardness() {
        String varying = CONSTANT.replace("\"dayToDayVariation\": 0", "\"dayToDayVariation\": 0.4");
        JsonPath path = schedule(varying.formatted(policy("correct", "{\"kind\": \"meteredDelayed\"}") + ","
                + policy("too low", "{\"kind\": \"meteredDelayed\", \"hardnessSetting\": {\"value\": 10, \"unit\": \"gpg\"}}"), 365))
                .statusCode(200).body("policies[0].keepsServiceStandard", equalTo(true))
                .body("policies[1].keepsServiceStandard", equalTo(false))
                .body("policies[1].perYear.hardDays", greaterThan(100.0))
                .body("assumptions.find { it.pointer == '/policies/1/control/reserve' }.note",
                        equalTo("the smallest reserve that meets the service standard once hardness and capacity are set correctly"))
                .extract().jsonPath();
        assertEquals(path.getDouble("policies[0].reserve.value"), path.getDouble("policies[1].reserve.value"), 1e-9);
    }

    @Test
    void whereNoReserveIsEnoughTheMeanUseOfADayIsAssumed() {
        String small = CONSTANT.replace("\"dayToDayVariation\": 0", "\"dayToDayVariation\": 0.4").replace(
                "\"resinVolume\": {\"value\": 1,", "\"resinVolume\": {\"value\": 0.2,");
        schedule(small.formatted(policy("small", "{\"kind\": \"meteredDelayed\"}"), 365)).statusCode(200)
                .body("policies[0].reserve.value", near(100, 0.01, "dailyUse"))
                .body("policies[0].keepsServiceStandard", equalTo(false));
    }

    @Test
    void countsSaltWaterAndChargeOfThePublishedDuty() {
        schedule(CONSTANT.formatted(policy("clock", "{\"kind\": \"clock\", \"everyDays\": 4}"), 365)).statusCode(200)
                .body("dailyLoad.value", near(3_000, 0.01, "")).body("capacity.value", near(24_000, 0.01, ""))
                .body("policies[0].totals.salt.value", near(91 * 8, 0.01, ""))
                .body("policies[0].totals.hardDays", exactly(0.0))
                .body("policies[0].totals.hardnessRemoved.value", near(365 * 3_000, 10, ""))
                .body("policies[0].totals.capacityThrownAway.value", near(91 * 12_000, 10, ""))
                .body("policies[0].meanIntervalDays", exactly(4.0)).body("policies[0].meterVolume", nullValue());
    }

    @Test
    void saysWhenItRunsHard() {
        schedule(CONSTANT.formatted(policy("clock", "{\"kind\": \"clock\", \"everyDays\": 10}"), 20)).statusCode(200)
                .body("policies[0].firstHardDate", equalTo("2026-01-09")).body("policies[0].totals.hardDays", exactly(4.0))
                .body("policies[0].totals.hardWater.value", near(400, 0.01, ""))
                .body("policies[0].events.date", contains("2026-01-11", "2026-01-21"))
                .body("cautions.code", hasItem("runsHard"));
    }

    @Test
    void comparesPoliciesOnTheSameDays() {
        String both = policy("clock", "{\"kind\": \"clock\", \"everyDays\": 4}") + ","
                + policy("metered", "{\"kind\": \"meteredDelayed\"}");
        String varying = CONSTANT.replace("\"dayToDayVariation\": 0", "\"dayToDayVariation\": 0.4");
        var path = schedule(varying.formatted(both, 365)).statusCode(200).extract().jsonPath();
        double removed = path.getDouble("policies[0].totals.hardnessRemoved.value");
        double hard = path.getDouble("policies[1].totals.hardWater.value");
        assertEquals(removed, path.getDouble("policies[1].totals.hardnessRemoved.value") + 30 * hard, 20,
                "the same water is used");
        assertEquals(path.getDouble("policies[1].perYear.salt.value") - path.getDouble("policies[0].perYear.salt.value"),
                path.getDouble("comparisons[0].salt.value"), 0.01);
        assertEquals("clock", path.getString("comparisons[0].against"));
    }

    @Test
    void aMeterWithAFullReserveCanLoseToAClockTunedWithHindsight() {
        String series = """
                {"water": {"hardness": {"value": 10, "unit": "fH"}},
                 "household": {"dailySeries": {"firstDate": "2026-01-01", "unit": "L",
                    "values": [3000,3000,4000,3000,3000,4000,3000,3000,4000,3000,3000,4000]}},
                 "softener": {"resinVolume": {"value": 21.24, "unit": "L"}, "saltDose": {"value": 96.110780243, "unit": "g/L"}},
                 "policies": [{"name": "clock", "control": {"kind": "clock", "everyDays": 3}},
                    {"name": "meter", "control": {"kind": "meteredDelayed", "hardnessSetting": {"value": 10, "unit": "fH"},
                     "reserve": {"rule": "volume", "volume": {"value": 4000, "unit": "L"}}}}], "units": "metric"}""";
        schedule(series).statusCode(200).body("days", exactly(12))
                .body("policies[0].totals.regenerations", exactly(4.0)).body("policies[1].totals.regenerations", exactly(6.0));
    }

    @Test
    void takesThreeYearsOfMeasuredDays() {
        String values = "310,".repeat(1_094) + "310";
        schedule("""
                {"water": {"hardness": {"value": 17, "unit": "dH"}},
                 "household": {"dailySeries": {"firstDate": "2023-01-01", "unit": "L", "values": [%s]}},
                 "softener": {"resinVolume": {"value": 20, "unit": "L"}, "saltDose": {"value": 100, "unit": "g/L"},
                    "control": {"kind": "meteredDelayed"}}, "units": "metric"}""".formatted(values))
                .statusCode(200).body("days", exactly(1_095)).body("firstDate", equalTo("2023-01-01"))
                .body("dailyUse.value", near(310, 1e-6, "")).body("policies[0].name", equalTo("Now"))
                .body("policies[0].nextRegeneration", notNullValue()).body("comparisons", hasSize(0));
    }

    @Test
    void reportsABrineTankThatHoldsNoBag() {
        schedule("""
                {"water": {"hardness": {"value": 17, "unit": "dH"}}, "household": {"people": 2},
                 "softener": {"resinVolume": {"value": 20, "unit": "L"}, "control": {"kind": "clock", "everyDays": 5},
                    "brineTankCapacity": {"value": 10, "unit": "kg"}}}""").statusCode(200)
                .body("policies[0].salt.bags", exactly(0.0)).body("policies[0].salt.missingBecause", notNullValue());
    }

    @Test
    void reportsEveryContradiction() {
        schedule("""
                {"water": {"hardness": {"value": 17, "unit": "dH"}},
                 "household": {"dailySeries": {"firstDate": "2026-01-01", "unit": "L", "values": [100]}},
                 "softener": {"resinVolume": {"value": 20, "unit": "L"}}, "days": 10,
                 "preferences": {"startDate": "2026-02-01"},
                 "policies": [{"name": "x", "control": {"kind": "clock", "everyDays": 3, "weekdays": ["monday"]}}]}""")
                .statusCode(422).body("errors.pointer", contains("/days", "/policies/0/control/weekdays",
                        "/preferences/startDate"));
    }

    @Test
    void asksForAPolicy() {
        schedule("""
                {"water": {"hardness": {"value": 17, "unit": "dH"}}, "household": {"people": 2},
                 "softener": {"resinVolume": {"value": 20, "unit": "L"}}}""")
                .statusCode(422).body("errors.pointer", contains("/policies"));
    }

    @Test
    void refusesWaterThatNeedsNoSoftener() {
        schedule("""
                {"water": {"hardness": {"value": 0, "unit": "dH"}}, "household": {"people": 2},
                 "softener": {"resinVolume": {"value": 20, "unit": "L"}, "control": {"kind": "clock", "everyDays": 3}}}""")
                .statusCode(422).body("errors[0].pointer", equalTo("/water")).body("errors[0].code", equalTo("impossible"));
    }

    @Test
    void countsTheSaltThatTheRefillReallyDissolves() {
        schedule("""
                {"water": {"hardness": {"value": 20, "unit": "gpg"}, "temperature": {"value": 20, "unit": "C"}},
                 "household": {"people": 3}, "softener": {"resinVolume": {"value": 1, "unit": "ft3"},
                   "saltDose": {"value": 8, "unit": "lb/ft3"}, "control": {"kind": "clock", "everyDays": 4},
                   "minutes": {"refill": 10}, "flows": {"refill": {"value": 0.5, "unit": "gpm"}}}}""").statusCode(200)
                .body("saltPerRegeneration.value", near(5 * 2.99, 0.03, "5 gal of water, 2.99 lb a gallon: Salt Institute"));
    }
}
