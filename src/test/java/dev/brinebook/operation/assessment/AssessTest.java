// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import static dev.brinebook.http.Near.exactly;
import static dev.brinebook.http.Near.near;
import static org.hamcrest.Matchers.anything;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.lessThan;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.Served;
import dev.brinebook.http.TestServer;
import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The whole job over HTTP: that every part is there, right where a source says so, and of one piece. */
class AssessTest {

    private static final String WELL = TestServer.example("assess.well-family");

    private static ValidatableResponse assess(String body) {
        return TestServer.post("/v1/assessment?detail=full", body);
    }

    @Test
    void answersEveryPartOfTheJob() {
        assess(WELL).statusCode(200).body("summary", containsString("Set hardness 28\u00a0gpg"))
                .body("hardness.compensated.value", near(22 + 4 * 1.2 + 2 * 0.08, 1e-3, "common practice: 4\u00a0gpg for iron, 2"
                        + " for manganese")).body("hardness.controllerSetting.value", exactly(28))
                .body("demand.dailyUse.value", near(300, 0.1, "five people at 60\u00a0gal: Residential End Uses of Water v2"))
                .body("fit.efficiencyLines.line", hasItems("californiaClock", "productStandard", "sewerDistrict"))
                .body("settings.reasons", hasSize(9))
                .body("settings.dayOverride", exactly(3)).body("settings.regenerationHour", exactly(2))
                .body("cycle.steps.step", hasItems("backwash", "brineAndSlowRinse", "fastRinse", "refill"))
                .body("refill.minutes", notNullValue()).body("readiness", hasSize(8))
                .body("readiness.find { it.condition == 'surgeProtection' }.state", equalTo("notMet"))
                .body("commissioning.size()", equalTo(12))
                .body("year.asFound.regenerations", near(365 / 3.0, 0.001, "every third night"))
                .body("year.saltAsFound.bags", notNullValue())
                .body("retrofit.payback.simplePaybackYears.value", notNullValue())
                .body("softenedWater.addedSodium.value", near(22.1342 * 7.864, 0.05, "CIAAW 2021: 7.864\u00a0mg/L for each gpg"))
                .body("cautions.code", hasItems("septicSystem", "wellWithoutBacteriaTest", "sodiumRestrictedDiet"))
                .body("cautions.code", not(hasItem("sewerSaltLimits"))).body("basis.source", everyItem(notNullValue()))
                .body("modelVersion", notNullValue());
    }

    @Test
    void speaksInTheUnitsOfTheAnswer() {
        TestServer.post("/v1/assessment?detail=full", TestServer.example("assess.apartment")).statusCode(200)
                .body("fit.reasons", hasItem("The bed is less than 61\u00a0cm deep."))
                .body("commissioning", hasItem(containsString("below 17\u00a0mg/L")))
                .body("basis.formula", not(hasItem(containsString("gpm")))).body("basis.formula", not(hasItem(containsString("psi"))));
        assess(WELL).body("commissioning", hasItem(containsString("below 1\u00a0gpg")))
                .body("basis.formula", hasItem(containsString("8\u00a0gpm/ft²")));
    }

    @Test
    void reportsTheSeedToItsLastDigit() {
        assess(WELL.replaceFirst("\\{", "{\"seed\": 123456789,")).statusCode(200)
                .body("assumptions.find { it.pointer == '/seed' }.value", equalTo(123456789));
    }

    @Test
    void countsCapacityByTheTableOrByTheColumnAsAsked() {
        String table = WELL.replace("\"resinAgeYears\": 8,", "")
                .replaceFirst("\\{", "{\"preferences\": {\"capacityMethod\": \"table\"},");
        assess(table).statusCode(200)
                .body("fit.capacity.value", near(44_944, 1, "15 minutes at 0.5\u00a0gpm are 14.94\u00a0lb/ft3; 45,000 gr at 15\u00a0lb:"
                        + " common practice"))
                .body("fit.saltEfficiency.value", near(2_000, 10, "30,000 gr for 15\u00a0lb: common practice"))
                .body("fit.meanLeakage", nullValue());
        assess(table.replace("table", "column")).statusCode(200)
                .body("fit.capacity.value", near(44_944, 0.04 * 44_944, "the same, which the column holds within 4\u00a0%"))
                .body("fit.meanLeakage.value", lessThan(0.1));
    }

