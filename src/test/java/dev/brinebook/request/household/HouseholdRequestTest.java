// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.household;

import static dev.brinebook.http.Near.near;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.TestServer;
import io.restassured.path.json.JsonPath;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The ways of telling a household, over HTTP. */
class HouseholdRequestTest {

    private static final String ASSUMED = "assumptions.find { it.pointer == '%s' }.%s";
    private static final String BODY = """
            {"water": {"hardness": {"value": 20, "unit": "gpg"}}, "household": %s, "units": "metric",
             "candidates": [{"sku": "x", "resinVolume": {"value": 40, "unit": "L"}}]}""";

    @ParameterizedTest(name = "{2}")
    @CsvSource(delimiter = '|', value = {
        "{\"people\": 2} | 454.249 | 2 people x 60 gal: Residential End Uses of Water v2",
        "{\"people\": 2, \"usePerPerson\": {\"value\": 121, \"unit\": \"L\"}} | 242 | BDEW 2023",
        "{\"dailyUse\": {\"value\": 300, \"unit\": \"L\"}} | 300 | measured",
        "{\"dailyUse\": {\"value\": 300, \"unit\": \"L\"}, \"leftHard\": [\"toilets\"]} | 228.261 | 105 of 138: REU v2",
        "{\"dailyUse\": {\"value\": 300, \"unit\": \"L\"}, \"leftHard\": [\"allCold\"]} | 99 | hot share 0.33: REU v2",
        "{\"dailyUse\": {\"value\": 300, \"unit\": \"L\"}, \"outdoorUse\": {\"value\": 50, \"unit\": \"L\"}} | 350 | sum",
        "{\"dailySeries\": {\"firstDate\": \"2026-01-01\", \"unit\": \"m3\", \"values\": [0.1, 0.3]}} | 203.957 | 400 L on a Thursday and a Friday, (0.988 + 0.969) / 0.997857 usual days",
        "{\"dailySeries\": {\"firstDate\": \"2026-01-01\", \"unit\": \"L\", \"values\": [100, 300, 200],"
            + " \"missing\": [\"2026-01-02\"]}} | 195.466 | a gap is no day without use: 600\u00a0L / (0.988 + 1.035 + 1.040) x 0.997857",
        "{\"people\": 2, \"country\": \"germany\", \"dailySeries\": {\"firstDate\": \"2026-01-01\", \"unit\": \"m3\", \"values\": [0]}}"
            + " | 242 | nobody there: 2 people x 121\u00a0L, BDEW 2023"})
    void isReadFromEveryForm(String household, double expectedLitres, String source) {
        TestServer.post("/v1/softener-sizing?detail=full", BODY.formatted(household)).statusCode(200)
                .body("dailyUse.value", near(expectedLitres, 0.4, source));
    }

    /** Thursday 100, Friday missing, then a week of 300, whose Friday replaces the one that is missing. */
    @Test
    void aGapTakesTheMeanOfItsWeekdayAndSaysSo() {
        TestServer.post("/v1/softener-sizing?detail=full", BODY.formatted("{\"dailySeries\": {\"firstDate\": \"2026-01-01\","
                + " \"unit\": \"L\", \"values\": [100, 300, 300, 300, 300, 300, 300, 500],"
                + " \"missing\": [\"2026-01-02\"]}}")).statusCode(200)
                .body("dailyUse.value", near((100 + 6 * 300 + 500) / 8.0, 3,
                        "mean of the days that are known, weekdays alike but for 4\u00a0%"))
                .body(ASSUMED.formatted("/household/dailySeries/missing", "value"), equalTo(1))
                .body(ASSUMED.formatted("/household/dailySeries/missing", "unit"), equalTo("days"))
                .body(ASSUMED.formatted("/household/dailySeries/missing", "note"),
                        equalTo("missing of 9 days, each replaced by the mean of its weekday"));
    }

