// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.Rows;
import dev.brinebook.guard.NoResultReason;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class AgainstBaselineTest {

    private static final Alternative AS_FOUND = Alternatives.of(Outlay.NONE, 240);
    private static final Prices NO_GROWTH = Alternatives.prices(0, 0.05);

    /** The rows of a conversion hold here too where the life ends with the horizon, so that nothing is left. */
    @ParameterizedTest
    @CsvFileSource(resources = "/payback/cross-conversion.csv", useHeadersInDisplayName = true)
    void agreesWithPublishedAndCrossCheckedMeasures(double growthPercent, String measure, String expected,
            String tolerance) {
        AgainstBaseline worth = AgainstBaseline.of(Alternatives.of(new Outlay(400, 50, 10), 150), AS_FOUND, 10,
                Alternatives.prices(growthPercent / 100, 0.05));
        double actual = switch (measure) {
            case "netPresentValue" -> worth.netPresentValue();
            case "rateOfReturnPercent" -> worth.rateOfReturn().rate().value() * 100;
            case "savingsToInvestmentRatio" -> worth.savingsToInvestmentRatio().value();
            case "adjustedRateOfReturnPercent" -> worth.adjustedRateOfReturn().value() * 100;
            case "simplePaybackYears" -> worth.simplePaybackYears().value();
            case "discountedPaybackYears" -> worth.discountedPaybackYears().value();
            default -> throw new IllegalArgumentException(measure);
        };
        Printed.assertAgrees(expected, tolerance, actual);
    }

    /** By hand: 400 less 50 today, and 240 less 150 a year. */
    @Test
    void reportsInvestmentAndSaving() {
        AgainstBaseline worth = worth(new Outlay(400, 50, 10));
        assertEquals(350, worth.investment());
        assertEquals(90, worth.firstYearSaving().total());
        assertTrue(worth.rateOfReturn().unique());
        assertEquals(List.of(-350.0, 90.0, 90.0), worth.cashFlows().subList(0, 3));
    }

    /** Source: closed forms; savings of equal years over what is invested, and that ratio's root. */
    @Test
    void agreesWithTheClosedFormsOfItsRatios() {
        AgainstBaseline worth = worth(new Outlay(350, 0, 10));
        double ratio = 90 * (1 - Math.pow(1.05, -10)) / 0.05 / 350;
        assertEquals(ratio, worth.savingsToInvestmentRatio().value(), 1e-12);
        assertEquals(1.05 * Math.pow(ratio, 0.1) - 1, worth.adjustedRateOfReturn().value(), 1e-12);
        assertEquals(350 * (ratio - 1), worth.netPresentValue(), 1e-9);
    }

    /** By hand: 400 of 800 are left after 10 of 20 years; the ratio counts it, but nobody is paid back by it earlier. */
    @Test
    void countsResidualValueAtTheHorizon() {
        AgainstBaseline worth = worth(new Outlay(800, 0, 20));
        double left = 400 / Math.pow(1.05, 10);
        double saved = 90 * (1 - Math.pow(1.05, -10)) / 0.05;
        assertEquals(saved - 800 + left, worth.netPresentValue(), 1e-9);
        assertEquals(saved / (800 - left), worth.savingsToInvestmentRatio().value(), 1e-12);
        assertEquals(10, worth.discountedPaybackYears().value(), "694.96 saved in ten years, the rest at their end");
        assertEquals(4.4377, worth(new Outlay(350, 0, 20)).discountedPaybackYears().value(), 5e-5);
    }

    /** By hand, without discount: 100 a year pay 350 back in 3.5 years; the new one of year 4 opens the account again. */
    @Test
    void reportsTheFirstPaybackBeforeAReplacement() {
        AgainstBaseline worth = AgainstBaseline.of(Alternatives.of(new Outlay(350, 0, 4), 140), AS_FOUND, 6,
                Alternatives.prices(0, 0));
        assertEquals(3.5, worth.discountedPaybackYears().value(), 1e-12);
        assertEquals(6 * 100 - 350 - 350 + 175, worth.netPresentValue(), 1e-9);
    }

    /** By hand, without discount: 500 more today, 100 saved a year, and no new one of 300 for the old after year 3. */
    @Test
    void paysBackAtTheEndOfTheYearInWhichAReplacementIsSpared() {
        Alternative old = Alternatives.of(new Outlay(300, 0, 3), 240);
        Alternative lasting = Alternatives.of(new Outlay(800, 0, 6), 140);
        AgainstBaseline worth = AgainstBaseline.of(lasting, old, 6, Alternatives.prices(0, 0));
        assertEquals(List.of(-500.0, 100.0, 100.0, 400.0, 100.0, 100.0, 100.0), worth.cashFlows());
        assertEquals(3, worth.discountedPaybackYears().value());
        assertEquals(5, worth.simplePaybackYears().value(), 1e-12);
        assertEquals(600.0 / 200, worth.savingsToInvestmentRatio().value(), 1e-12);
    }

    /** 500 more today and two spared at 400: less is invested in all, so no ratio; but a rate of return and a payback. */
    @Test
    void hasARateWhereSparedReplacementsAreWorthMoreThanThePurchase() {
        Alternative old = Alternatives.of(new Outlay(400, 0, 2), 240);
        Alternative lasting = Alternatives.of(new Outlay(900, 0, 6), 240);
        AgainstBaseline worth = AgainstBaseline.of(lasting, old, 6, Alternatives.prices(0, 0));
        assertEquals(NoResultReason.NO_INVESTMENT, worth.savingsToInvestmentRatio().reason());
        assertEquals(NoResultReason.NO_INVESTMENT, worth.adjustedRateOfReturn().reason());
        assertEquals(NoResultReason.NOTHING_SAVED, worth.simplePaybackYears().reason());
        assertEquals(4, worth.discountedPaybackYears().value());
        // -500 + 400 / (1 + r)^2 + 400 / (1 + r)^4 = 0: a square in x = (1 + r)^-2, x = (-1 + sqrt(6)) / 2
        assertEquals(1 / Math.sqrt((-1 + Math.sqrt(6)) / 2) - 1, worth.rateOfReturn().rate().value(), 1e-9);
    }

    /** A loan does not make the purchase cheaper: both paybacks stay where it is lent at the discount rate. */
    @Test
    void isNotFlatteredByALoan() {
        AgainstBaseline atOnce = worth(new Outlay(350, 0, 10));
        AgainstBaseline half = worth(new Outlay(350, 0, 10, 0.5, 5, 0.05));
        AgainstBaseline all = worth(new Outlay(350, 0, 10, 1, 5, 0.05));
        for (AgainstBaseline lent : List.of(half, all)) {
            assertEquals(350, lent.investment());
            assertEquals(atOnce.simplePaybackYears().value(), lent.simplePaybackYears().value(), 1e-12);
            assertEquals(atOnce.discountedPaybackYears().value(), lent.discountedPaybackYears().value(), 1e-9);
            assertEquals(atOnce.netPresentValue(), lent.netPresentValue(), 1e-9);
            assertEquals(atOnce.savingsToInvestmentRatio().value(), lent.savingsToInvestmentRatio().value(), 1e-9);
        }
        assertTrue(half.rateOfReturn().rate().value() > atOnce.rateOfReturn().rate().value(), "of one's own money");
        assertEquals(NoResultReason.NO_INVESTMENT, all.rateOfReturn().rate().reason(), "no money of one's own");
    }

    /** The dearer loan costs what its payments are worth: 350 at 10 % over 5 years, at 5 %. */
    @Test
    void countsADearLoanAtItsWorthToday() {
        double today = 350 * (0.1 / (1 - Math.pow(1.1, -5))) * (1 - Math.pow(1.05, -5)) / 0.05;
        AgainstBaseline worth = worth(new Outlay(350, 0, 10, 1, 5, 0.1));
        double saved = 90 * (1 - Math.pow(1.05, -10)) / 0.05;
        assertEquals(saved / today, worth.savingsToInvestmentRatio().value(), 1e-12);
        assertEquals(Payback.discountedYears(today, 0.05, CashFlows.growing(90, 0, 10)).value(),
                worth.discountedPaybackYears().value(), 1e-12);
    }

    @Test
    void investsNothingAgainstItself() {
        Alternative one = Alternatives.of(new Outlay(1_234.56, 78.9, 7, 0.3, 4, 0.07), 321);
        AgainstBaseline worth = AgainstBaseline.of(one, one, 10, NO_GROWTH);
        assertEquals(0, worth.netPresentValue());
        assertEquals(0, worth.investment());
        assertEquals(NoResultReason.NO_INVESTMENT, worth.simplePaybackYears().reason());
        assertEquals(NoResultReason.NO_INVESTMENT, worth.discountedPaybackYears().reason());
        assertEquals(NoResultReason.NO_INVESTMENT, worth.rateOfReturn().rate().reason());
        assertEquals(0, worth.rateOfReturn().signChanges());
        assertEquals(NoResultReason.NO_INVESTMENT, worth.savingsToInvestmentRatio().reason());
        assertTrue(worth.cashFlows().stream().allMatch(flow -> flow == 0));
    }

    /** The same thing once paid and once lent at the discount rate differs by rounding only, which is no investment. */
    @Test
    void takesRoundingForNoInvestment() {
        Alternative paid = Alternatives.of(new Outlay(333.33, 0, 10), 150);
        Alternative lent = Alternatives.of(new Outlay(333.33, 0, 10, 0.7, 7, 0.05), 150);
        for (var pair : List.of(List.of(paid, lent), List.of(lent, paid))) {
            AgainstBaseline worth = AgainstBaseline.of(pair.get(0), pair.get(1), 10, NO_GROWTH);
            assertEquals(0, worth.netPresentValue(), 1e-9);
            assertEquals(NoResultReason.NO_INVESTMENT, worth.savingsToInvestmentRatio().reason());
            assertEquals(NoResultReason.NO_INVESTMENT, worth.discountedPaybackYears().reason());
        }
    }

    @Test
    void saysWhyThereIsNoPayback() {
        AgainstBaseline dear = worth(new Outlay(5_000, 0, 10));
        assertEquals(NoResultReason.NOT_WITHIN_HORIZON, dear.discountedPaybackYears().reason());
        assertTrue(dear.netPresentValue() < 0);
        AgainstBaseline loss = AgainstBaseline.of(Alternatives.of(new Outlay(350, 0, 10), 250), AS_FOUND, 10, NO_GROWTH);
        assertEquals(NoResultReason.NOTHING_SAVED, loss.simplePaybackYears().reason());
        assertEquals(NoResultReason.NOTHING_SAVED, loss.discountedPaybackYears().reason());
        assertEquals(NoResultReason.NO_SIGN_CHANGE, loss.rateOfReturn().rate().reason());
        assertEquals(NoResultReason.NOTHING_SAVED, loss.adjustedRateOfReturn().reason());
    }

    /** Nothing is paid today: 350 lent at 5 % for two years are paid back at 188.23 a year, 90 of it saved. */
    @Test
    void reportsTheRateOfLaterPayments() {
        AgainstBaseline lent = worth(new Outlay(350, 0, 10, 1, 2, 0.05));
        assertEquals(0, lent.cashFlows().get(0));
        assertEquals(90 - 188.23, lent.cashFlows().get(1), 0.005);
        double[] flows = lent.cashFlows().stream().mapToDouble(flow -> flow).toArray();
        assertEquals(0, CashFlows.netPresentValue(lent.rateOfReturn().rate().value(), flows), 1e-6);
    }

    /** Cheaper today and dearer later is borrowing: a rate of it would be read the wrong way round. */
    @Test
    void reportsNoRateOfBorrowing() {
        Alternative cheap = Alternatives.of(new Outlay(100, 0, 10), 240);
        Alternative dear = Alternatives.of(new Outlay(450, 0, 10), 150);
        AgainstBaseline worth = AgainstBaseline.of(cheap, dear, 10, NO_GROWTH);
        assertEquals(-350, worth.investment());
        assertEquals(NoResultReason.NO_INVESTMENT, worth.rateOfReturn().rate().reason());
        assertEquals(1, worth.rateOfReturn().signChanges());
        assertEquals(NoResultReason.NO_INVESTMENT, worth.simplePaybackYears().reason());
        Printed.assertAgrees("-344.956", null, worth.netPresentValue());
    }

    /** By hand: -100, 40, 40 - 100, 40, 40: paying, receiving, paying, receiving. */
    @Test
    void flagsRatesThatMayBeSeveral() {
        AgainstBaseline worth = AgainstBaseline.of(Alternatives.of(new Outlay(100, 0, 2), 200), AS_FOUND, 4, NO_GROWTH);
        assertEquals(List.of(-100.0, 40.0, -60.0, 40.0, 40.0), worth.cashFlows());
        assertEquals(3, worth.rateOfReturn().signChanges());
        assertFalse(worth.rateOfReturn().unique());
    }

    @Test
    void readsEveryRow() {
        assertEquals(8, Rows.in("/payback/cross-conversion.csv"));
    }

    @Test
    void refusesWhatLiesOutsideItsRange() {
        assertThrows(IllegalArgumentException.class, () -> AgainstBaseline.of(AS_FOUND, AS_FOUND, 0, NO_GROWTH));
        assertThrows(IllegalArgumentException.class, () -> AgainstBaseline.of(AS_FOUND, AS_FOUND, 41, NO_GROWTH));
        assertThrows(NullPointerException.class, () -> AgainstBaseline.of(AS_FOUND, null, 10, NO_GROWTH));
        assertThrows(IllegalArgumentException.class,
                () -> Payback.discountedYears(1, 0.05, new double[] {1, 2}, new double[] {1}));
    }

    private static AgainstBaseline worth(Outlay outlay) {
        return AgainstBaseline.of(Alternatives.of(outlay, 150), AS_FOUND, 10, NO_GROWTH);
    }
}
