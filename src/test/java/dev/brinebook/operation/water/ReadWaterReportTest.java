// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Violation;
import dev.brinebook.caution.Caution;
import dev.brinebook.http.json.JsonReader;
import dev.brinebook.http.json.JsonWriter;
import dev.brinebook.water.chemistry.BalanceCriterion;
import dev.brinebook.water.chemistry.BalanceCriterion.Verdict;
import dev.brinebook.water.chemistry.Ion;
import dev.brinebook.water.report.Contradiction;
import dev.brinebook.water.report.MetalForm;
import dev.brinebook.water.report.Parameter;
import dev.brinebook.water.report.PrintedForm;
import dev.brinebook.water.report.PrintedResult;
import dev.brinebook.water.report.ReportNote;
import dev.brinebook.water.report.ReportUnit;
import dev.brinebook.water.report.Slip;
import dev.brinebook.water.report.SoftenedSample;
import dev.brinebook.water.report.TestMethod;
import dev.brinebook.water.report.TestReason;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ReadWaterReportTest {

    static WaterReportAnswer read(String results, String more) {
        byte[] body = ("{\"results\": [" + results + "]" + more + "}").getBytes(StandardCharsets.UTF_8);
        WaterReportRequest request = new JsonReader().read(body, WaterReportRequest.class);
        return ReadWaterReport.OPERATION.answer(request);
    }

    static String result(String parameter, double value, String more) {
        return "{\"parameter\": \"" + parameter + "\", \"value\": " + value + more + "}";
    }

    /** The softened tap of a household sheet of 2012, whose raw tap had a hardness of 252 mg/L and 3 mg/L of sodium. */
    private static final String SOFTENED = String.join(",", result("calcium", 1, ", \"qualifier\": \"below\""),
            result("magnesium", 1, ", \"qualifier\": \"below\""), result("sodium", 109, ""), result("bicarbonate", 257, ""),
            result("chloride", 8, ""), result("nitrate", 0.4, ", \"form\": \"asNitrogen\""),
            result("sulfate", 4, ", \"form\": \"asSulfur\""), result("ph", 7.8, ""),
            result("conductivity", 450, ", \"unit\": \"uS/cm\""));

    @Test
    void sendsTheRawWaterOfASoftenedSampleOn() {
        WaterReportAnswer answer = read(SOFTENED, ", \"naturalSodium\": {\"value\": 3, \"unit\": \"mg/L\"}, \"units\": \"metric\"");
        assertEquals(SoftenedSample.Verdict.LIKELY_SOFTENED, answer.sample().verdict());
        assertEquals(231, answer.sample().rawHardness().value().doubleValue(), 1);
        assertEquals(answer.sample().rawHardness(), answer.water().hardness());
        assertEquals(Verdict.PASSES, answer.balance().verdicts().get(BalanceCriterion.PRACTICE.ordinal()).verdict());
        assertEquals(0.27, answer.balance().differencePercent().doubleValue(), 0.02, "the sheet's own: 4.8/4.7");
    }

    /** The sodium that softening left is no sodium of the raw water, and the iron that it took is not known. */
    @Test
    void leavesOutOfTheRawWaterWhatSofteningChanged() {
        WaterReportAnswer answer = read(SOFTENED + "," + result("iron", 0.02, "") + "," + result("manganese", 0.4, ""), "");
        assertEquals(11.5, answer.water().sodium().value().doubleValue(), "natural, not the 109 of the sample");
        assertNull(answer.water().iron());
        assertNull(answer.water().manganese());
        assertTrue(answer.nextTests().stream().anyMatch(test -> test.parameter() == Parameter.IRON && !test.tested()));
        assertTrue(answer.cautions().stream().anyMatch(caution -> caution.code() == Caution.HEALTH_VALUE_MISSED), "manganese is drunk");
    }

    @Test
    void doesNotTakeTheSoftenedTapForTheRawOne() {
        String softened = result("hardness", 1, ", \"unit\": \"gpg\", \"method\": \"drops\", \"tap\": \"softened\"");
        WaterReportAnswer answer = read(softened, "");
        assertNull(answer.water());
        assertTrue(answer.summary().toString().startsWith("Behind the softener"), answer.summary().toString());
        assertEquals(Parameter.HARDNESS, answer.nextTests().get(0).parameter());
        assertEquals(20, read(softened + "," + result("hardness", 20, ", \"unit\": \"gpg\", \"tap\": \"raw\""), "").water().hardness()
                .value().doubleValue(), 1e-4);
    }

    /** Telangana 2018 T1 (open state data): the column named bicarbonate holds mg/L as CaCO3; solids are 0.64 of conductivity. */
    @Test
    void offersASlipWithoutTakingIt() {
        WaterReportAnswer answer = read(String.join(",", result("calcium", 48, ""), result("magnesium", 38.896, ""),
                result("sodium", 49, ""), result("potassium", 4, ""), result("bicarbonate", 220, ""),
                result("chloride", 60, ""), result("sulfate", 46, ""),
                result("nitrate", 9.5506, ", \"form\": \"asNitrogen\""), result("fluoride", 0.44, ""), result("hardness", 279.93, ""),
                result("conductivity", 745, ", \"unit\": \"uS/cm\""), result("dissolvedSolids", 476.8, "")), "");
        assertEquals(Slip.ALKALINITY_READ_AS_BICARBONATE, answer.slips().get(0).slip());
        assertEquals(5.87, answer.balance().differencePercent().doubleValue(), 0.02);
        assertEquals(0.50, answer.slips().get(0).differencePercent().doubleValue(), 0.02);
        assertTrue(answer.results().stream().anyMatch(result -> result.parameter() == Parameter.BICARBONATE
                && result.value().doubleValue() == 220), "as printed");
    }

    @Test
    void saysWhatIsMissingForABalance() {
        WaterReportAnswer answer = read(result("hardness", 18.5, ", \"unit\": \"gpg\""), "");
        assertEquals(List.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.SODIUM, Ion.BICARBONATE, Ion.CHLORIDE, Ion.SULFATE),
                answer.balance().missing());
        assertNull(answer.balance().differencePercent());
        assertEquals(List.of(), answer.balance().verdicts());
        assertEquals(List.of(), answer.saturation());
        assertFalse(answer.nextTests().isEmpty());
        assertNull(read(result("iron", 0.4, ""), "").water());
    }

    /** Impossible values one by one with the usual range; the rest of the report is still read. */
    @Test
    void reportsImpossibleValuesAndReadsTheRest() {
        WaterReportAnswer answer = read(String.join(",", result("calcium", 9000, ""), result("ph", 74, ""), result("iron", -1, ""),
                result("hardness", 18.5, ", \"unit\": \"gpg\"")), "");
        assertEquals(List.of(Parameter.CALCIUM, Parameter.PH, Parameter.IRON), answer.impossible().stream().map(ImpossibleValue::parameter)
                .toList());
        assertEquals(300, answer.impossible().get(0).usualHigh().doubleValue());
        assertTrue(answer.impossible().get(0).message().toString().contains("9,000"), answer.impossible().get(0).message().toString());
        assertEquals(18.5, answer.water().hardness().value().doubleValue(), 1e-4);
        assertEquals(1, answer.results().size());
    }

    @Test
    void readsWhatContradictsItself() {
        WaterReportAnswer answer = read(String.join(",", result("calcium", 210, ""), result("hardness", 252, ", \"unit\": \"mg/L\""),
                result("freeChlorine", 0.8, ""), result("iron", 1.5, "")), ", \"appearance\": {\"atTap\": \"clear\"}");
        assertEquals(List.of(Contradiction.CHLORINE_BESIDE_IRON, Contradiction.CALCIUM_ABOVE_HARDNESS),
                answer.contradictions().stream().map(ContradictionAnswer::code).toList());
        assertEquals(MetalForm.DISSOLVED, answer.metals().iron());
        assertNotNull(answer.water());
    }

    @Test
    void defersHealthToItsAuthority() {
        WaterReportAnswer answer = read(String.join(",", result("hardness", 18.5, ", \"unit\": \"gpg\""),
                "{\"parameter\": \"eColi\", \"qualifier\": \"present\"}", result("arsenic", 20, ", \"unit\": \"ug/L\"")), "");
        assertEquals(Caution.BACTERIA_FOUND, answer.cautions().get(0).code());
        assertTrue(answer.cautions().stream().anyMatch(caution -> caution.code() == Caution.HEALTH_VALUE_MISSED));
        assertTrue(answer.summary().toString().contains("Bacteria"), answer.summary().toString());
        assertFalse(answer.water().bacteriaTested());
    }

    /** Bacteria not found after 40 hours were not tested: the test is ordered again, and the next one is due after the valid sample. */
    @Test
    void countsNoSampleThatIsTooOld() {
        String hardness = result("hardness", 18.5, ", \"unit\": \"gpg\", \"sampledOn\": \"2026-03-01\"");
        String old = hardness + ",{\"parameter\": \"coliform\", \"qualifier\": \"absent\", \"hoursHeld\": 40}";
        WaterReportAnswer answer = read(old, ", \"supply\": \"privateWell\"");
        assertEquals(List.of(ReportNote.NOT_VALID), answer.notes().stream().map(ReportNoteAnswer::code).toList());
        assertFalse(answer.water().bacteriaTested());
        assertTrue(read(old.replace("40", "20"), ", \"supply\": \"privateWell\"").water().bacteriaTested());
        assertEquals(LocalDate.of(2026, 3, 1), answer.results().get(0).sampledOn());
        assertEquals(LocalDate.of(2029, 3, 1), answer.repeats().stream().filter(one -> one.parameter() == Parameter.HARDNESS)
                .findFirst().orElseThrow().dueOn());
        assertEquals(List.of(), read(old, "").repeats(), "a utility tests its own water");
    }

    @Test
    void refusesUnitsThatSayNothing() {
        InvalidRequest refused = assertThrows(InvalidRequest.class, () -> read(result("nitrate", 5, ", \"unit\": \"uS/cm\"") + ","
                + result("sodium", 5, ", \"form\": \"asNitrogen\"") + ",{\"parameter\": \"iron\"},"
                + result("alkalinity", 5, ", \"unit\": \"mg/L\", \"form\": \"acidCapacity\""), ""));
        assertEquals(List.of("/results/0/unit", "/results/1/form", "/results/2/value", "/results/3/form"),
                refused.violations().stream().map(Violation::pointer).toList());
    }

    /** What is answered as water, any other operation takes: 300 random reports of possible and impossible values. */
    @Test
    void answersAWaterThatOtherOperationsTake() {
        Random random = new Random(20_261_130);
        int waters = 0;
        for (int i = 0; i < 300; i++) {
            WaterReportAnswer answer = ReadWaterReport.OPERATION.answer(random(random));
            byte[] written = new JsonWriter().write(answer);
            assertTrue(written.length > 0);
            if (answer.water() != null) {
                byte[] water = new JsonWriter().write(new CompensatedHardnessRequest(answer.water(), null, null, null));
                assertNotNull(CompensateHardness.OPERATION.answer(new JsonReader().read(water, CompensatedHardnessRequest.class)));
                waters++;
            }
        }
        assertTrue(waters > 60, waters + " waters");
    }

    private static WaterReportRequest random(Random random) {
        List<ReportResultRequest> results = new ArrayList<>();
        int count = 1 + random.nextInt(25);
        for (int i = 0; i < count; i++) {
            Parameter parameter = i == 0 ? Parameter.HARDNESS : pick(Parameter.values(), random);
            List<ReportUnit> units = java.util.Arrays.stream(ReportUnit.values())
                    .filter(unit -> PrintedForm.of(parameter, null, unit).isPresent()).toList();
            double size = parameter.highest() * Math.pow(10, -4 + 4.3 * random.nextDouble());
            double value = random.nextInt(10) == 0 ? -size : random.nextInt(10) == 0 ? 0 : size;
            results.add(new ReportResultRequest(parameter, BigDecimal.valueOf(value), units.get(random.nextInt(units.size())), null,
                    pick(PrintedResult.Qualifier.values(), random), pick(TestMethod.values(), random), random.nextBoolean() ? null
                            : BigDecimal.valueOf(Math.pow(10, 8 * random.nextDouble() - 6)), random.nextBoolean() ? null
                            : BigDecimal.valueOf(Math.pow(10, 6 * random.nextDouble() - 6)), pick(PrintedResult.Tap.values(), random),
                    random.nextBoolean(), random.nextBoolean(), 1 + random.nextInt(3), random.nextBoolean() ? null
                            : LocalDate.of(2026, 1 + random.nextInt(12), 1), BigDecimal.valueOf(random.nextInt(100))));
        }
        return new WaterReportRequest(results, null, new ReportAppearance(pick(MetalForm.AtTap.values(), random), null, false), null,
                List.of(pick(TestReason.values(), random)), null, null);
    }

    private static <E> E pick(E[] values, Random random) {
        return values[random.nextInt(values.length)];
    }
}
