// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.water;

import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;

import dev.brinebook.http.TestServer;
import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Input that can hardly be true is questioned before anything rests on it; what nothing can be true of is refused. */
class QuestionedInputTest {

    private static ValidatableResponse compensate(String water) {
        return TestServer.post("/v1/compensated-hardness", "{\"water\": {" + water + "}}");
    }

    private static String hardness(double value, String unit) {
        return "\"hardness\": {\"value\": " + value + ", \"unit\": \"" + unit + "\"}";
    }

    private static ValidatableResponse blend(String water, String household, String litres) {
        return TestServer.post("/v1/hardness-blending", "{\"water\": {" + water + "}, \"residualHardness\": {\"value\": 5,"
                + " \"unit\": \"mg/L\"}, \"household\": {" + household + "}, \"softener\": {\"resinVolume\": {\"value\": " + litres
                + ", \"unit\": \"L\"}, \"tankDiameter\": {\"value\": 0.6, \"unit\": \"m\"}}}").statusCode(200);
    }

    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource({"310, gpg, true", "60.1, gpg, true", "60, gpg, false", "60, dH, true", "1300, mg/L, false"})
    void asksWhetherAHardnessWasTestedInMgPerL(double value, String unit, boolean asked) {
        String limit = unit.equals("gpg") ? "60\u00a0gpg" : "1,027\u00a0mg/L";
        TestServer.post("/v1/hardness-conversion", "{" + hardness(value, unit) + "}").statusCode(200).body("summary",
                asked ? startsWith("Check first: The hardness is above " + limit) : not(containsString("Check first")), "cautions.code",
                asked ? hasItem("hardnessMaybeMgPerL") : not(hasItem("hardnessMaybeMgPerL")));
        ValidatableResponse answer = compensate(hardness(value, unit)).statusCode(200);
        answer.body("cautions.code", asked ? hasItem("hardnessMaybeMgPerL") : not(hasItem("hardnessMaybeMgPerL")));
        if (asked) {
            answer.body("summary", startsWith("Check first: The hardness is above 60\u00a0gpg"))
                    .body("cautions.find { it.code == 'hardnessMaybeMgPerL' }.inFront", equalTo(true))
                    .body("cautions.find { it.code == 'hardnessMaybeMgPerL' }.reader", equalTo("installer"));
        }
    }

    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvSource({"18.5, mg/L, true", "59, mg/L, true", "60, mg/L, false", "3.4, gpg, false"})
    void asksWhetherWaterToSoftenWasTestedInGrains(double value, String unit, boolean asked) {
        blend(hardness(value, unit), "\"people\": 4", "42").body("cautions.code",
                asked ? hasItem("hardnessMaybeGrains") : not(hasItem("hardnessMaybeGrains")));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @CsvSource(delimiter = '|', value = {
        "\"people\": 4, \"dailyUse\": {\"value\": 100, \"unit\": \"L\"}  | true",
        "\"people\": 4, \"dailyUse\": {\"value\": 160, \"unit\": \"L\"}  | false",
        "\"people\": 1, \"dailyUse\": {\"value\": 300, \"unit\": \"gal\"} | true",
        "\"people\": 4, \"usePerPerson\": {\"value\": 700, \"unit\": \"L\"} | true",
        "\"dailyUse\": {\"value\": 100, \"unit\": \"L\"}                 | false"})
    void asksAboutAUseThatHardlyAnybodyHas(String household, boolean asked) {
        blend(hardness(300, "mg/L"), household, "42").body("cautions.code",
                asked ? hasItem("usePerPersonImplausible") : not(hasItem("usePerPersonImplausible")));
    }

    @ParameterizedTest(name = "{0} L: {1}")
    @CsvSource({"2, true", "3, false", "280, false", "300, true"})
    void asksAboutResinThatNoHouseHas(String litres, boolean asked) {
        blend(hardness(300, "mg/L"), "\"people\": 4", litres).body("cautions.code",
                asked ? hasItem("resinVolumeUnusual") : not(hasItem("resinVolumeUnusual")));
    }

    /** 0.4027 times 300 is 120.8, stated as 121: magnesium oxide, the lightest that hardness leaves behind. CIAAW, by hand. */
    @Test
    void refusesSolidsThatWeighLessThanTheirParts() {
        String solids = ", \"dissolvedSolids\": {\"value\": %s, \"unit\": \"mg/L\"}";
        compensate(hardness(300, "mg/L") + solids.formatted("120")).statusCode(422)
                .body("errors.pointer", contains("/water/dissolvedSolids")).body("errors[0].code", equalTo("inconsistent"))
                .body("errors[0].message", containsString("at least 121"));
        compensate(hardness(300, "mg/L") + solids.formatted("121")).statusCode(200)
                .body("cautions.code", hasItem("hardnessAboveSolids"));
        compensate(hardness(300, "mg/L") + solids.formatted("500") + ", \"sodium\": {\"value\": 400, \"unit\": \"mg/L\"}")
                .statusCode(422).body("errors.pointer", contains("/water/dissolvedSolids"));
    }
}
