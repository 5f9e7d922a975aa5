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
            + " \"missing\": [\"2026-01-02\"]}} | 195.466 | a gap is no day without use: 600 L / (0.988 + 1.035 + 1.040) x 0.997857",
        "{\"people\": 2, \"country\": \"germany\", \"dailySeries\": {\"firstDate\": \"2026-01-01\", \"unit\": \"m3\", \"values\": [0]}}"
            + " | 242 | nobody there: 2 people x 121 L, BDEW 2023"})
    void isReadFromEveryForm(String household, double expectedLitres, String source) {
        TestServer.post("/v1/softener-sizing", BODY.formatted(household)).statusCode(200)
                .body("dailyUse.value", near(expectedLitres, 0.4, source));
    }

    /** Thursday 100, Friday missing, then a week of 300, whose Friday replaces the one that is missing. */
    @Test
    void aGapTakesTheMeanOfItsWeekdayAndSaysSo() {
        TestServer.post("/v1/softener-sizing", BODY.formatted("{\"dailySeries\": {\"firstDate\": \"2026-01-01\","
                + " \"unit\": \"L\", \"values\": [100, 300, 300, 300, 300, 300, 300, 500],"
                + " \"missing\": [\"2026-01-02\"]}}")).statusCode(200)
                .body("dailyUse.value", near((100 + 6 * 300 + 500) / 8.0, 3, "mean of the days that are known, weekdays alike but for 4 %"))
                .body("assumptions.find { it.name == 'household.dailySeries.missing' }.value",
                        equalTo("1 of 9 days missing, each replaced by the mean of its weekday"));
    }

    /** A month of even weeks and two days of 6,000 L: the assumptions name both, with what the days and the people count. */
    @Test
    void reportsItsEstimateFromTheDays() {
        String values = IntStream.range(0, 28).mapToObj(i -> i == 9 || i == 20 ? "6000" : i % 2 == 0 ? "200" : "400")
                .collect(Collectors.joining(", "));
        String household = "{\"people\": 2, \"usePerPerson\": {\"value\": 150, \"unit\": \"L\"}, %s \"dailySeries\": {\"firstDate\":"
                + " \"2026-01-05\", \"unit\": \"L\", \"values\": [" + values + "]}}";
        TestServer.post("/v1/softener-sizing", BODY.formatted(household.formatted(""))).statusCode(200)
                .body("assumptions.find { it.name == 'household.dailySeries.highDays' }.value", equalTo("leaks or fillings, limited"
                        + " to four times the median day: January 14, 2026: 6,000\u00a0L; January 25, 2026: 6,000\u00a0L"))
                .body("assumptions.find { it.name == 'household.dailySeries.highDays' }.origin", equalTo("derived"))
                .body("assumptions.find { it.name == 'household.dailyUse' }.value", containsString(" from the days (weight 73.17 %)"))
                .body("assumptions.find { it.name == 'household.dailyUse' }.value", containsString("300\u00a0L from the number of people"))
                .body("assumptions.find { it.name == 'household.levelSpread' }.value", containsString("from 28 days with somebody at home"))
                .body("assumptions.find { it.name == 'household.scatterSpread' }.value", startsWith("0.1912, from 28 days"));
        TestServer.post("/v1/softener-sizing", BODY.formatted(household.formatted("\"levelSpread\": 0,"))).statusCode(200)
                .body("assumptions.find { it.name == 'household.levelSpread' }.origin", equalTo("caller"))
                .body("assumptions.find { it.name == 'household.scatterSpread' }.value", equalTo("0"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', value = {"\"2026-01-03\" | from January 1, 2026 to January 2, 2026", "\"2025-12-31\" | from",
        "\"2026-01-02\", \"2026-01-02\" | ascending", "\"2026-01-03\", \"2026-01-02\" | ascending"})
    void refusesMissingDaysOutsideTheSeries(String missing, String told) {
        TestServer.post("/v1/softener-sizing", BODY.formatted("{\"dailySeries\": {\"firstDate\": \"2026-01-01\","
                + " \"unit\": \"L\", \"values\": [1], \"missing\": [" + missing + "]}}")).statusCode(422)
                .body("errors[0].pointer", equalTo("/household/dailySeries/missing"))
                .body("errors[0].code", equalTo("inconsistent")).body("errors[0].message", containsString(told));
    }

    /** Three showers of 2 gpm are 22.7 L/min, while the 99th percentile of five bathrooms is 21.3: a peak is not below it. */
    @ParameterizedTest(name = "{0} bathrooms")
    @ValueSource(ints = {1, 2, 3, 4, 5, 8, 12})
    void shortPeaksAreNeverBelowTheLastingFlow(int bathrooms) {
        JsonPath answer = TestServer.post("/v1/softener-sizing", BODY.formatted("{\"people\": 2, \"bathrooms\": " + bathrooms
                + "}")).statusCode(200).extract().jsonPath();
        assertTrue(answer.getDouble("candidates[0].peakFlow.flow.value")
                >= answer.getDouble("candidates[0].continuousFlow.flow.value"));
    }

    @Test
    void statesDefaultsInTheUnitsOfTheAnswer() {
        TestServer.post("/v1/softener-sizing", BODY.formatted("{\"people\": 2, \"bathrooms\": 1}")).statusCode(200)
                .body("assumptions.find { it.name == 'household.continuousFlow' }.value", startsWith("7.571\u00a0L/min"))
                .body("assumptions.find { it.name == 'water.temperature' }.value", equalTo("12\u00a0°C"));
    }

    @ParameterizedTest(name = "{1} {2}")
    @CsvSource(delimiter = '|', value = {
        "{} | /household/people | missing",
        "{\"people\": 16} | /household/people | outOfRange",
        "{\"people\": 2.5} | /household/people | wrongType",
        "{\"usePerPerson\": {\"value\": 50, \"unit\": \"gal\"}, \"dailyUse\": {\"value\": 3, \"unit\": \"m3\"}}"
            + " | /household/usePerPerson | inconsistent",
        "{\"dailyUse\": {\"value\": 3, \"unit\": \"m3\"}, \"dailySeries\": {\"firstDate\": \"2026-01-01\", \"unit\": \"L\","
            + " \"values\": [1]}} | /household/dailyUse | inconsistent",
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
        TestServer.post("/v1/softener-sizing", BODY.formatted(household)).statusCode(422)
                .body("errors[0].pointer", equalTo(pointer)).body("errors[0].code", equalTo(code))
                .body("errors[0].message", containsString(" "));
    }
}