    /** A month of even weeks and two days of 6,000 L: the assumptions name both, with what the days and the people count. */
    @Test
    void reportsItsEstimateFromTheDays() {
        String values = IntStream.range(0, 28).mapToObj(i -> i == 9 || i == 20 ? "6000" : i % 2 == 0 ? "200" : "400")
                .collect(Collectors.joining(", "));
        String household = "{\"people\": 2, \"usePerPerson\": {\"value\": 150, \"unit\": \"L\"}, %s \"dailySeries\": {\"firstDate\":"
                + " \"2026-01-05\", \"unit\": \"L\", \"values\": [" + values + "]}}";
        TestServer.post("/v1/softener-sizing?detail=full", BODY.formatted(household.formatted(""))).statusCode(200)
                .body("assumptions.find { it.name == 'highDays' }.code", equalTo("2026-01-14, 2026-01-25"))
                .body("assumptions.find { it.name == 'highDays' }.origin", equalTo("estimated"))
                .body("assumptions.find { it.name == 'estimatedFrom' }.code", equalTo("2026-01-05"))
                .body(ASSUMED.formatted("/household/dailyUse", "unit"), equalTo("L"))
                .body(ASSUMED.formatted("/household/dailyUse", "note"), containsString(" from the days (weight 73.2\u00a0%)"))
                .body(ASSUMED.formatted("/household/dailyUse", "note"), containsString("300\u00a0L from the number of people"))
                .body(ASSUMED.formatted("/household/usePerPerson", "origin"), equalTo("caller"))
                .body(ASSUMED.formatted("/household/levelSpread", "note"), equalTo("from 28 days with somebody at home"))
                .body(ASSUMED.formatted("/household/scatterSpread", "value"), near(0.1912, 5e-5, "as the note of its days"))
                .body(ASSUMED.formatted("/household/scatterSpread", "note"), startsWith("from 28 days"));
        TestServer.post("/v1/softener-sizing?detail=full", BODY.formatted(household.formatted("\"levelSpread\": 0,"))).statusCode(200)
                .body(ASSUMED.formatted("/household/levelSpread", "origin"), equalTo("caller"))
                .body(ASSUMED.formatted("/household/scatterSpread", "value"), equalTo(0));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {"\"2026-01-03\" | from January 1, 2026 to January 2, 2026", "\"2025-12-31\" | from",
        "\"2026-01-02\", \"2026-01-02\" | ascending", "\"2026-01-03\", \"2026-01-02\" | ascending"})
    void refusesMissingDaysOutsideTheSeries(String missing, String told) {
        TestServer.post("/v1/softener-sizing?detail=full", BODY.formatted("{\"dailySeries\": {\"firstDate\": \"2026-01-01\","
                + " \"unit\": \"L\", \"values\": [1], \"missing\": [" + missing + "]}}")).statusCode(422)
                .body("errors[0].pointer", equalTo("/household/dailySeries/missing"))
                .body("errors[0].code", equalTo("inconsistent")).body("errors[0].message", containsString(told));
    }

    /** Three showers of 2 gpm are 22.7 L/min, while the 99th percentile of five bathrooms is 21.3: a peak is not below it. */
    @ParameterizedTest(name = "{0} bathrooms")
    @ValueSource(ints = {1, 2, 3, 4, 5, 8, 12})
    void shortPeaksAreNeverBelowTheLastingFlow(int bathrooms) {
        JsonPath answer = TestServer.post("/v1/softener-sizing?detail=full", BODY.formatted("{\"people\": 2, \"bathrooms\": " + bathrooms
                + "}")).statusCode(200).extract().jsonPath();
        assertTrue(answer.getDouble("candidates[0].peakFlow.flow.value")
                >= answer.getDouble("candidates[0].continuousFlow.flow.value"));
    }

