// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import static dev.brinebook.http.Near.near;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.http.TestServer;
import io.restassured.path.json.JsonPath;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Settings as a controller takes them, in each country's units. */
class ControllerUnitsTest {

    private static final String CLOCK = "{\"kind\": \"clock\", \"everyDays\": 5}";

    private static String home(String hardness, String country, String control, String preferences, String units) {
        return """
                {"water": {"hardness": %s}, "household": {"people": 3%s}, "units": "%s",
                 "preferences": {%s}, "softener": {"resinVolume": {"value": 25, "unit": "L"},
                 "saltDose": {"value": 150, "unit": "g/L"}, "control": %s}}""".formatted(quantity(hardness),
                country == null ? "" : ", \"country\": \"" + country + "\"", units, preferences, control);
    }

    private static String quantity(String text) {
        String[] parts = text.split(" ");
        return "{\"value\": %s, \"unit\": \"%s\"}".formatted(parts[0], parts[1]);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            us     | -             | 20.2 gpg  | 21 gpg     | gr    | lb | gal | whole grains, hundreds of grains: common practice
            metric | germany       | 18 dH     | 18 dH      | dH.m3 | kg | L   | whole degrees, 10 mg/L CaO: DIN 38409-6
            metric | -             | 18.1 dH   | 19 dH      | dH.m3 | kg | L   | the same where no country is given
            metric | france        | 30.2 fH   | 31 fH      | fH.m3 | kg | L   | whole French degrees of 10 mg/L
            metric | unitedKingdom | 304 mg/L  | 310 mg/L   | g     | kg | L   | tens of mg/L as CaCO3: common practice
            metric | france        | 18 dH     | 33 fH      | fH.m3 | kg | L   | 321.264 mg/L / 10""")
    void eachCountrysAnswerCanBeSetAsItStands(String units, String country, String hardness, String expected, String capacity,
            String salt, String volume, String source) {
        JsonPath settings = TestServer.post("/v1/assessment", home(hardness, country, CLOCK, "", units)).statusCode(200)
                .body("hardness.controllerSetting.unit", equalTo(expected.split(" ")[1]))
                .extract().jsonPath();
        assertEquals(expected, settings.getString("settings.hardness.value") + " " + settings.getString("settings.hardness.unit"), source);
        assertEquals(capacity, settings.getString("settings.capacity.unit"));
        assertEquals(salt, settings.getString("settings.saltPerRegeneration.unit"));
        assertEquals(volume, settings.getString("settings.reserve.unit"));
        double value = settings.getDouble("settings.capacity.value");
        double step = capacity.equals("gr") ? 100 : capacity.equals("g") ? 10 : 1;
        assertEquals(0, Math.IEEEremainder(value, step), 1e-9, "whole steps");
        if (units.equals("metric")) {
            assertEquals(0, Math.IEEEremainder(settings.getDouble("settings.saltPerRegeneration.value"), 0.1), 1e-9, "tenths of a kg");
            assertEquals(0, Math.IEEEremainder(settings.getDouble("settings.reserve.value"), 10), 1e-9, "tens of litres");
            assertEquals(1000 * value / settings.getDouble("settings.hardness.value"),
                    settings.getDouble("settings.meterVolume.value"), 0.01, "capacity over hardness");
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {"hardnessStep": {"value": 0.1, "unit": "mmol/L"}}    | hardness.value       | 3.3  | 3.21 mmol/L: whole tenths
            {"hardnessStep": {"value": 0.1, "unit": "dH"}}        | hardness.value       | 18.1 | 18.002 dH
            {"hardnessStep": {"value": 1, "unit": "mg/L"}}        | hardness.value       | 322  | 321.3 mg/L
            {"capacityStep": {"value": 1, "unit": "kgr"}}         | capacity.unit        | kgr  | thousands of grains
            {"capacityStep": {"value": 0.1, "unit": "mol"}}       | hardness.unit        | mmol/L | mol in a m3 are mmol in a L
            {"saltStep": {"value": 100, "unit": "g"}}             | saltPerRegeneration.unit | g | grams""")
    void theStepsAreTheCallers(String controller, String field, String expected, String source) {
        String body = home(field.startsWith("hardness.v") && expected.equals("3.3") ? "3.21 mmol/L" : "321.3 mg/L", "germany", CLOCK,
                "\"controller\": " + controller, "metric");
        assertEquals(expected, TestServer.post("/v1/assessment", body).statusCode(200).extract().jsonPath()
                .getString("settings." + field), source);
    }

