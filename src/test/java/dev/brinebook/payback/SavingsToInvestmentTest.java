// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import java.util.Random;
import org.apache.poi.ss.formula.functions.FinanceLib;
import org.apache.poi.ss.formula.functions.Irr;
import org.junit.jupiter.api.Test;

/** The published values of both measures are rows of cross-conversion.csv. */
class SavingsToInvestmentTest {

    /** Source: Apache POI 5.5.1: put by at d, the savings grow to one sum; its rate of return is the adjusted one. */
    @Test
    void isTheRateOfReturnOfSavingsPutByAtTheDiscountRate() {
        for (int seed = 0; seed < 50; seed++) {
            Random random = new Random(seed);
            double[] flows = Flows.ordinary(random);
            int years = flows.length - 1;
            double rate = 0.01 + 0.1 * random.nextDouble();
            double presentValue = FinanceLib.npv(rate, Flows.savings(flows));
            double[] putBy = new double[flows.length];
            putBy[0] = flows[0];
            putBy[years] = FinanceLib.fv(rate, years, 0, -presentValue, false);
            OptionalResult ratio = SavingsToInvestment.ratio(-flows[0], presentValue);
            double adjusted = SavingsToInvestment.adjustedRateOfReturn(ratio, rate, years).value();
            assertEquals(Irr.irr(putBy, adjusted + 0.01), adjusted, 1e-7, "seed " + seed);
        }
    }

    @Test
    void isTheDiscountRateItselfWhereSavingsJustPay() {
        assertEquals(0.05, SavingsToInvestment.adjustedRateOfReturn(OptionalResult.of(1), 0.05, 10).value(), 1e-15);
    }

    @Test
    void saysWhyThereIsNoNumber() {
        OptionalResult none = SavingsToInvestment.ratio(0, 100);
        assertEquals(NoResultReason.NO_INVESTMENT, none.reason());
        assertEquals(NoResultReason.NO_INVESTMENT, SavingsToInvestment.adjustedRateOfReturn(none, 0.05, 10).reason());
        OptionalResult loss = SavingsToInvestment.ratio(100, -50);
        assertEquals(-0.5, loss.value());
        assertEquals(NoResultReason.NOTHING_SAVED, SavingsToInvestment.adjustedRateOfReturn(loss, 0.05, 10).reason());
        assertEquals(NoResultReason.NOTHING_SAVED,
                SavingsToInvestment.adjustedRateOfReturn(OptionalResult.of(0), 0.05, 10).reason());
    }

    @Test
    void refusesWhatLiesOutsideItsRange() {
        assertThrows(IllegalArgumentException.class, () -> SavingsToInvestment.ratio(-1, 100));
        assertThrows(IllegalArgumentException.class, () -> SavingsToInvestment.ratio(1, Double.NaN));
        assertThrows(IllegalArgumentException.class,
                () -> SavingsToInvestment.adjustedRateOfReturn(OptionalResult.of(1), 0.05, 0));
        assertThrows(IllegalArgumentException.class,
                () -> SavingsToInvestment.adjustedRateOfReturn(OptionalResult.of(1), -1, 10));
    }
}
