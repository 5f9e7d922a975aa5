// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import static dev.brinebook.http.Near.near;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.TestServer;
import dev.brinebook.text.Language;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Settings tried on a household's own days: what a bed of 2,824 L, 847.2 g over 300 mg/L, does on days that can be counted. */
class BacktestSettingsTest {

    private static final String PATH = "/v1/backtest";
    private static final String STEADY = "\"dailyUse\": {\"value\": 300, \"unit\": \"L\"}, \"levelSpread\": 0, \"dayToDayVariation\": 0";
    private static final String CLOCK_OF_7 = "\"kind\": \"clock\", \"everyDays\": 7";

    private static String request(String household, String control, String days) {
        return """
                {"water": {"hardness": {"value": 300, "unit": "mg/L"}}, "household": {%s}, "softener": {"resinVolume":
                {"value": 18, "unit": "L"}, "saltDose": {"value": 100, "unit": "g/L"}, "control": {%s}}, "days": {"firstDate":
                "2026-03-02", "unit": "L", %s}, "units": "metric"}""".formatted(household, control, days)
                .replace("\n", " ");
    }

    private static ValidatableResponse tried(String household, String control, String values) {
        return TestServer.post(PATH, request(household, control, "\"values\": [" + values + "]"));
    }

    /** {@code often} times the same days. */
    private static String repeated(String values, int often) {
        return IntStream.range(0, often).mapToObj(i -> values).collect(Collectors.joining(", "));
    }

