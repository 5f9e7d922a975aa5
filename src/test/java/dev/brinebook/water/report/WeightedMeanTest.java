// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.water.report.PrintedResult.Qualifier;
import dev.brinebook.water.report.PrintedResult.Tap;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WeightedMeanTest {

    private static Estimate gpg(double value, double u) {
        return new Estimate(value, u);
    }

    /**
     * By hand: weights 1.291, 4.726, 3.306; mean 183.12/9.323 = 19.64; u = 1/√9.323; squared deviations 0.026 + 1.48 + 1.81 = 3.32;
     * R = √(3.32/2); U = 2 · 0.328 · 1.288.
     */
    @Test
    void agreesWithTheMeanByHand() {
        WeightedMean mean = WeightedMean.of(List.of(gpg(19.5, 0.88), gpg(20.2, 0.46), gpg(18.9, 0.55)));
        Printed.assertAgrees("19.64", null, mean.value());
        Printed.assertAgrees("0.328", null, mean.standardUncertainty());
        Printed.assertAgrees("1.288", null, mean.ratio());
        Printed.assertAgrees("0.84", null, mean.expandedUncertainty());
        assertEquals(2, mean.farthest(), "18.9 is 1.35 of its own uncertainties away, 20.2 is 1.21");
        assertFalse(mean.isConflict());
    }

    @Test
    void namesTheOddOneOfTestsThatContradict() {
        WeightedMean mean = WeightedMean.of(List.of(gpg(20, 0.5), gpg(20.4, 0.5), gpg(12, 0.5)));
        assertTrue(mean.isConflict());
        assertEquals(2, mean.farthest());
    }

    @Test
    void ofOneTestIsTheTest() {
        WeightedMean mean = WeightedMean.of(List.of(gpg(18, 0.7)));
        assertEquals(18, mean.value());
        assertEquals(1.4, mean.expandedUncertainty(), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> WeightedMean.of(List.of()));
        assertThrows(IllegalArgumentException.class, () -> WeightedMean.of(List.of(gpg(18, 0))));
    }

    /** Blocks of a strip of 0, 25, 50, 120, 180, 250, 425 mg/L; ends half-way, spread over √12, by hand. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            2, 61, 13.7
            3, 117.5, 18.8
            4, 182.5, 18.8
            5, 276, 35.4
            """)
    void readsAStrip(int place, String value, String u) {
        StripScale scale = new StripScale(List.of(0.0, 25.0, 50.0, 120.0, 180.0, 250.0, 425.0));
        Printed.assertAgrees(value, place == 2 || place == 5 ? "0.5" : null, scale.estimate(place).orElseThrow().value());
        Printed.assertAgrees(u, null, scale.estimate(place).orElseThrow().standardUncertainty());
        assertTrue(scale.estimate(6).isEmpty(), "the top block has no upper end");
        assertEquals(337.5, scale.atLeast());
    }

    /** √(step²/12 + step²/3 + 0.6²) at 20 gpg, by hand. */
    @ParameterizedTest
    @CsvSource({"1, 0.88", "0.5, 0.68", "0.25, 0.62"})
    void isAsUncertainAsItsDrops(double step, String u) {
        Printed.assertAgrees(u, step == 0.5 ? "0.012" : null, TestMethod.DROPS.standardUncertainty(Parameter.HARDNESS, 20, step));
    }

    private static PrintedResult hardness(double value, ReportUnit unit, TestMethod method, double step) {
        return new PrintedResult(Parameter.HARDNESS, new PrintedResult.Reading(value, unit, null, Qualifier.EQUAL),
                new PrintedResult.Testing(method, OptionalDouble.empty(), step),
                new PrintedResult.Sampling(Tap.RAW, false, false, PrintedResult.Origin.UNKNOWN));
    }

    private static PrintedResult ion(Parameter parameter, double value) {
        return new PrintedResult(parameter, new PrintedResult.Reading(value, ReportUnit.MG_PER_L, null, Qualifier.EQUAL),
                new PrintedResult.Testing(TestMethod.LABORATORY, OptionalDouble.empty(), 0),
                new PrintedResult.Sampling(Tap.RAW, false, false, PrintedResult.Origin.UNKNOWN));
    }

    /** Two drop tests of one bottle share the size of its drops: 3 % of 20 gpg remains, however many there are. */
    @Test
    void addsTheSizeOfDropsOnce() {
        WaterReport four = WaterReport.of(List.of(hardness(20, ReportUnit.GPG, TestMethod.DROPS, 0.25),
                hardness(20, ReportUnit.GPG, TestMethod.DROPS, 0.25), hardness(20, ReportUnit.GPG, TestMethod.DROPS, 0.25),
                hardness(20, ReportUnit.GPG, TestMethod.DROPS, 0.25)));
        CombinedHardness combined = CombinedHardness.of(four, Tap.RAW).orElseThrow();
        double expected = Math.sqrt((0.25 * 0.25 / 12 + 0.25 * 0.25 / 3) / 4 + 0.6 * 0.6);
        assertEquals(expected, HardnessUnit.GPG.fromBase(combined.estimate().standardUncertainty()), 1e-9);
        assertEquals(20, HardnessUnit.GPG.fromBase(combined.estimate().value()), 1e-9);
    }

    /** A laboratory that adds calcium and magnesium up has made one test, not two. */
    @Test
    void countsASumOnce() {
        WaterReport report = WaterReport.of(List.of(ion(Parameter.CALCIUM, 84), ion(Parameter.MAGNESIUM, 10),
                hardness(252, ReportUnit.MG_PER_L, TestMethod.LABORATORY, 1)));
        CombinedHardness combined = CombinedHardness.of(report, Tap.RAW).orElseThrow();
        assertEquals(1, combined.tests().size());
        assertEquals(250.93, combined.estimate().value(), 0.01, "2.497 · 84 + 4.118 · 10");
        assertEquals(0.03 * Math.hypot(2.497 * 84, 4.118 * 10), combined.estimate().standardUncertainty(), 1e-9);
        WaterReport titrated = WaterReport.of(List.of(ion(Parameter.CALCIUM, 84), ion(Parameter.MAGNESIUM, 10),
                hardness(270, ReportUnit.MG_PER_L, TestMethod.LABORATORY, 1)));
        assertEquals(2, CombinedHardness.of(titrated, Tap.RAW).orElseThrow().tests().size());
        assertTrue(CombinedHardness.of(titrated, Tap.SOFTENED).isEmpty());
    }
}
