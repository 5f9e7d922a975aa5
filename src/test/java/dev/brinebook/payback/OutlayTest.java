// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import java.util.Random;
import org.apache.poi.ss.formula.functions.FinanceLib;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

class OutlayTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/payback/worked-outlay.csv", useHeadersInDisplayName = true)
    void agreesWithPaymentsByHand(ArgumentsAccessor row) {
        Outlay outlay = new Outlay(row.getDouble(0), row.getDouble(1), row.getInteger(2), row.getDouble(3),
                row.getInteger(4), row.getDouble(5) / 100);
        double[] payments = outlay.payments(row.getInteger(6), row.getDouble(7) / 100);
        String[] expected = row.getString(8).split(" ");
        assertEquals(expected.length, payments.length);
        for (int year = 0; year < payments.length; year++) {
            String tolerance = expected[year].contains(".") && row.getString(9) == null ? null : "1e-9";
            Printed.assertAgrees(expected[year], tolerance, payments[year]);
        }
    }

    @Test
    void readsEveryRow() {
        assertEquals(13, Rows.in("/payback/worked-outlay.csv"));
    }

    /** Source: Apache POI 5.5.1, FinanceLib.pmt. */
    @Test
    void paysALoanBackAsASpreadsheetDoes() {
        for (int seed = 0; seed < 100; seed++) {
            Random random = new Random(seed);
            int years = 1 + random.nextInt(Outlay.MAX_LOAN_YEARS);
            double interest = seed % 10 == 0 ? 0 : 0.3 * random.nextDouble();
            double cost = 100 + 5_000 * random.nextDouble();
            double share = random.nextDouble();
            double expected = FinanceLib.pmt(interest, years, -cost * share, 0, false);
            assertEquals(expected, new Outlay(cost, 0, 10, share, years, interest).yearlyPayment(), 1e-9 * expected,
                    "seed " + seed);
        }
    }

    /** Source: Apache POI 5.5.1, FinanceLib.fv: a loan grown with interest, less its payments grown with theirs. */
    @Test
    void paysAtTheHorizonWhatASpreadsheetSaysIsStillOwed() {
        for (int seed = 0; seed < 50; seed++) {
            Random random = new Random(seed);
            int horizon = 1 + random.nextInt(15);
            int years = horizon + 1 + random.nextInt(15);
            double interest = seed % 10 == 0 ? 0 : 0.2 * random.nextDouble();
            double yearly = FinanceLib.pmt(interest, years, -3_000, 0, false);
            double owed = -FinanceLib.fv(interest, horizon, yearly, -3_000, false);
            double[] payments = new Outlay(3_000, 0, 10, 1, years, interest).purchase(horizon);
            assertEquals(yearly + Math.abs(owed), payments[horizon], 1e-8, "seed " + seed);
            assertEquals(horizon == 1 ? payments[1] : yearly, payments[1], 1e-9, "seed " + seed);
        }
    }

    /** Money of the day at a nominal rate and today's money at a real one give the same present value: the handbook's rule. */
    @Test
    void isWorthTheSameInTheMoneyOfTheDayAndInTodays() {
        for (int seed = 0; seed < 100; seed++) {
            Random random = new Random(seed);
            Outlay outlay = new Outlay(1_000, 200 * random.nextDouble(), 1 + random.nextInt(25));
            int horizon = 1 + random.nextInt(40);
            double inflation = 0.1 * random.nextDouble();
            double real = 0.08 * random.nextDouble();
            double nominal = NominalDiscount.fromReal(real, inflation);
            assertEquals(CashFlows.netPresentValue(real, outlay.payments(horizon, 0)),
                    CashFlows.netPresentValue(nominal, outlay.payments(horizon, inflation)), 1e-8, "seed " + seed);
        }
    }

    /** Borrowing at the rate at which money is discounted neither gains nor loses, even beyond the horizon. */
    @Test
    void isWorthTheSameWhenFinancedAtTheDiscountRate() {
        for (int seed = 0; seed < 100; seed++) {
            Random random = new Random(seed);
            double rate = seed % 10 == 0 ? 0 : 0.15 * random.nextDouble();
            int life = 1 + random.nextInt(25);
            int horizon = 1 + random.nextInt(30);
            Outlay financed = new Outlay(2_000, 300, life, random.nextDouble(), 1 + random.nextInt(30), rate);
            assertEquals(CashFlows.netPresentValue(rate, new Outlay(2_000, 300, life).payments(horizon, 0.03)),
                    CashFlows.netPresentValue(rate, financed.payments(horizon, 0.03)), 1e-8, "seed " + seed);
        }
    }

    /** Source: arithmetic; interest too small to count leaves a thirtieth a year, and not a division by zero. */
    @Test
    void takesTheSmallestInterest() {
        for (double interest : new double[] {Double.MIN_VALUE, 1e-300, 1e-17, 1e-15}) {
            assertEquals(100, new Outlay(3_000, 0, 10, 1, 30, interest).yearlyPayment(), 1e-9, "interest " + interest);
        }
    }

    @Test
    void costsNothingWhereNothingIsBought() {
        assertArrayEquals(new double[41], Outlay.NONE.payments(40, 0.1), 0);
        assertEquals(0, Outlay.NONE.investment());
    }

    @Test
    void refusesWhatLiesOutsideItsRange() {
        assertThrows(IllegalArgumentException.class, () -> new Outlay(-1, 0, 10));
        assertThrows(IllegalArgumentException.class, () -> new Outlay(1.1e9, 0, 10));
        assertThrows(IllegalArgumentException.class, () -> new Outlay(Double.NaN, 0, 10));
        assertThrows(IllegalArgumentException.class, () -> new Outlay(100, 101, 10));
        assertThrows(IllegalArgumentException.class, () -> new Outlay(100, -1, 10));
        assertThrows(IllegalArgumentException.class, () -> new Outlay(100, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Outlay(100, 0, 41));
        assertThrows(IllegalArgumentException.class, () -> new Outlay(100, 0, 10, 1.1, 5, 0.05));
        assertThrows(IllegalArgumentException.class, () -> new Outlay(100, 0, 10, 0.5, 0, 0.05));
        assertThrows(IllegalArgumentException.class, () -> new Outlay(100, 0, 10, 0.5, 31, 0.05));
        assertThrows(IllegalArgumentException.class, () -> new Outlay(100, 0, 10, 0.5, 5, 0.6));
        Outlay outlay = new Outlay(100, 0, 10);
        assertThrows(IllegalArgumentException.class, () -> outlay.payments(0, 0.04));
        assertThrows(IllegalArgumentException.class, () -> outlay.payments(41, 0.04));
        assertThrows(IllegalArgumentException.class, () -> outlay.payments(10, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> outlay.payments(10, 0.6));
    }
}