    @Test
    void reportsTheMeteredResultsBesideThePredictedOnes() {
        tried(STEADY, CLOCK_OF_7, repeated("300", 70)).statusCode(200).body("verdict", equalTo("asPredicted"))
                .body("capacity.value", near(847.2, 0.05, "18 L at 47.07 g/L, the trade's table at 100 g/L"))
                .body("days", equalTo(70)).body("missingDays", equalTo(0))
                .body("dailyUse.value", near(300, 1e-9, "")).body("expectedDailyUse.value", near(300, 1e-6, ""))
                .body("onTheseDays.regenerations", near(10, 1e-9, "70 days over 7"))
                .body("predicted.regenerations", near(10, 1e-5, "70 days over 7"))
                .body("onTheseDays.salt.value", near(18, 1e-6, "10 times 18 L at 100 g/L"))
                .body("onTheseDays.hardDays", near(0, 0, "7 days of 300 L are 2,100 L"))
                .body("predicted.hardDays", near(0, 0, "the same"))
                .body("usualHardDays.from", equalTo(0)).body("usualHardDays.to", equalTo(0))
                .body("exceptionalDays", hasSize(0))
                .body("summary", equalTo("On your 70 days, these settings would have left no hard day, as expected."));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', useHeadersInDisplayName = true, textBlock = """
            why                      | values                                      | often | verdict             | says
            all use more             | 450                                         | 70    | moreThanPredicted   | you used 450\u00a0L a day instead of the 300\u00a0L expected
            high weeks, same mean    | 150,150,150,150,150,150,150,450,450,450,450,450,450,450 | 6 | moreThanPredicted | Set the clock to fewer days
            leaks                    | 250,250,250,250,250,250,250,250,250,250,250,250,3500 | 6 | asPredicted | On 6 days you used more than four times
            somewhat less            | 280                                         | 70    | asPredicted         | no hard day
            a single day             | 300                                         | 1     | asPredicted         | On your 1 day, these
            """)
    void saysWhatToDoWhereThereWereMore(String why, String values, int often, String verdict, String says) {
        tried(STEADY, CLOCK_OF_7, repeated(values, often)).statusCode(200).body("verdict", equalTo(verdict))
                .body("summary", containsString(says));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', useHeadersInDisplayName = true, textBlock = """
            why              | expectedLitres | variation | says
            all use less     | 600            | 0.4       | On average you used 350\u00a0L a day instead of the 600\u00a0L expected
            days less apart  | 385            | 0.9       | Less salt might do
            """)
    void saysWhatToDoWhereThereWereFewer(String why, double expectedLitres, double variation, String says) {
        tried("\"dailyUse\": {\"value\": " + expectedLitres + ", \"unit\": \"L\"}, \"levelSpread\": 0, \"dayToDayVariation\": "
                + variation, CLOCK_OF_7, repeated("350", 140)).statusCode(200).body("verdict", equalTo("fewerThanPredicted"))
                .body("onTheseDays.hardDays", near(0, 0, "7 days of 350 L are 2,450 L"))
                .body("summary", containsString(says));
    }

    @Test
    void countsLeaksApart() {
        tried(STEADY, CLOCK_OF_7, repeated("300", 30) + ", 4000, " + repeated("300", 30)).statusCode(200)
                .body("exceptionalDays", hasSize(1)).body("exceptionalDays[0].date", equalTo("2026-04-01"))
                .body("exceptionalDays[0].use.value", near(4000, 0, ""))
                .body("onTheseDays.hardDays", near(4, 1e-9, "of 7 starts, that day and the 0 to 6 that follow before the clock acts"))
                .body("hardDaysWithoutThem", near(1, 1e-9, "1,200 L and six days of 300 L are 3,000 L: the last day of a cycle"));
    }

    /** A clock of 14 days is hard on 5 of them, after 2,824 L; what a delayed meter does depends on where its count began. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', useHeadersInDisplayName = true, textBlock = """
            control                                                                                             | hardDays
            "kind": "clock", "weekdays": ["monday", "thursday"]                                                 | 0
            "kind": "clock", "everyDays": 14                                                                    | 25
            "kind": "meteredDelayed", "reserve": {"rule": "meanDay"}                                            | 0
            "kind": "meteredDelayed"                                                                            |
            "kind": "meteredDelayed", "reserve": {"rule": "share", "share": 0}                                  |
            "kind": "meteredDelayed", "reserve": {"rule": "sameWeekdayLargest"}                                 | 0
            "kind": "meteredImmediate"                                                                          | 0
            "kind": "meteredImmediate", "dayOverride": 0                                                        | 0
            "kind": "twinAlternating"                                                                           | 0
            """)
    void triesEveryWayOfStarting(String control, Double hardDays) {
        JsonPath answer = tried(STEADY, control, repeated("300", 70)).statusCode(200).extract().jsonPath();
        assertEquals(answer.getDouble("predicted.regenerations"), answer.getDouble("onTheseDays.regenerations"), 0.6, control);
        if (hardDays != null) {
            assertEquals(hardDays, answer.getDouble("onTheseDays.hardDays"), 1e-9, control);
        }
    }

    @Test
    void takesDaysWithoutUse() {
        tried(STEADY, "\"kind\": \"meteredDelayed\", \"dayOverride\": 14", repeated("0", 28)).statusCode(200)
                .body("onTheseDays.regenerations", near(2, 1e-9, "28 nights over 14")).body("onTheseDays.hardDays", near(0, 0, ""))
                .body("dailyUse.value", near(0, 0, ""));
        tried("\"dailyUse\": {\"value\": 0, \"unit\": \"L\"}", CLOCK_OF_7, repeated("300", 28)).statusCode(200)
                .body("expectedDailyUse.value", near(0, 0, "")).body("predicted.hardDays", near(0, 0, ""));
        tried("\"dailyUse\": {\"value\": 0, \"unit\": \"L\"}", CLOCK_OF_7, repeated("500", 28)).statusCode(200)
                .body("verdict", equalTo("moreThanPredicted")).body("summary",
                        containsString("you used 500\u00a0L a day instead of the 0\u00a0L"
                        + " expected"));
    }

    @Test
    void leavesMissingDaysOut() {
        String days = "\"values\": [" + repeated("300", 56) + "], \"missing\": [\"2026-03-10\", \"2026-03-11\", \"2026-03-20\"]";
        TestServer.post(PATH + "?detail=full", request(STEADY, CLOCK_OF_7, days)).statusCode(200).body("days", equalTo(56))
                .body("missingDays", equalTo(3)).body("onTheseDays.regenerations", near(8, 1e-9, "56 days over 7"))
                .body("assumptions.pointer", not(hasItem("/household/dailySeries/missing")));
    }

    @Test
    void softensOfTheDaysWhatTheHouseholdHasSoftened() {
        tried(STEADY + ", \"leftHard\": [\"toilets\"], \"outdoorUse\": {\"value\": 50, \"unit\": \"L\"}", CLOCK_OF_7,
                repeated("300", 14)).statusCode(200)
                .body("dailyUse.value", near(300 * (1 - 33 / 138.0) + 50, 1e-3, "REU 2016: toilets are 33 of 138 gal; 50 L outdoors"))
                .body("expectedDailyUse.value", near(300 * (1 - 33 / 138.0) + 50, 1e-3, "the same"));
    }

    @Test
    void predictsFromEarlierDays() {
        String earlier = "\"dailySeries\": {\"firstDate\": \"2025-03-03\", \"unit\": \"L\", \"values\": ["
                + repeated("200, 250, 300, 350, 400, 300, 300", 20) + "]}";
        tried(earlier, CLOCK_OF_7, repeated("200, 250, 300, 350, 400, 300, 300", 10)).statusCode(200)
                .body("expectedDailyUse.value", near(300, 0.01, "mean of these")).body("verdict", equalTo("asPredicted"));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(delimiter = '|', useHeadersInDisplayName = true, textBlock = """
            why                    | from                                     | to                                        | pointer
            water without hardness | "value": 300, "unit": "mg/L"             | "value": 0, "unit": "mg/L"                | /water
            no control             | , "control": {"kind": "clock", "everyDays": 7} |                        | /softener/control
            no days                | "values": [300]                          | "values": []                              | /days/values
            a day too large        | "values": [300]                          | "values": [300, 45001]                    | /days/values/1
            a date that is no gap  | "values": [300]                          | "values": [300], "missing": ["2027-01-01"] | /days/missing
            """)
    void refusesInOneClearError(String why, String from, String to, String pointer) {
        String good = request(STEADY, CLOCK_OF_7, "\"values\": [300]");
        assertTrue(good.contains(from), good);
        TestServer.post(PATH, good.replace(from, to == null ? "" : to)).statusCode(422).body("errors", hasSize(1))
                .body("errors[0].pointer", equalTo(pointer));
    }

    /** A dealer's fleet: a request on each line, or a row for each with the days in one cell. */
    @Test
    void answersAFleet() {
        String line = request(STEADY, CLOCK_OF_7, "\"values\": [" + repeated("450", 70) + "]") + "\n";
        List<JsonPath> answers = TestServer.postText("/v1/bulk/backtestSettings", "application/x-ndjson", line + line).statusCode(200)
                .extract().asString().lines().map(JsonPath::from).toList();
        assertEquals(List.of("moreThanPredicted", "moreThanPredicted"), answers.stream().map(one -> one.getString("answer.verdict"))
                .toList());
        String table = TestServer.postText("/v1/bulk/backtestSettings", "text/csv",
                "water.hardness.value,water.hardness.unit,household.dailyUse.value,household.dailyUse.unit,softener.resinVolume.value,"
                        + "softener.resinVolume.unit,softener.control.kind,softener.control.everyDays,days.firstDate,days.unit,"
                        + "days.values\r\n300,mg/L,300,L,18,L,clock,7,2026-03-02,L," + repeated("300", 14).replace(", ", ";") + "\r\n")
                .statusCode(200).extract().asString();
        assertTrue(table.contains(",asPredicted,"), table);
    }

    @Test
    void speaksTheLanguageOfTheCaller() {
        BacktestRequest request = TestServer.read(request(STEADY, CLOCK_OF_7, "\"values\": [" + repeated("450", 70) + "]"),
                BacktestRequest.class);
        String german = BacktestSettings.OPERATION.answer(request).summary().in(Language.of("de"));
        assertTrue(german.startsWith("An Ihren 70 Tagen hätte es mit diesen Einstellungen "), german);
        assertTrue(german.endsWith("Sie haben im Mittel 450\u00a0L am Tag verbraucht statt der erwarteten 300\u00a0L. Wählen Sie die"
                + " Einstellungen für diesen Verbrauch neu."), german);
    }

    @Test
    void judgesTheExamples() {
        TestServer.post(PATH, TestServer.example("backtestSettings.well-family")).statusCode(200)
                .body("verdict", equalTo("asPredicted")).body("missingDays", equalTo(2)).body("exceptionalDays", hasSize(1));
        TestServer.post(PATH, TestServer.example("backtestSettings.apartment")).statusCode(200)
                .body("verdict", equalTo("asPredicted")).body("onTheseDays.hardDays", greaterThan(6.0))
                .body("usualHardDays.to", equalTo(9)).body("cautions.code", hasItem("runsHard"));
    }
}
