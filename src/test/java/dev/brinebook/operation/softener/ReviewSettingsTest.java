// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.softener;

import static dev.brinebook.http.Near.exactly;
import static dev.brinebook.http.Near.near;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.http.TestServer;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReviewSettingsTest {

    private static ValidatableResponse review(String body) {
        return TestServer.post("/v1/settings-review?detail=full", body);
    }

    @Test
    void findsTheCommonMistakesOfAFamilysMeter() {
        review(TestServer.example("reviewSettings.well-family")).statusCode(200)
                .body("findings.code", hasItems("hardnessWithoutIron", "capacityAboveDose", "refillAboveDose",
                        "overrideTooLongForIron", "reserveTooSmall", "backwashAboveSupply", "backwashTooStrong",
                        "regenerationInUseHours"))
                .body("findings.find { it.code == 'hardnessWithoutIron' }.set", equalTo("22\u00a0gpg"))
                .body("findings.find { it.code == 'hardnessWithoutIron' }.shouldBe", equalTo("28\u00a0gpg"))
                .body("findings.find { it.code == 'refillAboveDose' }.shouldBe", equalTo("6.5 minutes"))
                .body("saltDose.value", near(15 * 0.5 * 2.987 / 1.5, 0.01, "15 minutes at 0.5 gpm, 2.99 lb a gallon of water:"
                        + " Salt Institute"))
                .body("summary", containsString("Change 8 settings. Most important: backwash flow, from 7\u00a0gpm to 3.5\u00a0gpm."))
                .body("cautions.code", hasItem("runsHard"));
    }

    @Test
    void knowsTheRuleOfThumbByItsNumbers() {
        review(TestServer.example("reviewSettings.holiday-cabin")).statusCode(200)
                .body("findings.find { it.code == 'nameplateRule' }.set", equalTo("10\u00a0lb/ft³"))
                .body("findings.find { it.code == 'nameplateRule' }.shouldBe", equalTo("6.5\u00a0lb/ft³"))
                .body("findings.find { it.code == 'nameplateRule' }.group", equalTo("salt"))
                .body("findings.setting", not(hasItem("reserve"))).body("questions.setting", equalTo(List.of("reserve")))
                .body("questions[0].low.set", equalTo("0\u00a0gal"));
    }

    /** TRADE-EFFICIENT: above 2 mg/L of iron no dose below 8 lb/ft³ is relied upon, whatever it would do in the long run. */
    @ParameterizedTest(name = "{0} lb/ft³ with {1} mg/L of iron: {2}")
    @CsvSource({"5, 8, doseTooLowForWater", "7.5, 3, doseTooLowForWater", "8, 8,", "5, 1,"})
    void aDoseThatWillNotHoldIsAFindingEvenWhereItServes(double pounds, double iron, String code) {
        review("""
                {"water": {"hardness": {"value": 18, "unit": "gpg"}, "iron": {"value": %s, "unit": "mg/L"}}, "household": {"people": 4},
                 "softener": {"resinVolume": {"value": 1.5, "unit": "ft3"}, "saltDose": {"value": %s, "unit": "lb/ft3"},
                   "control": {"kind": "meteredDelayed", "hardnessSetting": {"value": 50, "unit": "gpg"}}}}""".formatted(iron, pounds))
                .statusCode(200).body("findings.findAll { it.setting == 'saltDose' && it.code == 'doseTooLowForWater' }.code",
                        equalTo(code == null ? List.of() : List.of(code)));
    }

    /** What was not read is asked for and called neither right nor wrong. */
    @Test
    void asksForUnreadSettings() {
        review("""
                {"water": {"hardness": {"value": 22, "unit": "gpg"}, "iron": {"value": 1.2, "unit": "mg/L"}},
                 "household": {"people": 5}, "softener": {"resinVolume": {"value": 1.5, "unit": "ft3"},
                   "control": {"kind": "meteredDelayed", "hardnessSetting": {"value": 22, "unit": "gpg"},
                   "capacitySetting": {"value": 48000, "unit": "gr"}, "reserve": {"rule": "volume",
                   "volume": {"value": 100, "unit": "gal"}}}}}""").statusCode(200)
                .body("findings.setting", equalTo(List.of("hardness")))
                .body("questions.setting", equalTo(List.of("saltDose", "dayOverride")))
                .body("questions[0].low.set", equalTo("6\u00a0lb/ft³")).body("questions[0].high.set", equalTo("15\u00a0lb/ft³"))
                .body("questions[1].low.set", equalTo("3 days")).body("questions[1].high.set", equalTo("14 days"))
                .body("questions[1].high.hardDaysPerYear", greaterThan(50.0));
    }

    /** 37,000 gr are set: more than 10 lb restore in 1.5 ft³, 32,000 gr by common practice, and less than 14 lb do, 43,000. */
    @Test
    void reportsTheEffectOfAnUncertainMeasurement() {
        String measured = """
                {"water": {"hardness": {"value": 20, "unit": "gpg"}}, "household": {"people": 4}, "softener": {
                   "resinVolume": {"value": 1.5, "unit": "ft3"}, "saltPerRegeneration": {"value": 12, "unit": "lb"},
                   "uncertainty": {"saltPerRegeneration": {"value": 2, "unit": "lb"}},
                   "control": {"kind": "meteredDelayed", "hardnessSetting": {"value": 21, "unit": "gpg"}, "dayOverride": 14,
                   "capacitySetting": {"value": 37000, "unit": "gr"}, "reserve": {"rule": "volume",
                   "volume": {"value": 500, "unit": "gal"}}}}}""";
        review(measured).statusCode(200)
                .body("saltUncertainty.low.saltAsFound.value", near(10, 1e-4, "12 less 2"))
                .body("saltUncertainty.low.findings.code", hasItem("capacityAboveDose"))
                .body("saltUncertainty.high.findings.code", not(hasItem("capacityAboveDose")))
                .body("saltUncertainty.low.capacity.value", near(32_000, 0.04 * 32_000, "20,000 gr/ft3 at 6 lb, 24,000 at 8 lb"))
                .body("saltUncertainty.advice", containsString("Measure again before you change settings."))
                .body("resinUncertainty", equalTo(null));
        review(measured.replace("\"value\": 2, \"unit\": \"lb\"", "\"value\": 0.005, \"unit\": \"lb\"")).statusCode(200)
                .body("saltUncertainty.advice", equalTo(null));
    }

    /** What is answered adds up within the digits of an answer. */
    @ParameterizedTest
    @ValueSource(strings = {"well-family", "apartment", "holiday-cabin"})
    void findingsAddUp(String household) {
        JsonPath answer = review(TestServer.example("reviewSettings." + household)).statusCode(200).extract().jsonPath();
        assertEquals(answer.getDouble("asFound.salt.value") - answer.getDouble("setRight.salt.value"),
                sum(answer, "findings*.saltPerYear*.value"), 0.02, "six digits of each");
        assertEquals(answer.getDouble("asFound.hardDays") - answer.getDouble("setRight.hardDays"),
                sum(answer, "findings*.hardDaysPerYear"), 0.005, "thousandths of each");
    }

    private static double sum(JsonPath answer, String numbers) {
        return answer.<List<Object>>get(numbers).stream().mapToDouble(number -> Double.parseDouble(number.toString())).sum();
    }

    @Test
    void repeatsWhatTheCallerGaveInTheCallersUnits() {
        review(TestServer.example("reviewSettings.well-family")).statusCode(200)
                .body("assumptions.find { it.pointer == '/softener/saltDose' }.value", exactly(10))
                .body("assumptions.find { it.pointer == '/softener/saltDose' }.unit", equalTo("lb/ft3"));
    }

    @Test
    void speaksMetric() {
        review(TestServer.example("reviewSettings.apartment").replaceFirst("\"people\": 2", "\"people\": 2, \"levelSpread\": 0"))
                .statusCode(200)
                .body("findings.find { it.code == 'moreSaltThanNeeded' }.set", equalTo("1.9\u00a0kg"))
                .body("asFound.salt.unit", equalTo("kg"));
    }

    @Test
    void findsNothingWhereTheRecommendedSettingsAreSet() {
        review("""
                {"water": {"hardness": {"value": 20, "unit": "gpg"}, "iron": {"value": 0, "unit": "mg/L"}},
                 "household": {"people": 3}, "softener": {"resinVolume": {"value": 1, "unit": "ft3"},
                   "saltDose": {"value": 8, "unit": "lb/ft3"}, "control": {"kind": "meteredDelayed",
                   "hardnessSetting": {"value": 20, "unit": "gpg"}, "capacitySetting": {"value": 24000, "unit": "gr"},
                   "dayOverride": 14}}}""").statusCode(200).body("findings", hasSize(0))
                .body("summary", equalTo("No known setting is worth changing. One more setting matters but is not known: reserve."));
    }

    @Test
    void asksForTheControl() {
        review("""
                {"water": {"hardness": {"value": 20, "unit": "gpg"}}, "household": {"people": 3},
                 "softener": {"resinVolume": {"value": 1, "unit": "ft3"}}}""").statusCode(422)
                .body("errors[0].pointer", equalTo("/softener/control")).body("errors[0].code", equalTo("missing"));
    }
}
