// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.guard.NoResultReason;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class RetrofitPaybackTest {

    private static final YearlyUse NOTHING = new YearlyUse(0, 0, 0, 0);
    /** One unit of currency per kilogram, cubic metre and visit, so that a use reads as money. */
    private static final Prices UNIT = new Prices(1, 1, 1, 1, 0, 0.05);

    @ParameterizedTest
    @CsvFileSource(resources = "/payback/cross-conversion.csv", useHeadersInDisplayName = true)
    void agreesWithASpreadsheet(double growthPercent, String measure, String expected, String tolerance) {
        Prices prices = new Prices(1, 0, 0, 0, growthPercent / 100, 0.05);
        Retrofit retrofit = new Retrofit(new YearlyUse(50, 140, 0, 0), new YearlyUse(30, 50, 0, 0), 400, 50, 10);
        Printed.assertAgrees(expected, tolerance, measure(RetrofitPayback.of(retrofit, prices), measure));
    }

    @Test
    void readsEveryRow() {
        assertEquals(8, Rows.in("/payback/cross-conversion.csv"));
    }

    @Test
    void splitsTheSavingByItem() {
        YearlyCost saving = RetrofitPayback.of(new Retrofit(new YearlyUse(90, 400, 17_000, 1),
                new YearlyUse(60, 170, 12_000, 2), 350, 0, 10), new Prices(0.5, 2, 3, 40, 0.04, 0.05)).yearlySaving();
        assertEquals(230 * 0.5, saving.salt(), 1e-12);
        assertEquals(5 * 2, saving.water(), 1e-12);
        assertEquals(5 * 3, saving.sewer(), 1e-12);
        assertEquals(-40, saving.service(), 1e-12);
        assertEquals(115 + 10 + 15 - 40, saving.total(), 1e-12);
    }

    @Test
    void listsTheFlowsOfEveryYear() {
        RetrofitPayback payback = RetrofitPayback.of(
                new Retrofit(new YearlyUse(50, 100, 0, 0), NOTHING, 350, 50, 3), new Prices(1, 1, 1, 1, 0.1, 0.05));
        assertEquals(300, payback.investment());
        assertEquals(4, payback.cashFlows().size());
        assertEquals(-300, payback.cashFlows().get(0));
        assertEquals(100 * 1.1 * 1.1, payback.cashFlows().get(3), 1e-9);
        assertThrows(UnsupportedOperationException.class, () -> payback.cashFlows().add(1.0));
    }

    @Test
    void hasNoPaybackWhereTheMeterUsesMore() {
        RetrofitPayback payback = RetrofitPayback.of(
                new Retrofit(new YearlyUse(40, 100, 0, 0), new YearlyUse(60, 150, 0, 0), 350, 0, 10), UNIT);
        assertEquals(-50, payback.yearlySaving().total());
        assertEquals(NoResultReason.NOTHING_SAVED, payback.simplePaybackYears().reason());
        assertEquals(NoResultReason.NOTHING_SAVED, payback.discountedPaybackYears().reason());
        assertEquals(NoResultReason.NOTHING_SAVED, payback.adjustedRateOfReturn().reason());
        assertEquals(NoResultReason.NO_SIGN_CHANGE, payback.rateOfReturn().rate().reason());
        assertFalse(payback.rateOfReturn().unique());
        assertTrue(payback.netPresentValue() < -350);
        assertTrue(payback.savingsToInvestmentRatio().value() < 0);
    }

    @Test
    void hasNothingToPayBackWhereTheRebateCoversTheCost() {
        RetrofitPayback payback = RetrofitPayback.of(
                new Retrofit(new YearlyUse(60, 150, 0, 0), NOTHING, 350, 350, 10), UNIT);
        assertEquals(NoResultReason.NO_INVESTMENT, payback.simplePaybackYears().reason());
        assertEquals(NoResultReason.NO_INVESTMENT, payback.discountedPaybackYears().reason());
        assertEquals(NoResultReason.NO_INVESTMENT, payback.savingsToInvestmentRatio().reason());
        assertEquals(NoResultReason.NO_INVESTMENT, payback.adjustedRateOfReturn().reason());
        assertEquals(NoResultReason.NO_INVESTMENT, payback.rateOfReturn().rate().reason());
        assertTrue(payback.netPresentValue() > 0);
    }

    @Test
    void agreesWithItselfWhetherTheChangeIsWorthIt() {
        int worth = 0;
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            Prices prices = new Prices(random.nextDouble(), random.nextDouble() * 3, random.nextDouble() * 3, 50,
                    0.1 * random.nextDouble(), 0.1 * random.nextDouble());
            RetrofitPayback payback = RetrofitPayback.of(new Retrofit(use(random, 500), use(random, 250),
                    100 + 900 * random.nextDouble(), 100 * random.nextDouble(), 1 + random.nextInt(40)), prices);
            boolean worthIt = payback.netPresentValue() > 0;
            worth += worthIt ? 1 : 0;
            String at = "seed " + seed;
            assertEquals(worthIt, payback.discountedPaybackYears().exists(), at);
            assertEquals(worthIt, payback.savingsToInvestmentRatio().value() > 1, at);
            assertEquals(worthIt, payback.rateOfReturn().rate().asOptional().orElse(-1)
                    > prices.discountSharePerYear(), at);
            assertEquals(worthIt, payback.adjustedRateOfReturn().asOptional().orElse(-1)
                    > prices.discountSharePerYear(), at);
        }
        assertTrue(worth > 20 && worth < 180, "both outcomes must have been seen, worth it " + worth);
    }

    @ParameterizedTest
    @CsvSource({"0, 0.5, 1", "1e9, 0.5, 40", "1e9, -0.2, 40", "0.01, 0, 1"})
    void staysFiniteInTheCornersOfItsRange(double cost, double growth, int years) {
        YearlyUse most = new YearlyUse(1e9, 1e9, 1e9, 1e9);
        for (double discount : new double[] {Prices.MIN_DISCOUNT_SHARE_PER_YEAR, Prices.MAX_DISCOUNT_SHARE_PER_YEAR}) {
            Prices dear = new Prices(1e9, 1e9, 1e9, 1e9, growth, discount);
            Prices free = new Prices(0, 0, 0, 0, growth, discount);
            for (double rebate : new double[] {0, cost}) {
                assertTrue(Double.isFinite(RetrofitPayback.of(
                        new Retrofit(most, NOTHING, cost, rebate, years), dear).netPresentValue()));
                assertTrue(Double.isFinite(RetrofitPayback.of(
                        new Retrofit(NOTHING, most, cost, rebate, years), dear).netPresentValue()));
                assertEquals(rebate - cost, RetrofitPayback.of(
                        new Retrofit(NOTHING, most, cost, rebate, years), free).netPresentValue());
            }
        }
    }

    @Test
    void refusesWhatLiesOutsideItsRange() {
        assertThrows(IllegalArgumentException.class, () -> new Retrofit(NOTHING, NOTHING, -1, 0, 10));
        assertThrows(IllegalArgumentException.class, () -> new Retrofit(NOTHING, NOTHING, 100, 101, 10));
        assertThrows(IllegalArgumentException.class, () -> new Retrofit(NOTHING, NOTHING, 100, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Retrofit(NOTHING, NOTHING, 100, 0, 41));
        assertThrows(NullPointerException.class, () -> new Retrofit(null, NOTHING, 100, 0, 10));
        assertThrows(IllegalArgumentException.class, () -> new YearlyUse(-1, 0, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new YearlyUse(0, 0, Double.NaN, 0));
        assertThrows(IllegalArgumentException.class, () -> new YearlyCost(Double.POSITIVE_INFINITY, 0, 0, 0));
    }

    private static YearlyUse use(Random random, double mostSaltKilograms) {
        return new YearlyUse(50, mostSaltKilograms * random.nextDouble(), 20_000 * random.nextDouble(), 0);
    }

    private static double measure(RetrofitPayback payback, String measure) {
        return switch (measure) {
            case "netPresentValue" -> payback.netPresentValue();
            case "rateOfReturnPercent" -> payback.rateOfReturn().rate().value() * 100;
            case "savingsToInvestmentRatio" -> payback.savingsToInvestmentRatio().value();
            case "adjustedRateOfReturnPercent" -> payback.adjustedRateOfReturn().value() * 100;
            case "simplePaybackYears" -> payback.simplePaybackYears().value();
            case "discountedPaybackYears" -> payback.discountedPaybackYears().value();
            default -> throw new IllegalArgumentException(measure);
        };
    }
}
