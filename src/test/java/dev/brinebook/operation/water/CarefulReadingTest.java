// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import static dev.brinebook.operation.water.ReadWaterReportTest.read;
import static dev.brinebook.operation.water.ReadWaterReportTest.result;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.caution.Caution;
import dev.brinebook.water.report.Parameter;
import dev.brinebook.water.report.ReportNote;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Results that need care: ends of scales, tests that disagree, kits and what is left to say of them. */
class CarefulReadingTest {

    /** The end of a scale is no value: of hardness the least, of a pH no hydrogen of pH 0, of a substance that was seen no amount. */
    @Test
    void takesNoEndOfAScaleForAValue() {
        WaterReportAnswer above = read(result("hardness", 425, ", \"qualifier\": \"above\", \"method\": \"strip\""), "");
        assertTrue(above.summary().toString().startsWith("The hardness is at least"), above.summary().toString());
        assertNull(above.hardness());
        WaterReportAnswer soft = read(result("hardness", 400, ", \"qualifier\": \"below\""), ", \"units\": \"metric\"");
        assertEquals(200, soft.water().hardness().value().doubleValue(), "anywhere from 0 to 400");
        assertEquals(2 * 400 / Math.sqrt(12), soft.water().hardnessUncertainty().value().doubleValue(), 1e-3);
        WaterReportAnswer below = read(result("ph", 6.2, ", \"qualifier\": \"below\""), "");
        assertEquals(6.2, below.results().get(0).value().doubleValue());
        assertEquals(0, below.balance().cations().doubleValue(), 1e-2);
        WaterReportAnswer seen = read("{\"parameter\": \"hardness\", \"qualifier\": \"present\"}", "");
        assertNull(seen.water());
        assertEquals(List.of(), seen.results());
    }

    /** A strip that shows no colour tells 0 from its next block at best: 1 % of the usual 1,000 mg/L, k = 2. */
    @Test
    void trustsNoStripThatShowsNothing() {
        WaterReportAnswer answer = read(result("hardness", 0, ", \"method\": \"strip\""), ", \"units\": \"metric\"");
        assertEquals(20, answer.water().hardnessUncertainty().value().doubleValue(), 1e-4);
    }

    /** Somebody with a strip or a drop test asks for no balance; the unit of 250 gpg is asked for, as everywhere. */
    @Test
    void speaksOfWhatWasTested() {
        assertFalse(read(result("hardness", 18, ", \"unit\": \"gpg\""), "").summary().toString().contains("Ions"));
        assertTrue(read(result("calcium", 80, "") + "," + result("magnesium", 8, ""), "").summary().toString().contains("Ions"));
        WaterReportAnswer answer = read(result("hardness", 250, ", \"unit\": \"gpg\""), "");
        assertTrue(answer.cautions().stream().anyMatch(caution -> caution.code() == Caution.HARDNESS_MAYBE_MG_PER_L));
        assertTrue(read(result("hardness", 250, ""), "").cautions().stream()
                .noneMatch(caution -> caution.code() == Caution.HARDNESS_MAYBE_MG_PER_L));
    }

    /** Other operations take 500 mg/L at most, which is said where the report is less sure. */
    @Test
    void saysWhatOthersDoNotTake() {
        WaterReportAnswer answer = read(result("hardness", 300, ", \"uncertainty\": 900"), ", \"units\": \"metric\"");
        assertEquals(500, answer.water().hardnessUncertainty().value().doubleValue());
        assertEquals(900, answer.hardness().uncertainty().value().doubleValue(), 1e-3);
        assertTrue(answer.assumptions().stream().anyMatch(assumed -> "largestHardnessUncertainty".equals(assumed.name())));
        assertTrue(read(result("hardness", 300, ""), "").assumptions().stream().noneMatch(assumed -> assumed.name() != null));
    }

