package dev.brinebook.payback;

import dev.brinebook.guard.Guard;

/** What an alternative costs over a horizon, all told in today's worth, and as an equal amount a year. */
public final class LifeCycleCost {

    private LifeCycleCost() {
    }

    /**
     * Present value of all that is paid.
     *
     * <pre>LCC = Σ P_t / (1 + d)^t</pre>
     *
     * <p>P_t payments of year t, today being 0; d discount rate, share per year.
     * Source: [NIST-HB135] life-cycle cost; [CFR-436] section 436.19.
     */
    public static double of(Alternative alternative, int horizonYears, Prices prices) {
        return CashFlows.netPresentValue(prices.discountSharePerYear(), alternative.payments(horizonYears, prices));
    }

    /**
     * The equal amount at the end of each year that is worth as much today.
     *
     * <pre>A = PV · UCR(d, N)</pre>
     *
     * <p>PV present value; UCR {@link CashFlows#uniformCapitalRecovery}; d discount rate; N horizon, years.
     * Source: [NIST-HB135] uniform capital recovery.
     */
    public static double annualEquivalent(double presentValue, int horizonYears, double discountSharePerYear) {
        Guard.finite(presentValue, "presentValue");
        Guard.within(discountSharePerYear, 0, Prices.MAX_DISCOUNT_SHARE_PER_YEAR, "discountSharePerYear");
        return presentValue * CashFlows.uniformCapitalRecovery(discountSharePerYear, horizonYears);
    }
}
