// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.guard.NoResultReason;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.poi.ss.formula.functions.Irr;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class RateOfReturnTest {

    @ParameterizedTest
    @CsvFileSource(resources = {"/payback/published-rate-of-return.csv",
            "/payback/cross-rate-of-return.csv"}, useHeadersInDisplayName = true)
    void agreesWithRatesFromElsewhere(String flows, String expectedPercent, int signChanges, String tolerance) {
        RateOfReturn rate = RateOfReturn.of(Flows.parse(flows));
        Printed.assertAgrees(expectedPercent, tolerance, rate.rate().value() * 100);
        assertEquals(signChanges, rate.signChanges());
        assertEquals(signChanges == 1, rate.unique());
    }

    @Test
    void readsEveryRow() {
        assertEquals(5, Rows.in("/payback/published-rate-of-return.csv"));
        assertEquals(2, Rows.in("/payback/cross-rate-of-return.csv"));
    }

    /** Source: Apache POI 5.5.1, Irr.irr, Newton's method from its own guess of 10 %. */
    @Test
    void agreesWithASpreadsheetOnRandomFlows() {
        for (int seed = 0; seed < 200; seed++) {
            double[] flows = Flows.ordinary(new Random(seed));
            assertEquals(Irr.irr(flows), RateOfReturn.of(flows).rate().value(), 1e-7, "seed " + seed);
        }
    }

    @Test
    void leavesNothingAtTheRateItFinds() {
        for (int seed = 0; seed < 200; seed++) {
            double[] flows = Flows.ordinary(new Random(seed));
            double rate = RateOfReturn.of(flows).rate().value();
            assertEquals(0, CashFlows.netPresentValue(rate, flows) / flows[0], 1e-10, "seed " + seed);
        }
    }

    @Test
    void isUnchangedByTheCurrency() {
        for (int seed = 0; seed < 100; seed++) {
            double[] flows = Flows.ordinary(new Random(seed));
            double rate = RateOfReturn.of(flows).rate().value();
            for (double factor : new double[] {1e-12, 0.0137, 15_800, 1e12}) {
                assertEquals(rate, RateOfReturn.of(Flows.scaled(flows, factor)).rate().value(), 1e-12, "seed " + seed);
            }
        }
    }

    /** Flows made from rates chosen beforehand: the product of (1 - (1 + r) x), x = 1 / (1 + rate). */
    @Test
    void findsEveryRateThatTheFlowsWereMadeFrom() {
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            List<Double> rates = new ArrayList<>();
            double[] flows = {-1_000};
            for (double rate = -0.6 + 0.5 * random.nextDouble(); rates.size() < 1 + seed % 4; rate += 0.1
                    + random.nextDouble()) {
                rates.add(rate);
                flows = times(flows, 1 + rate);
            }
            List<Double> found = RateOfReturn.all(flows);
            assertEquals(rates.size(), found.size(), "seed " + seed);
            for (int i = 0; i < rates.size(); i++) {
                assertEquals(rates.get(i), found.get(i), 1e-7, "seed " + seed);
            }
        }
    }

    /** Source of the other rate: bisection of 7 x^3 - 100 x + 100 from 2.5 to 4 in Python, x = 3.1142. */
    @Test
    void choosesTheRateNearestZeroAmongSeveral() {
        List<Double> both = RateOfReturn.all(-100, 100, 0, -7);
        assertEquals(2, both.size());
        Printed.assertAgrees("-67.89", null, both.get(0) * 100);
        Printed.assertAgrees("-8.33", null, both.get(1) * 100);
        assertFalse(RateOfReturn.of(-100, 100, 0, -7).unique());
    }

    /** -1 (1 - 1.1 x)^2 only touches zero, at 10 %. */
    @Test
    void findsARateAtWhichThePresentValueOnlyTouchesZero() {
        for (int percent = 1; percent <= 40; percent++) {
            double growth = 1 + percent / 100.0;
            assertEquals(growth - 1, RateOfReturn.of(-1, 2 * growth, -growth * growth).rate().value(), 1e-6, percent + " %");
        }
        RateOfReturn touching = RateOfReturn.of(-1, 2.2, -1.21);
        assertEquals(0.1, touching.rate().value(), 1e-6);
        assertEquals(2, touching.signChanges());
        assertFalse(touching.unique());
    }

    @Test
    void saysWhyThereIsNoRate() {
        assertEquals(NoResultReason.NO_SIGN_CHANGE, RateOfReturn.of(-100, -20, -20).rate().reason());
        assertEquals(NoResultReason.NO_SIGN_CHANGE, RateOfReturn.of(0, 20).rate().reason());
        assertEquals(NoResultReason.NO_SIGN_CHANGE, RateOfReturn.of(0, 0).rate().reason());
        RateOfReturn never = RateOfReturn.of(-100, 100, -100);
        assertEquals(NoResultReason.NO_RATE_IN_RANGE, never.rate().reason());
        assertEquals(2, never.signChanges());
        assertFalse(never.unique());
        assertEquals(NoResultReason.NO_RATE_IN_RANGE, RateOfReturn.of(-1, 1e6).rate().reason());
        assertEquals(NoResultReason.NO_RATE_IN_RANGE, RateOfReturn.of(-1e6, 1).rate().reason());
        assertTrue(RateOfReturn.all(0, 0).isEmpty());
    }

    @Test
    void staysFiniteOverTheLongestHorizon() {
        double[] alternating = new double[41];
        for (int year = 0; year < 41; year++) {
            alternating[year] = (year % 2 == 0 ? -1 : 1) * 1e12;
        }
        assertEquals(NoResultReason.NO_RATE_IN_RANGE, RateOfReturn.of(alternating).rate().reason());
        double[] late = new double[41];
        late[0] = -1;
        late[40] = 1e100;
        assertEquals(Math.pow(1e100, 1 / 40.0) - 1, RateOfReturn.of(late).rate().value(), 1e-9);
    }

    @Test
    void refusesFlowsOutsideItsRange() {
        assertThrows(IllegalArgumentException.class, () -> RateOfReturn.of(-1, Double.NaN, 3));
        double[] oneYearTooMany = new double[42];
        oneYearTooMany[0] = -1;
        oneYearTooMany[41] = 1;
        assertThrows(IllegalArgumentException.class, () -> RateOfReturn.of(oneYearTooMany));
        assertThrows(IllegalArgumentException.class, () -> RateOfReturn.all());
    }

    private static double[] times(double[] flows, double growthFactor) {
        double[] product = new double[flows.length + 1];
        for (int year = 0; year < flows.length; year++) {
            product[year] += flows[year];
            product[year + 1] -= flows[year] * growthFactor;
        }
        return product;
    }
}
