// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.softener;

import static dev.brinebook.http.Near.near;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;

import dev.brinebook.http.TestServer;
import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Test;

class BlendHardnessTest {

    private static ValidatableResponse blend(String body) {
        return TestServer.post("/v1/hardness-blending?detail=full", body);
    }

    @Test
    void answersATextbookInMetricUnits() {
        blend("""
                {"water": {"hardness": {"value": 245, "unit": "mg/L"}, "sodium": {"value": 12, "unit": "mg/L"}},
                 "residualHardness": {"value": 100, "unit": "mg/L"}, "household": {"dailyUse": {"value": 1200, "unit": "L"}},
                 "units": "metric"}""").statusCode(200)
                .body("bypassPercent", near(40.8, 0.05, "textbook problem, answer computed: 100/245"))
                .body("waterThroughBypass.value", near(489.8, 0.05, "the same"))
                .body("waterThroughResin.value", near(710.2, 0.05, "1200 - 489.8"))
                .body("withBypass.dailyLoad.value", near(174, 0.5, "the same, 0.174\u00a0kg a day"))
                .body("withoutBypass.dailyLoad.value", near(294, 0.01, "1.2 * 245"))
                .body("withBypass.water.addedSodium.value", near(66.61, 0.05, "0.4594 * 145"))
                .body("withBypass.water.totalSodium.value", near(78.61, 0.05, "and 12 of the raw water"))
                .body("withoutBypass.water.addedSodium.value", near(112.55, 0.05, "0.4594 * 245"))
                .body("residualClasses.usgs", equalTo("moderatelyHard"))
                .body("withBypass.daysBetweenRegenerations", nullValue()).body("ironLeft", nullValue())
                .body("summary", startsWith("A 41\u00a0% bypass gives 100\u00a0mg/L. On an average day, 490\u00a0L bypasses"))
                .body("cautions.code", hasItems("blendPartlyHard", "sodiumRestrictedDiet", "ironNotTested"))
                .body("cautions.code", not(hasItem("blendStains")))
                .body("assumptions.pointer", hasItems("/leakageHardness", "/softener/salt"))
                .body("assumptions.name", hasItem("ironAndManganese"));
    }

    /** 20 gpg to 5 gpg: a quarter passes by; 30,000 gr at 15 lb (nameplate, common practice) over 300 gal. */
    @Test
    void reportsHowLongTheCapacityLastsInUsUnits() {
        String request = """
                {"water": {"hardness": {"value": 20, "unit": "gpg"}, "iron": {"value": 2, "unit": "mg/L"},
                  "compensation": {"set": "own", "ironFactor": 0, "manganeseFactor": 0}%s},
                 "residualHardness": {"value": 5, "unit": "gpg"}, "household": {"dailyUse": {"value": %s, "unit": "gal"}},
                 "softener": {"resinVolume": {"value": 1, "unit": "ft3"}, "saltDose": {"value": 15, "unit": "lb/ft3"}}}""";
        blend(request.formatted("", "300")).statusCode(200)
                .body("bypassPercent", equalTo(25))
                .body("withoutBypass.daysBetweenRegenerations.value", near(4.948, 0.01, "30,000 / (300 * (20 + 2 * 0.1047))"))
                .body("withBypass.daysBetweenRegenerations.value", near(6.598, 0.01, "30,000 / (225 * (20 + 2 * 0.1047))"))
                .body("withoutBypass.saltPerYear.value", near(1106, 2, "365 / 4.948 * 15\u00a0lb"))
                .body("withBypass.saltPerYear.value", near(830, 2, "three quarters of it"))
                .body("ironLeft.value", equalTo(0.5))
                .body("cautions.code", hasItem("blendStains")).body("summary", containsString("6.5 days of mean use instead of 5."))
                .body("basis.findAll { it.pointer == '/withBypass/saltPerYear' }.formula[0]", containsString("from mean days"));
        blend(request.formatted(", \"ironForm\": \"visible\"", "0")).statusCode(200)
                .body("ironLeft.value", equalTo(2))
                .body("withBypass.daysBetweenRegenerations.reason", equalTo("neverRegenerates"))
                .body("withBypass.saltPerYear.value", equalTo(0));
    }

    @Test
    void addsPotassiumWhereThatIsTheSalt() {
        blend("""
                {"water": {"hardness": {"value": 300, "unit": "mg/L"}}, "residualHardness": {"value": 100, "unit": "mg/L"},
                 "household": {"people": 2}, "softener": {"resinVolume": {"value": 20, "unit": "L"},
                 "salt": "potassiumChloride"}}""").statusCode(200)
                .body("withBypass.water.addedSodium.value", equalTo(0))
                .body("withBypass.water.addedPotassium.value", near(156.3, 0.1, "0.7813 * 200"))
                .body("summary", containsString("156\u00a0mg/L of added potassium")).body("cautions.code", hasItem("potassiumKidneyHeart"));
    }

    @Test
    void reportsTheResidualsThatABypassCanLeave() {
        String request = """
                {"water": {"hardness": {"value": 20, "unit": "gpg"}}, "household": {"people": 2},
                 "residualHardness": {"value": %s, "unit": "gpg"}, "leakageHardness": {"value": %s, "unit": "gpg"}}""";
        blend(request.formatted("20", "1")).statusCode(422).body("errors.pointer", contains("/residualHardness"))
                .body("errors[0].allowed[0]", equalTo("at least 1 and below 20\u00a0gpg"));
        blend(request.formatted("0.5", "1")).statusCode(422).body("errors.pointer", contains("/residualHardness"));
        blend(request.formatted("1", "1")).statusCode(200).body("bypassPercent", equalTo(0));
        blend(request.formatted("5", "20")).statusCode(422).body("errors.pointer", contains("/leakageHardness"));
        blend("""
                {"water": {"hardness": {"value": 0, "unit": "gpg"}}, "household": {"people": 2},
                 "residualHardness": {"value": 1, "unit": "gpg"}}""").statusCode(422).body("errors.pointer", contains("/water"))
                .body("errors[0].code", equalTo("impossible"));
        blend("{}").statusCode(422).body("errors.pointer", contains("/household", "/residualHardness", "/water"));
        blend("{\"water\": null, \"household\": 3, \"leakageHardness\": {\"value\": 1}}").statusCode(422);
    }
}
