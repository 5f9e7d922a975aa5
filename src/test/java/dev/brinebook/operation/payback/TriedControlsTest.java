// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.path.json.JsonPath;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two controls tried on the same days, over HTTP. The households are invented. */
class TriedControlsTest {

    /** 300 L on every day, and a meter that counts 1,500 g over 500 mg/L, which is 3,000 L; salt at 0.50 a kilogram. */
    private static final String STEADY = """
            {"water": {"hardness": {"value": 300, "unit": "mg/L"}, "iron": {"value": 0, "unit": "mg/L"}},
            "household": {"dailyUse": {"value": 300, "unit": "L"}, "dayToDayVariation": 0},
            "softener": {"resinVolume": {"value": 30, "unit": "L"}, "saltDose": {"value": 160, "unit": "g/L"},
              "control": {"kind": "clock", "everyDays": 4}},
            "metered": {"kind": "meteredDelayed", "dayOverride": 0, "capacitySetting": {"value": 1500, "unit": "g"},
              "hardnessSetting": {"value": 500, "unit": "mg/L"}, "reserve": {"rule": "meanDay"}},
            "retrofit": {"cost": {"value": 300, "unit": "EUR"}},
            "prices": {"saltBag": {"price": {"value": 12.5, "unit": "EUR"}, "mass": {"value": 25, "unit": "kg"}},
              "water": {"price": {"value": 2, "unit": "EUR"}, "per": {"value": 1, "unit": "m3"}},
              "sewer": {"price": {"value": 3, "unit": "EUR"}, "per": {"value": 1, "unit": "m3"}}},
            "units": "metric"}
            """;

    /**
     * Source: arithmetic on constant use. The clock of 4 nights runs 365 / 4 times in the long run. The meter of 1,500 g over 500 mg/L
     * counts 3,000 L and keeps back a day of 300 L: it runs every 9 nights. A run takes 4.8 kg.
     */
    @Test
    void agreesWithTheArithmeticOfConstantUse() {
        JsonPath answer = Paybacks.answer(STEADY);
        assertEquals("wholeDays", answer.getString("comparedBy"));
        assertEquals(91.25, answer.getDouble("asFound.regenerations"));
        assertEquals(365 / 9.0, answer.getDouble("converted.regenerations"), 1e-4);
        assertEquals(91.25 - 365 / 9.0, answer.getDouble("difference.regenerations"), 1e-4);
        assertEquals((91.25 - 365 / 9.0) * 4.8, answer.getDouble("difference.salt.value"), 1e-3);
        assertEquals(new BigDecimal("121.67"), decimal(answer, "payback.firstYearSaving.salt.value"), "243.333 kg at 0.50");
        assertEquals(5 * decimal(answer, "difference.water.value").doubleValue() / 1000,
                decimal(answer, "payback.firstYearSaving.water.value").doubleValue()
                        + decimal(answer, "payback.firstYearSaving.sewer.value").doubleValue(), 0.011);
        assertEquals("EUR", answer.getString("payback.investment.unit"));
        assertNull(answer.get("savingByChange"));
    }

    /** Source: arithmetic, 91.25 runs of the clock and 40 of the meter; 120 g/L in 30 L are 3.6 kg a run, 1.2 less. */
    @Test
    void reportsTheSavingByMeteringAlone() {
        JsonPath answer = Paybacks.answer(STEADY.replace("\"retrofit\"",
                "\"meteredSaltDose\": {\"value\": 120, \"unit\": \"g/L\"}, \"retrofit\"")
                .replace("\"capacitySetting\": {\"value\": 1500, \"unit\": \"g\"},", "\"capacitySetting\": {\"value\": 1200,"
                        + " \"unit\": \"g\"},"));
        double meteringAlone = answer.getDouble("savingByChange.metered.regenerations");
        double converted = answer.getDouble("converted.regenerations");
        assertEquals(365 / 7.0, converted, 1e-4, "a meter of 2,400 L that keeps back 300 L runs every 7 nights");
        assertTrue(meteringAlone < converted, "the old dose restores more than 1,200 g");
        assertEquals((91.25 - meteringAlone) * 4.8 * 0.5,
                decimal(answer, "savingByChange.byMetering.salt.value").doubleValue(), 0.005);
        assertEquals((meteringAlone * 4.8 - converted * 3.6) * 0.5,
                decimal(answer, "savingByChange.byDose.salt.value").doubleValue(), 0.005);
        assertEquals(decimal(answer, "payback.firstYearSaving.total.value").doubleValue(),
                decimal(answer, "savingByChange.byMetering.total.value").doubleValue()
                        + decimal(answer, "savingByChange.byDose.total.value").doubleValue(), 0.011);
    }

    @Test
    void putsNothingToADoseThatStays() {
        JsonPath answer = Paybacks.answer(STEADY.replace("\"retrofit\"",
                "\"meteredSaltDose\": {\"value\": 160, \"unit\": \"g/L\"}, \"retrofit\"")
                .replace("\"capacitySetting\": {\"value\": 1500, \"unit\": \"g\"},", ""));
        assertEquals(new BigDecimal("0.00"), decimal(answer, "savingByChange.byDose.total.value"));
        assertEquals(answer.getString("savingByChange.metered"), answer.getString("converted"));
    }

