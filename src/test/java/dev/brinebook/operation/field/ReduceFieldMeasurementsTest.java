// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.field;

import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.lessThan;
import static org.hamcrest.Matchers.nullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import dev.brinebook.http.TestServer;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReduceFieldMeasurementsTest {

    private static final String REFILL = """
            "refill": {"volume": {"value": 1, "unit": "gal"}, "seconds": [120]}, "refillMinutes": 6,
            "brine": {"degrees": 100}""";
    private static final String TANK = """
            "resinTank": {"innerDiameter": {"value": 9.6, "unit": "in"}, "height": {"value": 54, "unit": "in"},
                "freeboard": {"value": 23, "unit": "in"}, "depthPlusMinus": {"value": 0.25, "unit": "in"}}""";
    private static final String BOOKS = "\"books\": {\"salt\": {\"value\": 240, \"unit\": \"lb\"}, \"regenerations\": 26}";
    private static final String HARDNESS = """
            "hardness": {"raw": {"value": 20, "unit": "gpg"}, "outlet": {"value": 0.5, "unit": "gpg"},
                "tap": {"value": 5, "unit": "gpg"}}""";

    /** 3.00 gal of refill times 2.990 lb/gal; 240 lb over 26; 19.5 gpg of 960 gal; u of it
     * √((19.5·27.7)² + 2·(960·0.2887)² + (19.5·7.2)²) = 682; 4.5 of 19.5 gpg; each by hand. */
    @Test
    void reducesReadings() {
        post(REFILL + ", " + TANK + ", " + BOOKS + ", " + HARDNESS + """
                , "run": {"volume": {"value": 972.5, "unit": "gal"}, "testStep": {"value": 25, "unit": "gal"}}""")
                .statusCode(200)
                .body("salt.byRefill.value", closeTo(8.97, 0.005)).body("salt.byRefill.unit", equalTo("lb"))
                .body("salt.byBooks.value", closeTo(9.23, 0.005)).body("salt.byBooks.expandedUncertainty", closeTo(1.29, 0.01))
                .body("salt.combined.agree", equalTo(true))
                .body("resin.byGeometry.value", closeTo(1.265, 5e-4)).body("resin.byGeometry.unit", equalTo("ft3"))
                .body("resin.capacity.value", equalTo(18_720)).body("resin.capacity.standardUncertainty", closeTo(682.3, 0.5))
                .body("resin.capacity.largestContribution", equalTo("meterError"))
                .body("bed.rawWater.value", closeTo(23.1, 0.05)).body("bed.rawWater.standardUncertainty", closeTo(1.9, 0.05))
                .body("findings.code", hasItems("rawWaterPasses", "capacityLost"))
                .body("softener.resinVolume.unit", equalTo("ft3")).body("softener.resinTest.percentOfNew", lessThan(75.0))
                .body("site.resinGood", equalTo(false))
                .body("summary", containsString("takes 9.01\u00a0lb of salt"));
    }

    /** What it gives goes into the next call as it is; the control that was given stays. */
    @Test
    void fillsTheSoftenerForTheNextCall() {
        String answer = post(REFILL + ", " + TANK + """
                , "drain": {"volume": {"value": 5, "unit": "gal"}, "seconds": [120]},
                "softener": {"nameplateCapacity": {"value": 40000, "unit": "gr"}, "control": {"kind": "clock", "everyDays": 4},
                    "saltDose": {"value": 7, "unit": "lb/ft3"}}""").statusCode(200)
                .body("softener.saltPerRegeneration.value", closeTo(8.97, 0.005)).body("softener.saltDose", nullValue())
                .body("softener.flows.drain.value", closeTo(2.5, 1e-3)).body("softener.control.everyDays", equalTo(4))
                .extract().asString();
        String softener = answer.substring(answer.indexOf("\"softener\":"), answer.indexOf(",\"cautions\""));
        TestServer.post("/v1/settings-review", "{\"water\": {\"hardness\": {\"value\": 20, \"unit\": \"gpg\"}}, "
                + "\"household\": {\"people\": 4}, " + softener + "}").statusCode(200);
    }

    /** Half of the 95 % interval, within what draws of another seed differ; what was given of another measurement is not kept. */
    @Test
    void passesTheUncertaintyOn() {
        JsonPath answer = post(TANK + ", " + BOOKS + """
                , "softener": {"control": {"kind": "clock", "everyDays": 4}, "resinVolume": {"value": 1.25, "unit": "ft3"},
                    "uncertainty": {"resinVolume": {"value": 0.4, "unit": "ft3"}}}""").statusCode(200).extract().jsonPath();
        double resin = half(answer, "resin.byGeometry");
        double salt = half(answer, "salt.byBooks");
        assertEquals(resin, answer.getDouble("softener.uncertainty.resinVolume.value"), 0.1 * resin);
        assertEquals(salt, answer.getDouble("softener.uncertainty.saltPerRegeneration.value"), 0.1 * salt);
    }

    /** Half a bag at both ends of two regenerations is more than the salt itself: the value goes on, and what it lacks is said. */
    @Test
    void saysWhatIsTooUncertainToSendOn() {
        post("""
                "books": {"salt": {"value": 10, "unit": "lb"}, "regenerations": 2},
                "softener": {"nameplateCapacity": {"value": 32000, "unit": "gr"}}""").statusCode(200)
                .body("softener.saltPerRegeneration.value", equalTo(5)).body("softener.uncertainty.saltPerRegeneration", nullValue())
                .body("findings.code", hasItem("tooUncertain")).body("salt.byBooks.low", equalTo(0));
    }

    /** 30 gpm for four hours are 20,800 lb of salt, which no regeneration takes; the salt that was given stays. */
    @Test
    void saysWhatNoSoftenerHas() {
        post("""
                "refill": {"volume": {"value": 5, "unit": "gal"}, "seconds": [10]}, "refillMinutes": 240,
                "softener": {"nameplateCapacity": {"value": 32000, "unit": "gr"}, "saltPerRegeneration": {"value": 9, "unit": "lb"}}""")
                .statusCode(200).body("softener.saltPerRegeneration.value", equalTo(9))
                .body("findings.code", hasItem("notOfASoftener")).body("softener.uncertainty.saltPerRegeneration", nullValue());
    }

    /** 26.395 % is saturated: 104 degrees are of another scale. */
    @Test
    void doubtsBrineAboveSaturation() {
        post("\"brine\": {\"degrees\": 104}").statusCode(200).body("findings.code", contains("brineAboveSaturation"));
        post("\"brine\": {\"degrees\": 101}").statusCode(200).body("findings", empty());
    }

    @Test
    void statesWhatWasMeasured() {
        post("\"refill\": {\"volume\": {\"value\": 1, \"unit\": \"gal\"}, \"seconds\": [120]}").statusCode(200)
                .body("summary", containsString("The flow of the brine refill is 0.5\u00a0gpm"));
        post(HARDNESS).statusCode(200).body("summary", containsString("Raw water makes up 23\u00a0% of the water at the tap."));
    }

    private static double half(JsonPath answer, String quantity) {
        return (answer.getDouble(quantity + ".high") - answer.getDouble(quantity + ".low")) / 2;
    }

    /** By hand: 31 in of resin less 4.8 in of gravel, 1,896.4 in³; 23 over 26.2 in; 7 in of level, 114.2 in³ each, by 2.648 lb/gal. */
    @Test
    void leavesOutGravelAndCountsTheBrineWell() {
        post(TANK.replace("\"depthPlusMinus\"", "\"gravelDepth\": {\"value\": 4.8, \"unit\": \"in\"}, \"depthPlusMinus\"") + """
                , "brine": {"degrees": 100}, "brineTank": {"width": {"value": 18, "unit": "in"},
                    "wellWidth": {"value": 4, "unit": "in"}, "levelBefore": {"value": 12, "unit": "in"},
                    "levelAfter": {"value": 5, "unit": "in"}, "voidShare": 0.42}""").statusCode(200)
                .body("resin.byGeometry.value", closeTo(1896.4 / 1728, 2e-4)).body("resin.freeboard.value", closeTo(2300 / 26.2, 0.01))
                .body("salt.byDraw.value", closeTo(7 * 114.17 / 231 * 2.648, 0.01));
    }

    @Test
    void takesOneReadingAlone() {
        post("\"drain\": {\"volume\": {\"value\": 10, \"unit\": \"L\"}, \"seconds\": [60]}, \"units\": \"metric\"").statusCode(200)
                .body("flows.drain.value", equalTo(10)).body("flows.refill", nullValue()).body("findings", empty())
                .body("softener", nullValue()).body("nextMeasurements.code", hasItem("hardnessTests"))
                .body("summary", containsString("The readings do not contradict each other."));
    }

    /** Half of the refill is drawn: two ways that contradict each other have no mean, and a third is what to measure. */
    @Test
    void averagesNothingThatContradicts() {
        post(REFILL + """
                , "brineTank": {"width": {"value": 18, "unit": "in"}, "levelBefore": {"value": 12, "unit": "in"},
                    "levelAfter": {"value": 9, "unit": "in"}}""").statusCode(200)
                .body("salt.combined.agree", equalTo(false)).body("salt.combined.mean", nullValue())
                .body("findings.code", contains("waterLeftOver")).body("summary", containsString("2 ways"))
                .body("nextMeasurements.find { it.settles == 'salt' }.code", equalTo("saltBooks"));
    }

    @Test
    void isTheSameForTheSameSeed() {
        String one = post(REFILL + ", \"seed\": 5").extract().asString();
        assertEquals(one, post(REFILL + ", \"seed\": 5").extract().asString());
        assertNotEquals(one, post(REFILL + ", \"seed\": 6").extract().asString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            // request | place | what it says
            "'drain': {'volume': {'value': 5, 'unit': 'gal'}, 'seconds': [2]} | /drain/seconds/0 | 3",
            "'drain': {'volume': {'value': 5, 'unit': 'gal'}, 'seconds': [60, 90]} | /drain/seconds | quarter",
            "'drain': {'volume': {'value': 5, 'unit': 'gal'}, 'seconds': [60], 'volumePlusMinus': {'value': 2, 'unit': 'gal'}}"
                    + " | /drain/volumePlusMinus | 25",
            "'brine': {'degrees': 130} | /brine/degrees | 105",
            "'brine': {'degrees': 90}, 'softener': {'resinVolume': {'value': 1, 'unit': 'ft3'}, 'salt': 'potassiumChloride'}"
                    + " | /brine | potassium",
            "'resinTank': {'innerDiameter': {'value': 10, 'unit': 'in'}, 'height': {'value': 40, 'unit': 'in'},"
                    + " 'freeboard': {'value': 39, 'unit': 'in'}} | /resinTank/freeboard | at least",
            "'resinTank': {'innerDiameter': {'value': 10, 'unit': 'in'}, 'height': {'value': 40, 'unit': 'in'}, 'freeboard': {'value': 20,"
                    + " 'unit': 'in'}, 'gravelDepth': {'value': 15, 'unit': 'in'}} | /resinTank/gravelDepth | above the gravel",
            "'brineTank': {'width': {'value': 18, 'unit': 'in'}, 'levelBefore': {'value': 12, 'unit': 'in'}, 'levelAfter': {'value': 9,"
                    + " 'unit': 'in'}, 'wellWidth': {'value': 10, 'unit': 'in'}} | /brineTank/wellWidth | half",
            "'books': {'salt': {'value': 100, 'unit': 'lb'}, 'regenerations': 1} | /books/regenerations | 2",
            "'drain': {'volume': {'value': 5, 'unit': 'gal'}, 'seconds': [60]}, 'run': {'volume': {'value': 900, 'unit': 'gal'},"
                    + " 'testStep': {'value': 25, 'unit': 'gal'}} | /hardness | run",
            "'units': 'us' | /drain | Give one of these"})
    void refusesWhatCannotBe(String request, String pointer, String message) {
        post(request.replace('\'', '"')).statusCode(422).body("errors.find { it.pointer == '" + pointer + "' }.message",
                containsString(message));
    }

    private static ValidatableResponse post(String parts) {
        return TestServer.post("/v1/field-measurements", "{" + parts + "}");
    }
}
