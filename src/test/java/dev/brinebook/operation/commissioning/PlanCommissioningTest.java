// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.commissioning;

import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.http.TestServer;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlanCommissioningTest {

    private static final String CASE = """
            "water": {"hardness": {"value": 20, "unit": "gpg"}, "temperature": {"value": 10, "unit": "C"}},
            "household": {"people": 4}, "units": "us\"""";
    private static final String TANK = "\"resinVolume\": {\"value\": 1.5, \"unit\": \"ft3\"}, "
            + "\"tankDiameter\": {\"value\": 10, \"unit\": \"in\"}, \"tankHeight\": {\"value\": 54, \"unit\": \"in\"}";
    private static final String FLOWS = """
            , "flows": {"drain": {"value": 3, "unit": "gpm"}, "brineDraw": {"value": 0.8, "unit": "gpm"},
              "brineSuction": {"value": 0.35, "unit": "gpm"}, "refill": {"value": 0.5, "unit": "gpm"}}""";
    private static final String SIX_POUNDS = ", \"settings\": {\"saltDose\": {\"value\": 6, \"unit\": \"lb/ft3\"}}";

    /** 9 lb over 2.98 lb/gal at 0.5 gpm are 6.0 minutes. Source: hand arithmetic. */
    @Test
    void takesTheDoseOfTheCaller() {
        post(SIX_POUNDS, FLOWS, "").statusCode(200).body("settings.find { it.setting == 'salt' }.value", is(9, 0.001))
                .body("settings.find { it.setting == 'refill' }.value", is(6, 0.05))
                .body("checks.find { it.check == 'refillWater' }.passFrom", is(2.62, 0.03))
                .body("checks.find { it.check == 'drawMinutes' }.passTo", is(12.3, 0.2))
                .body("checks.reading", everyItem(nullValue())).body("readings", nullValue())
                .body("stages.stage", hasItems("beforeWater", "handOver")).body("later.afterDays.unique()", contains(1, 7, 30));
    }

    /** One household, two operations: the settings are the same. */
    @Test
    void advisesWhatAnAssessmentAdvises() {
        String softener = TANK + FLOWS + ", \"control\": {\"kind\": \"clock\", \"everyDays\": 4}";
        String request = "{" + CASE + ", \"softener\": {" + softener + "}}";
        JsonPath plan = TestServer.post("/v1/commissioning-plan", request).statusCode(200).extract().jsonPath();
        JsonPath assessed = TestServer.post("/v1/assessment", request).statusCode(200).extract().jsonPath();
        for (String[] pair : new String[][] {{"hardness", "hardness.value"}, {"capacity", "capacity.value"}, {"reserve", "reserve.value"},
                {"salt", "saltPerRegeneration.value"}, {"refill", "refillMinutes"}, {"dayOverride", "dayOverride"}}) {
            assertEquals(assessed.getDouble("settings." + pair[1]), plan.getDouble("settings.find { it.setting == '" + pair[0]
                    + "' }.value"), 1e-6, pair[0]);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "{\"check\": \"backwashFlow\", \"value\": 3.1, \"unit\": \"gpm\"} | pass | within",
            "{\"check\": \"backwashFlow\", \"value\": 11.7, \"unit\": \"L/min\"} | pass | within",
            "{\"check\": \"backwashFlow\", \"value\": 2.5, \"unit\": \"gpm\"} | measureAgain | betweenLimits",
            "{\"check\": \"backwashFlow\", \"value\": 1.5, \"unit\": \"gpm\"} | fail | below",
            "{\"check\": \"backwashFlow\", \"value\": 3, \"unit\": \"gpm\", \"plusMinus\": 0.5} | measureAgain | tooUncertain",
            "{\"check\": \"brineStrength\", \"value\": 90, \"unit\": \"degrees\"} | fail | below",
            "{\"check\": \"tapAboveOutlet\", \"value\": 2, \"unit\": \"gpg\"} | fail | above",
            "{\"check\": \"tapAboveOutlet\", \"value\": -0.5, \"unit\": \"gpg\"} | pass | within",
            "{\"check\": \"outletHardness\", \"value\": 17, \"unit\": \"mg/L\"} | pass | within",
            "{\"check\": \"pressureLoss\", \"value\": 1, \"unit\": \"bar\"} | fail | above",
            "{\"check\": \"powerLoss\", \"yes\": false} | fail | denied",
            "{\"check\": \"airOut\", \"yes\": true} | pass | confirmed"})
    void judgesReadings(String reading, String verdict, String outcome) {
        post(SIX_POUNDS, FLOWS, reading).statusCode(200).body("checks.findAll { it.verdict }.verdict", contains(verdict))
                .body("checks.findAll { it.verdict }.outcome", contains(outcome));
    }

    /** Without the flows of the valve a reading outside asks for them. */
    @Test
    void doesNotFailAValveThatNobodyDescribed() {
        post(SIX_POUNDS, "", "{\"check\": \"backwashFlow\", \"value\": 1.5, \"unit\": \"gpm\"}").statusCode(200)
                .body("checks.find { it.check == 'backwashFlow' }.outcome", equalTo("flowNotKnown"))
                .body("summary", containsString("flows printed on the valve"));
    }

    @Test
    void saysHowMuchLongerToRinse() {
        post(SIX_POUNDS, FLOWS, "{\"check\": \"rinseChloride\", \"value\": 870, \"unit\": \"mg/L\"}").statusCode(200)
                .body("checks.find { it.check == 'rinseChloride' }.reason", containsString("Rinse about 7 minutes longer"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            "{\"check\": \"backwashFlow\", \"value\": 3, \"unit\": \"lb\"} | /readings/0/unit | unknownValue",
            "{\"check\": \"backwashFlow\", \"value\": 3, \"unit\": \"gal\"} | /readings/0/unit | inconsistent",
            "{\"check\": \"backwashFlow\", \"unit\": \"gpm\"} | /readings/0/value | missing",
            "{\"check\": \"backwashFlow\", \"value\": -3, \"unit\": \"gpm\"} | /readings/0/value | outOfRange",
            "{\"check\": \"airOut\"} | /readings/0/yes | missing",
            "{\"check\": \"airOut\", \"yes\": true, \"value\": 1} | /readings/0/value | inconsistent",
            "{\"check\": \"brineLevelFall\", \"value\": 6, \"unit\": \"in\"} | /readings/0/check | impossible",
            "{\"check\": \"airOut\", \"yes\": true}, {\"check\": \"airOut\", \"yes\": true} | /readings/1/check | inconsistent"})
    void refusesReadingsThatSayNothing(String readings, String pointer, String code) {
        post(SIX_POUNDS, FLOWS, readings).statusCode(422).body("errors.pointer", hasItem(pointer)).body("errors.code", hasItem(code));
    }

    @Test
    void commissionsAClock() {
        post(", \"settings\": {\"control\": {\"kind\": \"clock\", \"everyDays\": 4}}", FLOWS, "").statusCode(200)
                .body("settings.setting", hasItems("interval", "salt", "hour")).body("settings.setting", not(hasItem("reserve")))
                .body("expected.intervalDays", is(4, 1e-6)).body("expected.firstDates", hasSize(greaterThan(5)))
                .body("summary", startsWith("Enter"));
    }

    private static org.hamcrest.Matcher<Number> is(double value, double error) {
        return new org.hamcrest.CustomTypeSafeMatcher<>(value + " ± " + error) {
            @Override
            protected boolean matchesSafely(Number number) {
                return closeTo(value, error).matches(number.doubleValue());
            }
        };
    }

    private static ValidatableResponse post(String settings, String flows, String readings) {
        return TestServer.post("/v1/commissioning-plan", "{" + CASE + ", \"softener\": {" + TANK + flows + "}" + settings
                + (readings.isEmpty() ? "" : ", \"readings\": [" + readings + "]") + "}");
    }

    /** 7 gpm lifts this bed by 140 %, and its tank has room for about 60 %. Source: reviewSettings stops at the same flow. */
    @ParameterizedTest
    @CsvSource({"3, false", "7, true"})
    void stopsABackwashThatLosesResin(String gpm, boolean loses) {
        post("", FLOWS.replace("\"value\": 3,", "\"value\": " + gpm + ","), "").statusCode(200).body("cautions.code",
                loses ? hasItem("backwashLosesResin") : not(hasItem("backwashLosesResin")))
                .body("summary", loses ? containsString("Resin then leaves by the drain") : not(containsString("Resin then")));
    }

    /** Saturated brine has 100 degrees; no hydrometer for brine reads 500. */
    @Test
    void refusesMoreDegreesThanBrineHas() {
        post("", FLOWS, "{\"check\": \"brineStrength\", \"value\": 500, \"unit\": \"degrees\"}").statusCode(422)
                .body("errors.pointer", contains("/readings/0/value"));
    }
}