    /**
     * By hand: 0.2 and 2.0 mg/L, each known to 0.1 (k = 2), are 25.5 of their standard uncertainties apart, R = 25.5/√2 = 18; 0.50 and
     * 0.55 are 0.7 apart.
     */
    @Test
    void saysWhichTestsDisagree() {
        String doubt = ", \"uncertainty\": 0.1";
        WaterReportAnswer answer = read(result("iron", 0.2, doubt) + "," + result("iron", 2, doubt), "");
        assertEquals(List.of(ReportNote.TESTS_DISAGREE), answer.notes().stream().map(ReportNoteAnswer::code).toList());
        assertEquals(List.of(Parameter.IRON), answer.notes().get(0).about());
        WaterReportAnswer water = read(result("hardness", 300, "") + "," + result("iron", 0.2, ", \"method\": \"photometer\"") + ","
                + result("iron", 3, ", \"method\": \"laboratory\""), "");
        assertEquals(3, water.water().iron().value().doubleValue(), "no mean of 0.24, and the resin is kept on the safe side");
        assertEquals(List.of(), read(result("iron", 0.5, doubt) + "," + result("iron", 0.55, doubt), "").notes());
        assertEquals(List.of(), read(result("iron", 0.2, doubt) + "," + result("iron", 2, doubt + ", \"tap\": \"softened\""), "")
                .notes());
    }

    /** A drop test 7 % above the ions is within its own doubt; a laboratory that states such a sum has added wrongly. */
    @Test
    void checksOnlySumsAgainstTheIons() {
        String ions = result("calcium", 96, "") + "," + result("magnesium", 31, "") + ",";
        WaterReportAnswer drops = read(ions + result("hardness", 20, ", \"unit\": \"gpg\", \"method\": \"drops\""), "");
        assertEquals(List.of(), drops.ratios());
        assertEquals(List.of(ReportNote.DROPS_COUNTED_UP), drops.notes().stream().map(ReportNoteAnswer::code).toList());
        WaterReportAnswer sum = read(ions + result("hardness", 342, ", \"unit\": \"mg/L\", \"method\": \"laboratory\""), "");
        assertFalse(sum.ratios().get(0).holds());
    }

    /** None counted, and less than one, are none: no test of them is left, nor of E. coli, which are coliform bacteria. */
    @Test
    void noColiformBacteriaAreNoColiToo() {
        for (String none : List.of("\"qualifier\": \"absent\"", "\"value\": 0", "\"value\": 1, \"qualifier\": \"below\"")) {
            WaterReportAnswer answer = read("{\"parameter\": \"coliform\", " + none + "}",
                    ", \"supply\": \"privateWell\", \"reasons\": [\"infant\"]");
            assertTrue(answer.nextTests().stream().noneMatch(test -> test.parameter() == Parameter.COLIFORM
                    || test.parameter() == Parameter.E_COLI), none);
            assertTrue(answer.nextTests().get(0).asked());
        }
    }

    /** By hand: u of 5 mg/L of Fe known to 10 % is 0.5/27.92 = 0.0179 meq/L, of 5.9 and 5.9 meq/L with 1 % of each other ion. */
    @Test
    void countsTheDoubtOfIronInTheBalance() {
        String ions = String.join(",", result("calcium", 100, ", \"uncertainty\": 0.02"),
                result("magnesium", 10, ", \"uncertainty\": 0.02"),
                result("sodium", 5, ", \"uncertainty\": 0.02"), result("alkalinity", 290, ", \"uncertainty\": 0.02"),
                result("chloride", 5, ", \"uncertainty\": 0.02"), result("sulfate", 5, ", \"uncertainty\": 0.02"));
        double without = read(ions, "").balance().uncertaintyPercent().doubleValue();
        double with = read(ions + "," + result("iron", 5, ", \"uncertainty\": 1"), "").balance().uncertaintyPercent().doubleValue();
        assertTrue(without < 0.02, without + " %");
        assertEquals(2 * 100 * (0.5 / 27.9225) / 12.3, with, 0.02, "about 100 u/(C + A)");
    }

    /** In a filter of calcite the water ends in equilibrium: exactly, not by what a search leaves. */
    @Test
    void endsInEquilibriumWhereLimeNeutralises() {
        WaterReportAnswer answer = read(String.join(",", result("calcium", 20, ""), result("alkalinity", 50, ""),
                result("ph", 6.5, "")), "");
        SaturationAnswer neutralised = answer.saturation().get(answer.saturation().size() - 1);
        assertEquals(SaturationAnswer.State.NEUTRALISED, neutralised.state());
        assertEquals(0, neutralised.precipitationPotential().value().signum());
        assertEquals(0, neutralised.calciteIndex().signum());
    }
}
