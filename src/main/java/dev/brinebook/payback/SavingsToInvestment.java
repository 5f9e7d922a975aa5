// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;

/** Measures of the whole horizon that, unlike a payback, include the savings after the cost is paid back. */
public final class SavingsToInvestment {

    private SavingsToInvestment() {
    }

    /**
     * Savings-to-investment ratio; an investment pays above 1.
     *
     * <pre>SIR = PV / I</pre>
     *
     * <p>PV present value of the savings, any currency; I investment, same currency.
     * Validity: I of 0 or more; none when nothing is invested. Zero or negative where the savings are.
     * Source: [CFR-436] section 436.21, savings-to-investment ratio.
     * Deviation: none.
     */
    public static OptionalResult ratio(double investment, double presentValueOfSavings) {
        Guard.finite(presentValueOfSavings, "presentValueOfSavings");
        return Guard.notNegative(investment, "investment") == 0
                ? OptionalResult.none(NoResultReason.NO_INVESTMENT) : OptionalResult.of(presentValueOfSavings / investment);
    }

    /**
     * Adjusted internal rate of return: the yearly return over the horizon when savings are reinvested at the discount rate.
     * Unlike the internal rate of return there is never more than one.
     *
     * <pre>AIRR = (1 + d) SIR^(1/N) - 1</pre>
     *
     * <p>AIRR share per year; SIR savings-to-investment ratio; d discount rate, share per year; N horizon, years.
     * Validity: SIR above 0; none with the ratio's reason, or when the ratio is zero or less.
     * Source: [CFR-436] section 436.22, adjusted internal rate of return; also [NIST-HB135].
     * Deviation: none.
     */
    public static OptionalResult adjustedRateOfReturn(OptionalResult ratio, double rateSharePerYear, int years) {
        Guard.within(rateSharePerYear, CashFlows.MIN_RATE_SHARE_PER_YEAR, CashFlows.MAX_RATE_SHARE_PER_YEAR,
                "rateSharePerYear");
        Guard.within(years, 1, CashFlows.MAX_YEARS, "years");
        if (ratio.exists() && !(ratio.value() > 0)) {
            return OptionalResult.none(NoResultReason.NOTHING_SAVED);
        }
        return ratio.map(sir -> (1 + rateSharePerYear) * StrictMath.pow(sir, 1.0 / years) - 1);
    }
}
