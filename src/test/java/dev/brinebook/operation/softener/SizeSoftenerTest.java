// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.softener;

import static dev.brinebook.http.Near.near;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.TestServer;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SizeSoftenerTest {

    private static ValidatableResponse size(String body) {
        return TestServer.post("/v1/softener-sizing?detail=full", body);
    }

    @Test
    void ranksTheStandardSizesOfTheTrade() {
        size("""
                {"water": {"hardness": {"value": 20, "unit": "gpg"}}, "household": {"people": 5,
                  "usePerPerson": {"value": 75, "unit": "gal"}}, "saltDose": {"value": 15, "unit": "lb/ft3"}}""")
                .statusCode(200).body("candidates", hasSize(11))
                .body("dailyLoad.value", near(7_500, 1, "WQP magazine, Sizing Softeners, 2009: 5 x 75 gal x 20 gpg"))
                .body("candidates.find { it.sku == '9 x 48 in' }.capacity.value", near(30_000, 0.1, "nameplate: common practice"))
                .body("candidates.find { it.sku == '9 x 48 in' }.fullChargeDays", near(4, 0.01, "30,000 / 7,500"))
                .body("candidates[0].rank", equalTo(1)).body("cautions.code", hasItem("ironNotTested"));
    }

    @Test
    void choosesAmongTheShopsOwnAndSaysWhy() {
        size(TestServer.example("sizeSoftener.well-family")).statusCode(200).body("candidates", hasSize(3))
                .body("summary", containsString("invented-"))
                .body("why", matchesPattern(".*softener \u201cinvented-150\u201d costs [1-9][0-9]+\u00a0USD a year\\."
                        + " Softener \u201cinvented-200\u201d costs [1-9][0-9]+\u00a0USD\\."))
                .body("candidates.find { it.sku == 'invented-100' }.fits", equalTo(true))
                .body("candidates.find { it.sku == 'invented-100' }.notChecked", hasItem("continuousFlowTooHigh"));
    }

    @Test
    void hasNoChoiceWhereNoneFits() {
        size("""
                {"water": {"hardness": {"value": 40, "unit": "gpg"}}, "household": {"people": 9},
                 "candidates": [{"sku": "small", "resinVolume": {"value": 12, "unit": "L"}}]}""")
                .statusCode(200).body("choice", nullValue())
                .body("why", startsWith("None of the softeners fits. The closest is softener \u201csmall\u201d. "))
                .body("candidates[0].shortcomings", hasItem("serviceStandardNotMet"));
    }

    /** 3 people are taken to use 19.2 L/min at peaks; 12 L of resin take 16 L/min, 10 gpm/ft3: common practice. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            25 |                                                            |                | continuousFlowTooHigh peakFlowTooHigh bedTooShallow noRoomForBackwash
            25 | "tankHeight": {"value": 48, "unit": "in"}                  |                | continuousFlowTooHigh peakFlowTooHigh bedTooShallow noRoomForBackwash
            25 | "tankDiameter": {"value": 9, "unit": "in"}                 | bedTooShallow  | noRoomForBackwash
            25 | "tankDiameter": {"value": 8, "unit": "in"}                 |                | noRoomForBackwash
            25 | "tankDiameter": {"value": 9, "unit": "in"}, "tankHeight": {"value": 30, "unit": "in"} | bedTooShallow noRoomForBackwash |
            25 | "tankDiameter": {"value": 8, "unit": "in"}, "tankHeight": {"value": 48, "unit": "in"} | |
            25 | "peakFlowRating": {"value": 20, "unit": "L/min"}           |                | continuousFlowTooHigh bedTooShallow noRoomForBackwash
            25 | "peakFlowRating": {"value": 10, "unit": "L/min"}           | peakFlowTooHigh | continuousFlowTooHigh bedTooShallow noRoomForBackwash
            12 |                                                            | peakFlowTooHigh | continuousFlowTooHigh bedTooShallow noRoomForBackwash
            """)
    void refusesNothingForATankThatIsAssumed(int litres, String more, String shortcomings, String notChecked) {
        size("""
                {"water": {"hardness": {"value": 17, "unit": "dH"}}, "household": {"people": 3, "country": "germany"}, "candidates": [
                 {"sku": "a", "resinVolume": {"value": %d, "unit": "L"}%s}]}""".formatted(litres, more == null ? "" : ", " + more))
                .statusCode(200).body("candidates[0].shortcomings", equalTo(codes(shortcomings)))
                .body("candidates[0].notChecked", notChecked == null ? nullValue() : equalTo(codes(notChecked)))
                .body("candidates[0].fits", equalTo(shortcomings == null))
                .body("cautions.code.contains('tankSizeNotGiven')", equalTo(notChecked != null));
    }

    private static List<String> codes(String separated) {
        return separated == null ? List.of() : List.of(separated.split(" "));
    }

    /** Two softeners that are the same but for their names, with and without prices; and two of one name. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            , "price": {"value": 840, "unit": "EUR"} | b | 200 |
                                                     | b | 200 |
                                                     | a | 422 | /candidates/1/sku
            """)
    void saysThatEqualSoftenersCostTheSame(String price, String second, int status, String pointer) {
        String each = "{\"sku\": \"%s\", \"resinVolume\": {\"value\": 25, \"unit\": \"L\"}" + (price == null ? "" : price) + "}";
        ValidatableResponse answer = size("""
                {"water": {"hardness": {"value": 17, "unit": "dH"}}, "household": {"people": 3, "country": "germany"},
                 "candidates": [%s, %s]}""".formatted(each.formatted("a"), each.formatted(second))).statusCode(status);
        if (status == 200) {
            answer.body("why", containsString("also fits and costs the same")).body("why", not(containsString("less")))
                    .body("assumptions.pointer", hasItems("/candidates/0/tankDiameter", "/candidates/1/tankHeight"))
                    .body("verdict.confidence", not(equalTo("high")))
                    .body("cautions.find { it.code == 'tankSizeNotGiven' }.severity", equalTo("warning"));
        } else {
            answer.body("errors.pointer", equalTo(List.of(pointer))).body("errors.code", equalTo(List.of("inconsistent")));
        }
    }

    @Test
    void takesEveryCandidateOfALongList() {
        IntFunction<String> candidates = count -> IntStream.range(0, count).mapToObj(i ->
                "{\"sku\": \"c%d\", \"resinVolume\": {\"value\": 40, \"unit\": \"L\"}}".formatted(i)).collect(Collectors.joining(","));
        size("""
                {"water": {"hardness": {"value": 18, "unit": "dH"}}, "household": {"people": 4}, "units": "metric",
                 "candidates": [%s]}""".formatted(candidates.apply(250))).statusCode(200)
                .body("candidates", hasSize(250));
        size("""
                {"water": {"hardness": {"value": 18, "unit": "dH"}}, "household": {"people": 4},
                 "candidates": [%s]}""".formatted(candidates.apply(251))).statusCode(422)
                .body("errors[0].code", equalTo("wrongCount"));
    }

    @Test
    void reportsTheFaultsOfACandidate() {
        size("""
                {"water": {"hardness": {"value": 18, "unit": "dH"}}, "household": {"people": 4},
                 "candidates": [{"sku": "a"}, {"sku": "b", "resinVolume": {"value": 100, "unit": "L"},
                   "tankDiameter": {"value": 0.2, "unit": "m"}}, {"sku": "c", "resinVolume": {"value": 30, "unit": "L"},
                   "price": {"value": 9, "unit": "EUR"}}]}""").statusCode(422)
                .body("errors.pointer", contains("/candidates/0/resinVolume", "/candidates/1/tankDiameter"));
    }

    @Test
    void morePeopleNeverGetLongerIntervals() {
        double before = Double.POSITIVE_INFINITY;
        for (int people = 1; people <= 12; people++) {
            JsonPath answer = size("""
                    {"water": {"hardness": {"value": 20, "unit": "gpg"}}, "household": {"people": %d,
                      "dayToDayVariation": 0}, "saltDose": {"value": 8, "unit": "lb/ft3"},
                     "candidates": [{"sku": "x", "resinVolume": {"value": 2, "unit": "ft3"}}]}""".formatted(people))
                    .statusCode(200).extract().jsonPath();
            double days = answer.getDouble("candidates[0].fullChargeDays");
            assertTrue(days <= before, people + " people");
            before = days;
        }
    }
}