    /** A clock tuned to the use beats a meter that holds back a day: that is possible, and is reported. */
    @Test
    void findsNothingToSaveOnAClockThatIsSetWell() {
        JsonPath answer = Paybacks.answer(STEADY.replace("\"everyDays\": 4", "\"everyDays\": 10"));
        assertEquals(36.5, answer.getDouble("asFound.regenerations"));
        assertTrue(decimal(answer, "payback.firstYearSaving.total.value").signum() < 0);
        assertEquals("nothingSaved", answer.getString("payback.simplePaybackYears.reason"));
        assertEquals("setRight", answer.getString("verdict.step"));
    }

    @Test
    void reportsTheSettingsOfTheMeter() {
        JsonPath answer = Paybacks.answer(STEADY.replace("\"dayOverride\": 0, ", "").replace(
                ", \"reserve\": {\"rule\": \"meanDay\"}", "").replace("\"units\"",
                "\"preferences\": {\"serviceStandard\": {\"hardDaysPerYear\": 2}}, \"units\""));
        assertEquals(14, answer.getInt("assumptions.find {it.pointer == '/metered/dayOverride'}.value"));
        assertEquals("default", answer.getString("assumptions.find {it.pointer == '/metered/dayOverride'}.origin"));
        assertEquals(0, answer.getInt("assumptions.find {it.pointer == '/softener/control/dayOverride'}.value"));
        assertEquals("the smallest reserve that meets the service standard",
                answer.getString("assumptions.find {it.pointer == '/metered/reserve'}.note"));
        assertEquals(160, answer.getInt("assumptions.find {it.pointer == '/meteredSaltDose'}.value"));
        assertEquals("the existing salt dose", answer.getString("assumptions.find {it.pointer == '/meteredSaltDose'}.note"));
    }

    /** A reserve that holds for fewer days is smaller, so the meter regenerates less often. */
    @Test
    void keepsBackWhatTheServiceStandardAsks() {
        String scattered = STEADY.replace("\"dayToDayVariation\": 0", "\"dayToDayVariation\": 0.6")
                .replace(", \"reserve\": {\"rule\": \"meanDay\"}", "")
                .replace("\"capacitySetting\": {\"value\": 1500, \"unit\": \"g\"},", "")
                .replace("500", "300");
        double careful = Paybacks.answer(scattered.replace("\"units\"",
                "\"preferences\": {\"serviceStandard\": {\"hardDaysPerYear\": 0.1}}, \"units\"")).getDouble("converted.regenerations");
        double bold = Paybacks.answer(scattered.replace("\"units\"",
                "\"preferences\": {\"serviceStandard\": {\"hardDaysPerYear\": 40}}, \"units\"")).getDouble("converted.regenerations");
        assertTrue(bold < careful, bold + " and " + careful);
    }

    /** Ten measured days of 300 L say what to expect of a year: a clock of 4 nights runs 365 / 4 times. */
    @Test
    void expectsAYearOfMeasuredDays() {
        JsonPath answer = Paybacks.answer(STEADY.replace("\"dailyUse\": {\"value\": 300, \"unit\": \"L\"}",
                "\"dailySeries\": {\"firstDate\": \"2026-03-02\", \"unit\": \"L\", \"values\":"
                        + " [300, 300, 300, 300, 300, 300, 300, 300, 300, 300]}"));
        assertEquals(91.25, answer.getDouble("asFound.regenerations"));
        assertTrue(answer.getString("assumptions.find {it.pointer == '/household/dayToDayVariation'}.note").contains("10 days"));
    }

    @Test
    void saysWhenASideRunsHard() {
        JsonPath answer = Paybacks.answer(STEADY.replace("\"everyDays\": 4", "\"everyDays\": 30"));
        assertTrue(answer.getDouble("asFound.hardDays") > 100);
        assertTrue(answer.getList("cautions.code", String.class).contains("runsHard"));
    }

    @Test
    void answersInUsUnitsByDefault() {
        JsonPath answer = Paybacks.answer(STEADY.replace(",\n\"units\": \"metric\"", ""));
        assertEquals(List.of("lb", "gal", "gr"), List.of(answer.getString("asFound.salt.unit"),
                answer.getString("asFound.water.unit"), answer.getString("asFound.capacityThrownAway.unit")));
        assertEquals(243.3333 / 0.45359237, decimal(answer, "difference.salt.value").doubleValue(), 0.01, "243.333 kg");
    }

    @Test
    void answersTheSameRequestWithTheSameBytes() {
        String body = STEADY.replace("\"dayToDayVariation\": 0", "\"dayToDayVariation\": 0.5");
        assertEquals(Paybacks.post(body).asString(), Paybacks.post(body).asString());
    }

    private static BigDecimal decimal(JsonPath answer, String path) {
        return new BigDecimal(answer.get(path).toString());
    }
}
