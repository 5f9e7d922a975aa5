package dev.brinebook.softener.api;

import static dev.brinebook.http.Near.near;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;

import dev.brinebook.http.TestServer;
import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Test;

class ReviewSettingsTest {

    private static ValidatableResponse review(String body) {
        return TestServer.post("/v1/settings-review", body);
    }

    @Test
    void findsTheCommonMistakesOfAFamilysMeter() {
        review(TestServer.example("reviewSettings.well-family")).statusCode(200)
                .body("findings.code", hasItems("hardnessWithoutIron", "capacityAboveDose", "refillAboveDose",
                        "overrideTooLongForIron", "reserveTooSmall", "backwashAboveSupply", "backwashTooStrong",
                        "regenerationInUseHours"))
                .body("findings.find { it.code == 'hardnessWithoutIron' }.set", equalTo("22 gpg"))
                .body("findings.find { it.code == 'hardnessWithoutIron' }.shouldBe", equalTo("28 gpg"))
                .body("findings.find { it.code == 'refillAboveDose' }.shouldBe", equalTo("10 minutes"))
                .body("saltDose.value", near(15 * 0.5 * 2.987 / 1.5, 0.01, "15 minutes at 0.5 gpm, 2.99 lb a gallon of water:"
                        + " Salt Institute"))
                .body("summary", containsString("8 settings should be changed")).body("cautions.code", hasItem("runsHard"));
    }

    @Test
    void knowsTheRuleOfThumbByItsNumbers() {
        review(TestServer.example("reviewSettings.holiday-cabin")).statusCode(200)
                .body("findings.find { it.code == 'nameplateRule' }.set", equalTo("10 lb/ft3"))
                .body("findings.find { it.code == 'nameplateRule' }.shouldBe", equalTo("8 lb/ft3"));
    }

    @Test
    void repeatsWhatTheCallerGaveInTheCallersUnits() {
        review(TestServer.example("reviewSettings.well-family")).statusCode(200)
                .body("assumptions.find { it.name == 'softener.saltDose' }.value", equalTo("10 lb/ft3"));
    }

    @Test
    void speaksMetric() {
        review(TestServer.example("reviewSettings.apartment").replaceFirst("\"people\": 2", "\"people\": 2, \"levelSpread\": 0"))
                .statusCode(200)
                .body("findings.find { it.code == 'moreSaltThanNeeded' }.set", equalTo("1.92 kg"))
                .body("findings.code", not(hasItem("clockIntervalShorterThanNeeded")))
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
                .body("summary", containsString("suit"));
    }

    @Test
    void asksForTheControl() {
        review("""
                {"water": {"hardness": {"value": 20, "unit": "gpg"}}, "household": {"people": 3},
                 "softener": {"resinVolume": {"value": 1, "unit": "ft3"}}}""").statusCode(422)
                .body("errors[0].pointer", equalTo("/softener/control")).body("errors[0].code", equalTo("missing"));
    }
}
