// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import static dev.brinebook.http.Near.near;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.TestServer;
import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Test;

class ChooseReserveTest {

    private static final String WELL = TestServer.example("chooseReserve.well-family");
    private static final String APARTMENT = TestServer.example("chooseReserve.apartment");

    @Test
    void findsTheSmallestReserveAndComparesTheRules() {
        choose(WELL).statusCode(200).body("summary", startsWith("Keep "))
                .body("smallest.year.hardDays", near(1, 1, "at most the two hard days a year that were asked for"))
                .body("summary", containsString("Rule “rule of thumb”: 720\u00a0gal in reserve, 0.2 hard days a year"))
                .body("smallest.reason", nullValue())
                .body("smallest.reserve.value", near(80, 1e-9, "iron starts it every third night, when a bed of 2,000 gal is"
                        + " seldom used up"))
                .body("basis.find { it.formula.contains('until there are four') }.formula", endsWith("a probability of 0.9"))
                .body("rules.rule", contains("share", "meanDay", "ruleOfThumb", "dayPercentile", "dayPercentile", "sameWeekdayLargest",
                        "sameWeekdayMean"))
                .body("rules[5].reserve", nullValue()).body("rules[3].reserve.value", notNullValue())
                .body("rules[2].reserve.value", near(719.9, 0.1, "[DAIAD] 2.4 mean days of 300 gal for a bed of 5"))
                .body("rules[2].year.hardDays", near(1, 1, "rarer than asked for"));
    }

    /** Domain: a reserve of the 99th percentile runs hard less often than that of the 90th. */
    @Test
    void aLargerQuantileRunsHardLessOften() {
        var path = choose(WELL).extract().jsonPath();
        assertTrue(path.getDouble("rules[4].year.hardDays") < path.getDouble("rules[3].year.hardDays"));
        assertTrue(path.getDouble("rules[4].year.salt.value") > path.getDouble("rules[3].year.salt.value"));
    }

    @Test
    void answersInMetricUnitsAndTheSameBytesAgain() {
        choose(APARTMENT).statusCode(200).body("summary", containsString(" for at most 1 hard day a year. "))
                .body("smallest.reserve.unit", equalTo("L"))
                .body("rules[2].reserve.value", near(300, 1e-9, "as given")).body("rules[2].year.salt.unit", equalTo("kg"));
        assertEquals(choose(APARTMENT).extract().asString(), choose(APARTMENT).extract().asString());
    }

    @Test
    void anotherSeedGivesTheSameAnswer() {
        assertEquals(choose(APARTMENT).extract().jsonPath().getString("rules"),
                choose(APARTMENT.replaceFirst("\\{", "{\"seed\": 77,")).extract().jsonPath().getString("rules"));
    }

    @Test
    void refusesAClockAndSaysWhenNoReserveIsEnough() {
        choose(WELL.replace("\"resinAgeYears\": 8,", "\"control\": {\"kind\": \"clock\", \"everyDays\": 3},"))
                .statusCode(422).body("errors[0].pointer", equalTo("/softener/control/kind"));
        choose(WELL.replace("\"people\": 5", "\"people\": 15").replace("\"value\": 1.5", "\"value\": 0.5")
                .replace("\"resinAgeYears\": 8,", "")).statusCode(200)
                .body("smallest.reason", equalTo("hardEveryNight")).body("smallest.reserve", nullValue())
                .body("summary", containsString("No reserve"));
    }

    @Test
    void refusesHouseholdsThatContradictThemselves() {
        choose(APARTMENT.replace("\"pattern\": \"usualAbsences\"", "\"pattern\": \"chain\", \"leavePerDay\": 0.1"))
                .statusCode(422).body("errors[0].pointer", equalTo("/household/occupancy/returnPerDay"));
        choose(APARTMENT.replace("\"pattern\": \"usualAbsences\"",
                "\"pattern\": \"absences\", \"spells\": [{\"from\": \"2026-07-02\", \"to\": \"2026-07-01\"}]"))
                .statusCode(422).body("errors[0].pointer", equalTo("/household/occupancy/spells/0/to"));
        choose(APARTMENT.replace("\"occupancy\"", "\"monthFactors\": [0,0,0,0,0,0,0,0,0,0,0,0], \"occupancy\"")).statusCode(422)
                .body("errors[0].pointer", equalTo("/household/monthFactors"));
    }

    private static ValidatableResponse choose(String request) {
        return TestServer.post("/v1/reserve-choice?detail=full", request);
    }
}