    /** A bed of 3 L for six people lasts no day: the summary must say what the settings come to. */
    @Test
    void saysWhenTheSettingsMeanEveryNightAndWhichLimitsNoDoseKeeps() {
        String tiny = TestServer.example("assess.apartment").replace("\"people\": 2", "\"people\": 6")
                .replaceFirst("\"value\": 12,(\\s+)\"unit\": \"L\"", "\"value\": 3,$1\"unit\": \"L\"");
        assess(tiny).statusCode(200).body("summary", containsString("softener keeps the water soft"))
                .body("tradeOff.unmetLimits", hasItem("serviceStandard"));
    }

    @Test
    void reportsTheEffectOfAnUncertainUseOnTheAdvice() {
        assess(WELL).statusCode(200).body("useUncertainty.low.dailyUse.value", near(240, 0.1, "300\u00a0gal less a fifth"))
                .body("useUncertainty.high.dailyUse.value", near(360, 0.1, "and a fifth more"))
                .body("useUncertainty.advice", nullValue())
                .body("readings.saltSavedPercent", near(25, 6, "[DAIAD] 23 to 25\u00a0% over 45 metered homes"))
                .body("readings.sentence", startsWith("Four weeks of water meter readings"));
        assess(WELL.replace("\"value\": 22", "\"value\": 10")).statusCode(200)
                .body("useUncertainty.advice", startsWith("Read the water meter before you buy"));
        String exact = WELL.replace("\"people\": 5", "\"people\": 5, \"useUncertainty\": 0");
        assess(exact).statusCode(200).body("useUncertainty", nullValue());
        assess(exact.replace("\"useUncertainty\": 0", "\"useUncertainty\": 0.6")).statusCode(422)
                .body("errors[0].pointer", equalTo("/household/useUncertainty"));
    }

    private static final String MEASURED = """
            {"water": {"hardness": {"value": 20, "unit": "gpg"}}, "household": {"people": 4},
             "retrofit": {"cost": {"value": 400, "unit": "USD"}},
             "softener": {"resinVolume": {"value": 1.5, "unit": "ft3"}, "saltPerRegeneration": {"value": 15, "unit": "lb"},
                "uncertainty": {%s}, "control": {"kind": "clock", "everyDays": 4}}}""";

    @Test
    void reportsTheEffectOfUncertainMeasurementsOnTheAdvice() {
        JsonPath answer = assess(MEASURED.formatted("\"resinVolume\": {\"value\": 0.05, \"unit\": \"ft3\"}, "
                + "\"saltPerRegeneration\": {\"value\": 1, \"unit\": \"lb\"}")).statusCode(200)
                .body("resinUncertainty.low.resinVolume.value", near(1.45, 1e-5, "1.5 less 0.05"))
                .body("resinUncertainty.high.saltAsFound.value", near(15, 1e-4, "the same salt in more resin"))
                .body("saltUncertainty.high.saltAsFound.value", near(16, 1e-4, "15 and 1"))
                .body("saltUncertainty.high.resinVolume.value", near(1.5, 1e-5, "as given"))
                .body("resinUncertainty.advice", nullValue()).body("useUncertainty.low.resinVolume", nullValue()).extract().jsonPath();
        double lowest = answer.getDouble("saltUncertainty.low.savedPerYear.value");
        double saved = answer.getDouble("retrofit.payback.firstYearSaving.total.value");
        assertEquals(2 * 365 / 4.0 * 0.45359237 * 0.45, answer.getDouble("saltUncertainty.high.savedPerYear.value") - lowest, 2,
                "2\u00a0lb every fourth day at 0.45\u00a0USD/kg, and the water of their brine");
        double below = saved - Math.min(answer.getDouble("resinUncertainty.low.savedPerYear.value"),
                answer.getDouble("resinUncertainty.high.savedPerYear.value"));
        assertEquals(saved - Math.hypot(below, saved - lowest), answer.getDouble("savingInterval.low.value"), 0.02,
                "JCGM 100:2008 5.1.2");
    }

