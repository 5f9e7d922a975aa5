// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.apache.poi.ss.formula.functions.FinanceLib;
import org.junit.jupiter.api.Test;

class LifeCycleCostTest {

    private static final Prices NO_GROWTH = Alternatives.prices(0, 0.05);

    /** Source: arithmetic; a first cost, and 120 a year by the uniform present value (1 - 1.05^-10) / 0.05 = 7.7217. */
    @Test
    void addsTheFirstCostToTheWorthOfEqualYears() {
        Alternative alternative = Alternatives.of(new Outlay(350, 0, 10), 120);
        assertEquals(350 + 120 * (1 - Math.pow(1.05, -10)) / 0.05, LifeCycleCost.of(alternative, 10, NO_GROWTH), 1e-9);
        Printed.assertAgrees("1276.61", null, LifeCycleCost.of(alternative, 10, NO_GROWTH));
    }

    /** Source: arithmetic; the single present value of 800 in year 8 and of 600 left in year 10, at 5 %. */
    @Test
    void countsReplacementAndResidualValueInTheirYears() {
        Alternative alternative = Alternatives.of(new Outlay(800, 0, 8), 0);
        assertEquals(800 + 800 / Math.pow(1.05, 8) - 600 / Math.pow(1.05, 10),
                LifeCycleCost.of(alternative, 10, NO_GROWTH), 1e-9);
    }

    /** Source: arithmetic; S(1 - ((1 + g)/(1 + d))^N) / (d - g), and S N / (1 + d) where both rates are one. */
    @Test
    void countsGrowingYearsByTheirClosedForm() {
        Alternative alternative = Alternatives.of(Outlay.NONE, 90);
        assertEquals(90 * (1 - Math.pow(1.03 / 1.05, 10)) / 0.02,
                LifeCycleCost.of(alternative, 10, Alternatives.prices(0.03, 0.05)), 1e-9);
        assertEquals(90 * 10 / 1.05, LifeCycleCost.of(alternative, 10, Alternatives.prices(0.05, 0.05)), 1e-9);
    }

    /** Source: Apache POI 5.5.1, FinanceLib.npv of the payments and FinanceLib.pmt of their worth. */
    @Test
    void agreesWithASpreadsheetOnRandomPayments() {
        for (int seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            Alternative alternative = Alternatives.random(random);
            int horizon = 1 + random.nextInt(40);
            double discount = seed % 10 == 0 ? 0 : 0.2 * random.nextDouble();
            Prices prices = Alternatives.prices(0.1 * random.nextDouble(), discount);
            double[] payments = alternative.payments(horizon, prices);
            double worth = payments[0] + FinanceLib.npv(discount, Flows.savings(payments));
            double cost = LifeCycleCost.of(alternative, horizon, prices);
            assertEquals(worth, cost, 1e-9 * Math.abs(worth), "seed " + seed);
            double yearly = FinanceLib.pmt(discount, horizon, -worth, 0, false);
            assertEquals(yearly, LifeCycleCost.annualEquivalent(cost, horizon, discount), 1e-9 * Math.abs(yearly),
                    "seed " + seed);
        }
    }

    /** By definition: paying the equal amount at the end of each year is worth what it was made from. */
    @Test
    void isWorthWhatItsEqualYearsAreWorth() {
        for (int seed = 0; seed < 100; seed++) {
            Random random = new Random(seed);
            int horizon = 1 + random.nextInt(40);
            double discount = seed % 10 == 0 ? 1e-17 : 0.5 * random.nextDouble();
            double yearly = LifeCycleCost.annualEquivalent(1_000, horizon, discount);
            assertEquals(1_000, CashFlows.presentValueOfSavings(discount, CashFlows.growing(yearly, 0, horizon)), 1e-9,
                    "seed " + seed);
        }
        assertEquals(-25, LifeCycleCost.annualEquivalent(-1_000, 40, 0), 1e-12);
    }

    /** By hand: 100 - 10 today, then 30, 30 * 1.1 and a new one at 100 * 1.21, then 36.3 less half of 133.1. */
    @Test
    void paysOutlayAndGrowingRunningCosts() {
        Alternative alternative = Alternatives.of(new Outlay(100, 10, 2), 30);
        assertArrayEquals(new double[] {90, 30, 33 + 121, 36.3 - 66.55},
                alternative.payments(3, Alternatives.prices(0.1, 0.05)), 1e-9);
    }

    @Test
    void keepsTheOrderInAnotherCurrency() {
        for (int seed = 0; seed < 100; seed++) {
            Random random = new Random(seed);
            List<Alternative> ours = IntStream.range(0, 6).mapToObj(i -> Alternatives.random(random)).toList();
            List<Alternative> theirs = ours.stream().map(one -> Alternatives.scaled(one, 1_000)).toList();
            Prices prices = Alternatives.prices(0.05 * random.nextDouble(), 0.1 * random.nextDouble());
            int horizon = 1 + random.nextInt(40);
            assertEquals(order(ours, horizon, prices), order(theirs, horizon, prices), "seed " + seed);
        }
    }

    @Test
    void risesWithEveryCost() {
        for (int seed = 0; seed < 100; seed++) {
            Random random = new Random(seed);
            Alternative one = Alternatives.random(random);
            Alternative dearer = new Alternative("dearer", one.outlay(), new YearlyCost(one.yearly().salt() + 1,
                    one.yearly().water(), one.yearly().sewer(), one.yearly().service()));
            Prices prices = Alternatives.prices(0.02, 0.05);
            assertTrue(LifeCycleCost.of(dearer, 10, prices) > LifeCycleCost.of(one, 10, prices), "seed " + seed);
        }
    }

    @Test
    void refusesWhatLiesOutsideItsRange() {
        Alternative alternative = Alternatives.of(Outlay.NONE, 90);
        assertThrows(IllegalArgumentException.class, () -> LifeCycleCost.of(alternative, 0, NO_GROWTH));
        assertThrows(IllegalArgumentException.class, () -> LifeCycleCost.of(alternative, 41, NO_GROWTH));
        assertThrows(IllegalArgumentException.class, () -> LifeCycleCost.annualEquivalent(Double.NaN, 10, 0.05));
        assertThrows(IllegalArgumentException.class, () -> LifeCycleCost.annualEquivalent(1, 0, 0.05));
        assertThrows(IllegalArgumentException.class, () -> LifeCycleCost.annualEquivalent(1, 41, 0.05));
        assertThrows(IllegalArgumentException.class, () -> LifeCycleCost.annualEquivalent(1, 10, -0.01));
        assertThrows(IllegalArgumentException.class, () -> LifeCycleCost.annualEquivalent(1, 10, 0.6));
        assertThrows(IllegalArgumentException.class, () -> CashFlows.uniformCapitalRecovery(-0.1, 10));
        assertThrows(NullPointerException.class, () -> new Alternative(null, Outlay.NONE, new YearlyCost(0, 0, 0, 0)));
        assertThrows(NullPointerException.class, () -> new Alternative("none", null, new YearlyCost(0, 0, 0, 0)));
        assertThrows(NullPointerException.class, () -> new Alternative("none", Outlay.NONE, null));
    }

    private static List<Integer> order(List<Alternative> alternatives, int horizon, Prices prices) {
        return IntStream.range(0, alternatives.size()).boxed().sorted(Comparator
                .comparingDouble(i -> LifeCycleCost.of(alternatives.get(i), horizon, prices))).toList();
    }
}
