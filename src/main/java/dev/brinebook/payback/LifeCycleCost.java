// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.guard.Guard;
import java.util.function.IntToDoubleFunction;

/** Total cost of an alternative over a horizon, in today's worth, and as an equal amount a year. */
public final class LifeCycleCost {

    private LifeCycleCost() {
    }

    /**
     * Present value of all payments.
     *
     * <pre>LCC = Σ P_t / (1 + d)^t</pre>
     *
     * <p>LCC life-cycle cost, P_t payments of year t, today being 0, in the currency of the prices; d discount rate, share per
     * year.
     * Validity: as {@link CashFlows#netPresentValue}.
     * Source: [NIST-HB135] life-cycle cost; [CFR-436] section 436.19.
     * Deviation: as {@link Alternative#payments}.
     */
    public static double of(Alternative alternative, int horizonYears, Prices prices) {
        return CashFlows.netPresentValue(prices.discountSharePerYear(), alternative.payments(horizonYears, prices));
    }

    /** The same, by the {@link Outlay#priceLevels} of the prices. */
    static double of(Alternative alternative, int horizonYears, Prices prices, IntToDoubleFunction priceLevels) {
        return CashFlows.netPresentValue(prices.discountSharePerYear(), alternative.payments(horizonYears, prices, priceLevels));
    }

    /**
     * The equal amount at the end of each year that is worth as much today.
     *
     * <pre>A = PV · UCR(d, N)</pre>
     *
     * <p>A amount per year, PV present value, in one currency; UCR {@link CashFlows#uniformCapitalRecovery}; d discount rate, share
     * per year; N horizon, years.
     * Validity: d from 0 to {@link Prices#MAX_DISCOUNT_SHARE_PER_YEAR}.
     * Source: [NIST-HB135] uniform capital recovery.
     * Deviation: none.
     */
    public static double annualEquivalent(double presentValue, int horizonYears, double discountSharePerYear) {
        Guard.finite(presentValue, "presentValue");
        Guard.within(discountSharePerYear, 0, Prices.MAX_DISCOUNT_SHARE_PER_YEAR, "discountSharePerYear");
        return presentValue * CashFlows.uniformCapitalRecovery(discountSharePerYear, horizonYears);
    }
}