    @Test
    void leavesOutTheEffectOfWhatIsExact() {
        assess(MEASURED.formatted("\"saltPerRegeneration\": {\"value\": 1, \"unit\": \"lb\"}")).statusCode(200)
                .body("resinUncertainty", nullValue()).body("saltUncertainty", notNullValue());
        assess(MEASURED.formatted("")).statusCode(200).body("saltUncertainty", nullValue()).body("savingInterval", nullValue());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
            // what is given | its uncertainty | place | what it says
            "'resinVolume': {'value': 1.5, 'unit': 'ft3'} | 'resinVolume': {'value': 0.8, 'unit': 'ft3'} | resinVolume | 50",
            "'resinVolume': {'value': 1.5, 'unit': 'ft3'}, 'tankDiameter': {'value': 10, 'unit': 'in'}, 'tankHeight': {'value': 40,"
                    + " 'unit': 'in'} | 'resinVolume': {'value': 0.5, 'unit': 'ft3'} | resinVolume | fit into the tank",
            "'nameplateCapacity': {'value': 48000, 'unit': 'gr'} | 'resinVolume': {'value': 0.2, 'unit': 'ft3'} | resinVolume | too",
            "'resinVolume': {'value': 1.5, 'unit': 'ft3'} | 'saltPerRegeneration': {'value': 2, 'unit': 'lb'} | saltPerRegeneration | too",
            "'resinVolume': {'value': 1, 'unit': 'L'} | 'resinVolume': {'value': 0.1, 'unit': 'L'} | resinVolume | at least 1"})
    void refusesUncertaintyThatCannotBe(String softener, String uncertainty, String place, String message) {
        assess(("{'water': {'hardness': {'value': 20, 'unit': 'gpg'}}, 'household': {'people': 4}, 'softener': {" + softener
                + ", 'uncertainty': {" + uncertainty + "}, 'control': {'kind': 'clock', 'everyDays': 4}}}").replace('\'', '"'))
                .statusCode(422).body("errors.find { it.pointer == '/softener/uncertainty/" + place + "' }.message",
                        containsString(message));
    }

    @Test
    void neverAdvisesSettingsWithoutTheStopBeforeThem() {
        assess(WELL.replace("\"value\": 1.2", "\"value\": 12")).statusCode(200)
                .body("cautions[0].severity", equalTo("stop"))
                .body("summary", startsWith("Stop: Iron and manganese together are above 10\u00a0mg/L")); // NDSU WQ1031, 2017
    }

    @Test
    void doesNotPassADollarPriceOffAsTheCallersOwn() {
        assess(TestServer.example("assess.apartment")).statusCode(200)
                .body("assumptions.find { it.pointer == '/prices/serviceVisit' }.unit", equalTo("EUR"))
                .body("assumptions.find { it.pointer == '/prices/serviceVisit' }.source", equalTo("OWN-ASSUMPTION"));
    }

    @Test
    void isOfOnePiece() {
        JsonPath answer = assess(WELL).statusCode(200).extract().jsonPath();
        double dose = answer.getDouble("settings.saltPerRegeneration.value");
        double regenerations = answer.getDouble("year.metered.regenerations");
        assertEquals(dose * regenerations, answer.getDouble("year.metered.salt.value"), 0.1);
        double saved = answer.getDouble("year.asFound.salt.value") - answer.getDouble("year.metered.salt.value");
        assertEquals(saved, answer.getDouble("year.saltSaved.value"), 0.02);
        assertEquals(saved * 0.45359237 * 0.45, answer.getDouble("retrofit.firstYearSaving.salt.value"), 0.02,
                "0.45\u00a0USD/kg, the default price");
        assertEquals(answer.getDouble("verdict.ladder.find { it.step == 'convert' }.overAsFound.savedPerYear.value"),
                answer.getDouble("retrofit.payback.firstYearSaving.total.value"), 0.011);
        assertEquals((420 - 50) / answer.getDouble("retrofit.payback.firstYearSaving.total.value"),
                answer.getDouble("retrofit.payback.simplePaybackYears.value"), 1e-3);
        assertEquals(answer.getDouble("settings.capacity.value") / 28, answer.getDouble("settings.meterVolume.value"), 0.01);
        assertEquals(dose, answer.getDouble("refill.water.value") * answer.getDouble("refill.saltInWater.value"), 1e-3);
        assertEquals(answer.getDouble("demand.dailyUse.value") * answer.getDouble("hardness.real.value"),
                answer.getDouble("demand.dailyLoad.value"), 0.5);
        assertTrue(answer.getDouble("year.saltMetered.bags") * 40 >= answer.getDouble("year.metered.salt.value") - 125,
                "bags and what stood in the tank cover the year");
    }

    @Test
    void saysTheSameInMetricUnits() {
        String well = WELL.replaceFirst("\\{", "{\"preferences\": " + EqualQuestionsTest.US_CONTROLLER.replace("\n", " ") + ",");
        JsonPath us = assess(well).extract().jsonPath();
        JsonPath metric = assess(well.replace("\"units\": \"us\"", "\"units\": \"metric\"")).statusCode(200).extract().jsonPath();
        assertEquals(us.getDouble("year.metered.salt.value") * 0.45359237, metric.getDouble("year.metered.salt.value"), 0.01);
        assertEquals(us.getDouble("demand.dailyLoad.value") * 0.06479891, metric.getDouble("demand.dailyLoad.value"), 0.01);
        assertEquals(us.getDouble("retrofit.payback.netPresentValue.value"),
                metric.getDouble("retrofit.payback.netPresentValue.value"));
    }

    @Test
    void answersTheSameBytesForTheSameRequest() {
        assertEquals(assess(WELL).extract().asString(), assess(WELL).extract().asString());
    }

    @Test
    void anotherSeedChangesTheOrderOfTheDaysAndNotTheirTotal() {
        JsonPath one = assess(WELL).extract().jsonPath();
        JsonPath two = assess(WELL.replaceFirst("\\{", "{\"seed\": 2,")).extract().jsonPath();
        assertEquals(one.getDouble("demand.dailyUse.value"), two.getDouble("demand.dailyUse.value"), 0.1);
        assertEquals(one.getDouble("year.metered.salt.value"), two.getDouble("year.metered.salt.value"),
                0.08 * one.getDouble("year.metered.salt.value"));
    }

    @Test
    void chargesNoWaterFromAWellNorSewageToASepticSystem() {
        assess(WELL).body("retrofit.firstYearSaving.water.value", exactly(0))
                .body("retrofit.firstYearSaving.sewer.value", exactly(0))
                .body("assumptions.find { it.pointer == '/prices/water' }.note", containsString("well"));
    }

    @Test
    void reportsTheSavingWithoutAPaybackWhenTheCostIsUnknown() {
        assess(TestServer.example("assess.apartment").replaceFirst("\"retrofit\": \\{[^}]*}[^}]*},", ""))
                .statusCode(200).body("retrofit.payback", nullValue())
                .body("retrofit.firstYearSaving.total.unit", equalTo("EUR")).body("summary", containsString("EUR"));
    }

    @Test
    void savesNothingOverAClockThatRunsHard() {
        assess("""
                {"water": {"hardness": {"value": 10, "unit": "gpg"}, "iron": {"value": 0, "unit": "mg/L"}},
                 "household": {"people": 2}, "retrofit": {"cost": {"value": 300, "unit": "USD"}},
                 "softener": {"resinVolume": {"value": 1, "unit": "ft3"}, "saltDose": {"value": 6, "unit": "lb/ft3"},
                   "control": {"kind": "clock", "everyDays": 60}}}""").statusCode(200)
                .body("retrofit.firstYearSaving.total.value", lessThan(0.0))
                .body("verdict.ladder.find { it.step == 'convert' }.overBelow.over", equalTo("setRight"))
                .body("year.asFound.hardDays", near(365 - 6.1 * 16.7, 20, "a clock of 60 days on a bed of 20,000 gr / 1,200 gr a day"))
                .body("cautions.code", hasItem("runsHard"));
    }

    @Test
    void replacesADrainControlThatWouldWashOutTheResin() {
        String strong = WELL.replaceFirst("\"value\": 3.5", "\"value\": 12");
        assess(strong).statusCode(200).body("findings.code", hasItem("backwashTooStrong"))
                .body("cycle.steps[0].flow.value", near(3.5, 1e-6, "half of the bed's depth at 52 F, next half gpm"));
    }

    @Test
    void takesPotassiumChloride() {
        assess(WELL.replaceFirst("\"saltDose\"", "\"salt\": \"potassiumChloride\", \"saltDose\"")).statusCode(200)
                .body("softenedWater.addedSodium.value", exactly(0))
                .body("softenedWater.addedPotassium.value", near(22.1342 * 17.1181 * 0.7813, 0.2, "CIAAW 2021"))
                .body("cautions.code", hasItem("potassiumKidneyHeart"));
    }

    @Test
    void reportsEveryFaultOfABadBodyAtOnce() {
        assess("""
                {"water": {"hardness": {"value": -1, "unit": "gpg"}, "iron": {"value": "2", "unit": "mg/L"}},
                 "household": {"peple": 4}, "softener": {"resinVolume": {"value": 1, "unit": "lb"},
                   "control": {"kind": "clock"}}, "retrofit": {"cost": {"value": 100, "unit": "EUR"}}}""")
                .statusCode(422).body("errors.pointer", hasItems("/household/peple", "/softener/resinVolume/unit",
                        "/water/hardness/value", "/water/iron/value"))
                .body("errors.find { it.pointer == '/household/peple' }.didYouMean", equalTo("people"))
                .body("errors.find { it.pointer == '/water/hardness/value' }.allowed[0]", containsString("gpg"));
    }

    @Test
    void asksForAControlAndForOneCurrency() {
        assess("""
                {"water": {"hardness": {"value": 20, "unit": "gpg"}}, "household": {"people": 4},
                 "softener": {"resinVolume": {"value": 1, "unit": "ft3"}},
                 "retrofit": {"cost": {"value": 100, "unit": "EUR"}}}""").statusCode(422)
                .body("errors.pointer", hasItems("/softener/control", "/retrofit/cost"));
    }

    @Test
    void keepsNothingBackWhereASecondTankIsAdvised() {
        assess("""
                {"water": {"hardness": {"value": 30, "unit": "gpg"}}, "household": {"people": 4},
                 "softener": {"resinVolume": {"value": 20, "unit": "L"}, "control": {"kind": "clock", "everyDays": 1}}}""")
                .statusCode(200).body("fit.shortcomings", hasItem("serviceStandardNotMet"))
                .body("verdict.improvement", equalTo("secondTank"))
                .body("settings.reserve.value", near(0, 1e-9, "one bed is always in service"));
    }

    /**
     * The same softener as in SizeSoftenerTest, with the same rule: 3 people use 19.2 L/min at peaks, 25 L of resin are 61 cm deep
     * in 8 in, not in 9 in (common practice). A clock of 30 days runs hard, which is no matter of the softener's size.
     */
    @ParameterizedTest(name = "{0} L, {1}, {2} days: {3}")
    @CsvSource(delimiter = '|', textBlock = """
            25 |                                           | 3  |                | continuousFlowTooHigh peakFlowTooHigh bedTooShallow noRoomForBackwash | largeEnough
            25 |                                           | 30 |                | continuousFlowTooHigh peakFlowTooHigh bedTooShallow noRoomForBackwash | largeEnough
            25 | "tankDiameter": {"value": 9, "unit": "in"} | 3 | bedTooShallow  | noRoomForBackwash |
            25 | "tankDiameter": {"value": 8, "unit": "in"} | 3 |                | noRoomForBackwash | largeEnough
            25 | "tankDiameter": {"value": 8, "unit": "in"}, "tankHeight": {"value": 48, "unit": "in"} | 30 | | | largeEnough
            """)
    void saysTheSameOfFitEverywhere(int litres, String tank, int days, String shortcomings, String notChecked, String obstacle) {
        String request = """
                {"water": {"hardness": {"value": 17, "unit": "dH"}, "iron": {"value": 0, "unit": "mg/L"}},
                 "household": {"people": 3, "country": "germany"}, "softener": {"resinVolume": {"value": %d, "unit": "L"}%s,
                   "control": {"kind": "clock", "everyDays": %d}}}""".formatted(litres, tank == null ? "" : ", " + tank, days);
        boolean fits = shortcomings == null;
        assess(request).statusCode(200).body("fit.fits", equalTo(fits))
                .body("fit.shortcomings", equalTo(fits ? List.of() : List.of(shortcomings)))
                .body("fit.notChecked", notChecked == null ? nullValue() : equalTo(List.of(notChecked.split(" "))))
                .body("summary", fits ? not(containsString("does not fit")) : containsString("The softener does not fit this household."))
                .body("verdict.ladder.find { it.step == 'replace' }.obstacles", obstacle == null ? equalTo(List.of())
                        : hasItem(obstacle))
                .body("verdict.confidence", notChecked == null ? anything() : not(equalTo("high")))
                .body("cautions.code.contains('tankSizeNotGiven')", equalTo(notChecked != null));
        for (String sheet : List.of("letter", "card", "checklist")) {
            String page = Served.posting(request).header("Accept", "text/html").post("/v1/assessment?sheet=" + sheet).asString();
            assertEquals(!fits, page.contains(sheet.equals("letter") ? "does not suit its work" : "does not fit this household"), sheet);
        }
    }

    @Test
    void refusesARefillOfNoMinutes() {
        assess(WELL.replaceFirst("\"refill\": 15", "\"refill\": 0")).statusCode(422)
                .body("errors.pointer", hasItem("/softener/minutes/refill"));
    }
}