    @Test
    void statesDefaultsInTheUnitsOfTheAnswer() {
        TestServer.post("/v1/softener-sizing?detail=full", BODY.formatted("{\"people\": 2, \"bathrooms\": 1}")).statusCode(200)
                .body(ASSUMED.formatted("/household/continuousFlow", "value"), near(2 * 3.785411784, 1e-5, "one shower of 2\u00a0gpm"))
                .body(ASSUMED.formatted("/household/continuousFlow", "unit"), equalTo("L/min"))
                .body(ASSUMED.formatted("/household/continuousFlow", "origin"), equalTo("estimated"))
                .body(ASSUMED.formatted("/water/temperature", "value"), equalTo(12))
                .body(ASSUMED.formatted("/water/temperature", "unit"), equalTo("C"));
    }

    /** What a household comes to when it says nothing else, each with its value, its origin and its source. */
    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', value = {
        "/household/usePerPerson | 121 | L | country | BDEW",
        "/household/outdoorUse | 0 | L | default | CP-INSTALLATION",
        "/household/bathrooms | 1 | | estimated | OWN-ASSUMPTION",
        "/household/dayToDayVariation | 0.42 | | default | DAIAD",
        "/household/weekendRatio | 1.09 | | default | DAIAD",
        "/household/levelSpread | 0.377 | | default | DAIAD",
        "/household/scatterSpread | 0.237 | | default | DAIAD",
        "/household/dayCorrelation | 0.12 | | default | DAIAD",
        "/water/hardnessUncertainty | 0 | mg/L | default | OWN-ASSUMPTION",
        "/water/iron | 0 | mg/L | default | OWN-ASSUMPTION"})
    void saysWhereADefaultComesFrom(String pointer, double value, String unit, String origin, String source) {
        TestServer.post("/v1/softener-sizing?detail=full", BODY.formatted("{\"people\": 2, \"country\": \"germany\"}")).statusCode(200)
                .body(ASSUMED.formatted(pointer, "value"), near(value, 0, source))
                .body(ASSUMED.formatted(pointer, "unit"), equalTo(unit))
                .body(ASSUMED.formatted(pointer, "origin"), equalTo(origin))
                .body(ASSUMED.formatted(pointer, "source"), equalTo(source));
    }

    @ParameterizedTest(name = "{1} {2}")
    @CsvSource(delimiter = '|', value = {
        "{} | /household/people | missing",
        "{\"people\": 16} | /household/people | outOfRange",
        "{\"people\": 2.5} | /household/people | wrongType",
        "{\"usePerPerson\": {\"value\": 50, \"unit\": \"gal\"}, \"dailyUse\": {\"value\": 3, \"unit\": \"m3\"}}"
            + " | /household/usePerPerson | inconsistent",
        "{\"dailyUse\": {\"value\": 3, \"unit\": \"m3\"}, \"dailySeries\": {\"firstDate\": \"2026-01-01\", \"unit\": \"L\","
            + " \"values\": [1]}} | /household/dailySeries | inconsistent",
        "{\"weeklyUse\": [{\"value\": 1, \"unit\": \"L\"}]} | /household/weeklyUse | wrongCount",
        "{\"dailySeries\": {\"firstDate\": \"2026-02-30\", \"unit\": \"L\", \"values\": [1]}}"
            + " | /household/dailySeries/firstDate | unknownValue",
        "{\"dailySeries\": {\"firstDate\": \"2026-01-01\", \"unit\": \"m3\", \"values\": [1, 46]}}"
            + " | /household/dailySeries/values/1 | outOfRange",
        "{\"dailySeries\": {\"firstDate\": \"2026-01-01\", \"unit\": \"L\", \"values\": [1, -1]}}"
            + " | /household/dailySeries/values/1 | outOfRange",
        "{\"dailySeries\": {\"firstDate\": \"2026-01-01\", \"unit\": \"L\", \"values\": [1, null]}}"
            + " | /household/dailySeries/values/1 | nullValue"})
    void refusesInvalidHouseholds(String household, String pointer, String code) {
        TestServer.post("/v1/softener-sizing?detail=full", BODY.formatted(household)).statusCode(422)
                .body("errors[0].pointer", equalTo(pointer)).body("errors[0].code", equalTo(code))
                .body("errors[0].message", containsString(" "));
    }
}