    @Test
    void theReserveComesInPercentOrDaysWhereItIsSetSo() {
        JsonPath percent = settings("{\"reservePercentStep\": 5}");
        assertEquals(0, Math.IEEEremainder(percent.getDouble("settings.reservePercent"), 5), 1e-9);
        assertEquals(percent.getDouble("settings.reservePercent"), 100 * percent.getDouble("settings.reserve.value")
                / percent.getDouble("settings.meterVolume.value"), 1e-3);
        JsonPath days = settings("{\"reserveDaysStep\": 0.5}");
        assertEquals(0, Math.IEEEremainder(days.getDouble("settings.reserveDays"), 0.5), 1e-9);
        assertEquals(days.getDouble("settings.reserveDays"), days.getDouble("settings.reserve.value")
                / days.getDouble("demand.dailyUse.value"), 1e-3);
        JsonPath minutes = settings("{\"refillMinutesStep\": 0.5}");
        assertEquals(0, Math.IEEEremainder(minutes.getDouble("settings.refillMinutes"), 0.5), 1e-9);
    }

    private static JsonPath settings(String controller) {
        return TestServer.post("/v1/assessment", home("18 dH", "germany", CLOCK, "\"controller\": " + controller, "metric"))
                .statusCode(200).extract().jsonPath();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            18 dH     | 18 dH    | right           |
            18 dH     | 17 dH    | hardnessTooLow  | 18\u00a0°dH
            321.3 mg/L| 19 dH    | right           |
            30 fH     | 30 fH    | right           |
            30 fH     | 29 fH    | hardnessTooLow  | 30\u00a0°fH
            3.2 mmol/L| 3.2 mmol/L | right         |
            320 mg/L  | 320 mg/L | right           |
            20 gpg    | 20 gpg   | right           |
            20 gpg    | 19 gpg   | hardnessTooLow  | 20\u00a0gpg
            18 dH     | 25 dH    | hardnessTooHigh | 18\u00a0°dH""")
    void aControllerSetToItsWaterIsRight(String hardness, String set, String expected, String shouldBe) {
        String control = "{\"kind\": \"meteredDelayed\", \"hardnessSetting\": " + quantity(set) + "}";
        var answer = TestServer.post("/v1/settings-review", home(hardness, "germany", control, "", "metric")).statusCode(200);
        if (expected.equals("right")) {
            answer.body("findings.code", not(hasItem(containsString("hardness"))));
        } else {
            answer.body("findings.code", hasItem(expected)).body("findings.find { it.code == '" + expected + "' }.shouldBe",
                    equalTo(shouldBe));
        }
    }

    @Test
    void anAdviceComesInTheUnitOfTheSetting() {
        TestServer.post("/v1/settings-review", home("18 dH", "germany",
                "{\"kind\": \"meteredDelayed\", \"hardnessSetting\": {\"value\": 15, \"unit\": \"dH\"}}", "", "us")).statusCode(200)
                .body("findings.find { it.code == 'hardnessTooLow' }.shouldBe", equalTo("18\u00a0°dH"))
                .body("hardness.controllerSetting.value", near(18, 0, "DIN 38409-6"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            {"saltStep": {"value": 0.1, "unit": "kg"}, "refillMinutesStep": 1} | /preferences/controller/saltStep           | inconsistent
            {"reservePercentStep": 5, "reserveDaysStep": 1}                     | /preferences/controller/reservePercentStep | inconsistent
            {"hardnessStep": {"value": 0, "unit": "dH"}}                        | /preferences/controller/hardnessStep/value | outOfRange
            {"saltStep": {"value": 2, "unit": "kg"}}                            | /preferences/controller/saltStep/value | outOfRange""")
    void stepsThatCannotBeAreRefused(String controller, String pointer, String code) {
        TestServer.post("/v1/assessment", home("18 dH", "germany", CLOCK, "\"controller\": " + controller, "metric")).statusCode(422)
                .body("errors", hasSize(1)).body("errors[0].pointer", equalTo(pointer)).body("errors[0].code", equalTo(code));
    }

    @Test
    void aStepOfMoreSaltThanTheResinTakesIsRefused() {
        TestServer.post("/v1/assessment", home("18 dH", "germany", CLOCK,
                "\"controller\": {\"saltStep\": {\"value\": 1, \"unit\": \"kg\"}}", "metric").replace("\"value\": 25", "\"value\": 2"))
                .statusCode(422).body("errors[0].pointer", equalTo("/preferences/controller/saltStep"));
    }
}
