// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import java.util.Arrays;
import java.util.Random;
import org.apache.poi.ss.formula.functions.FinanceLib;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class CashFlowsTest {

    @ParameterizedTest
    @CsvFileSource(resources = {"/payback/published-net-present-value.csv",
            "/payback/cross-net-present-value.csv"}, useHeadersInDisplayName = true)
    void agreesWithPresentValuesFromElsewhere(String flows, double ratePercent, String expected, String tolerance) {
        Printed.assertAgrees(expected, tolerance,
                CashFlows.netPresentValue(ratePercent / 100, Flows.parse(flows)));
    }

    @Test
    void readsEveryRow() {
        assertEquals(2, Rows.in("/payback/published-net-present-value.csv"));
        assertEquals(2, Rows.in("/payback/cross-net-present-value.csv"));
    }

    /** Source: Apache POI 5.5.1, FinanceLib.npv, which discounts its first flow by a year. */
    @Test
    void agreesWithASpreadsheetOnRandomFlows() {
        for (int seed = 0; seed < 100; seed++) {
            Random random = new Random(seed);
            double[] flows = random.doubles(2 + random.nextInt(39), -1_000, 1_000).toArray();
            double rate = -0.2 + 0.7 * random.nextDouble();
            double spreadsheet = flows[0] + FinanceLib.npv(rate, Flows.savings(flows));
            double scale = -CashFlows.netPresentValue(rate, negative(flows));
            String at = "seed " + seed;
            assertEquals(spreadsheet, CashFlows.netPresentValue(rate, flows), 1e-9 * scale, at);
            assertEquals(FinanceLib.npv(rate, flows), CashFlows.presentValueOfSavings(rate, flows),
                    1e-9 * scale, at);
        }
    }

    @Test
    void fallsAsTheDiscountRateRises() {
        for (int seed = 0; seed < 100; seed++) {
            Random random = new Random(seed);
            double[] flows = Flows.ordinary(random);
            double rate = -0.5 + random.nextDouble();
            assertTrue(CashFlows.netPresentValue(rate + 0.001, flows) < CashFlows.netPresentValue(rate, flows),
                    "seed " + seed);
        }
    }

    /** Source: arithmetic, 110 and 121 a year and two years from now are 100 today at 10 %. */
    @Test
    void discountsEachFlowByItsOwnYears() {
        assertArrayEquals(new double[] {-350, 100, 100}, CashFlows.discounted(0.1, -350, 110, 121), 1e-12);
        assertEquals(0, CashFlows.discounted(0.1).length);
    }

    @Test
    void addsDiscountedFlowsUpToTheNetPresentValue() {
        for (int seed = 0; seed < 100; seed++) {
            Random random = new Random(seed);
            double[] flows = Flows.ordinary(random);
            double rate = 0.5 * random.nextDouble();
            assertEquals(CashFlows.netPresentValue(rate, flows),
                    Arrays.stream(CashFlows.discounted(rate, flows)).sum(), 1e-8, "seed " + seed);
        }
    }

    @Test
    void growsSavingsFromTheSecondYearOn() {
        assertArrayEquals(new double[] {90, 90 * 1.03, 90 * 1.03 * 1.03}, CashFlows.growing(90, 0.03, 3), 1e-12);
        assertArrayEquals(new double[] {-90, -45}, CashFlows.growing(-90, -0.5, 2), 0);
    }

    /** The rival reading that the Javadoc argues: the first year's saving already grown by a year. */
    @Test
    void documentsWhatTheRivalReadingOfGrowthDoes() {
        double[] rival = CashFlows.of(350, CashFlows.growing(90 * 1.03, 0.03, 10));
        Printed.assertAgrees("460.90", null, CashFlows.netPresentValue(0.05, rival));
    }

    @Test
    void countsSignChangesPassingOverZeros() {
        assertEquals(0, CashFlows.signChanges());
        assertEquals(0, CashFlows.signChanges(0, 0));
        assertEquals(1, CashFlows.signChanges(0, -1, 0, 2, 3));
        assertEquals(2, CashFlows.signChanges(-100, 100, 0, -7));
        assertEquals(1, CashFlows.signChanges(-1e-200, 0, 1e-200));
    }

    @Test
    void writesNoInvestmentAsAPlainZero() {
        assertArrayEquals(new double[] {0.0, 5}, CashFlows.of(0, 5));
        assertEquals("0.0", Double.toString(CashFlows.of(0, 5)[0]));
    }

    @Test
    void refusesWhatLiesOutsideItsRange() {
        assertThrows(IllegalArgumentException.class, () -> CashFlows.netPresentValue(-1, 1));
        assertThrows(IllegalArgumentException.class, () -> CashFlows.netPresentValue(Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> CashFlows.netPresentValue(0.1, 1, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> CashFlows.discounted(-1, 1));
        assertThrows(IllegalArgumentException.class, () -> CashFlows.discounted(0.1, Double.POSITIVE_INFINITY));
        assertThrows(IllegalArgumentException.class, () -> CashFlows.growing(1, -1, 3));
        assertThrows(IllegalArgumentException.class, () -> CashFlows.growing(1, 0, 41));
        assertThrows(IllegalArgumentException.class, () -> CashFlows.of(-1, 3));
    }

    private static double[] negative(double[] flows) {
        return Arrays.stream(flows).map(flow -> -Math.abs(flow)).toArray();
    }
}
