package dev.brinebook.payback;

import dev.brinebook.guard.Figure;
import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoAnswer;

/** Measures of the whole horizon that, unlike a payback, also count what is saved after the cost is earned back. */
public final class SavingsToInvestment {

    private SavingsToInvestment() {
    }

    /**
     * Savings in today's worth per unit invested; worth doing above 1.
     * <pre>SIR = PV / I</pre>
     * PV present value of the savings, any currency; I investment, same currency, 0 or above.
     * <p>None when nothing is invested. Zero or negative where the savings are.
     * <p>Source: [CFR-436] section 436.21, savings-to-investment ratio
     */
    public static Figure ratio(double investment, double presentValueOfSavings) {
        Guard.finite(presentValueOfSavings, "presentValueOfSavings");
        return Guard.notNegative(investment, "investment") == 0
                ? Figure.none(NoAnswer.NO_INVESTMENT) : Figure.of(presentValueOfSavings / investment);
    }

    /**
     * The yearly return over the horizon when savings are put by at the discount rate. Unlike the internal rate of
     * return there is never more than one.
     * <pre>AIRR = (1 + d) SIR^(1/N) - 1</pre>
     * SIR savings-to-investment ratio, above 0; d discount rate, share per year; N horizon, years.
     * <p>None with the ratio's reason, or when the ratio is zero or less.
     * <p>Source: [CFR-436] section 436.22, adjusted internal rate of return; also [NIST-HB135]
     */
    public static Figure adjustedRateOfReturn(Figure ratio, double rateSharePerYear, int years) {
        Guard.within(rateSharePerYear, CashFlows.MIN_RATE_SHARE_PER_YEAR, CashFlows.MAX_RATE_SHARE_PER_YEAR,
                "rateSharePerYear");
        Guard.within(years, 1, CashFlows.MAX_YEARS, "years");
        if (ratio.exists() && !(ratio.value() > 0)) {
            return Figure.none(NoAnswer.NOTHING_SAVED);
        }
        return ratio.map(sir -> (1 + rateSharePerYear) * StrictMath.pow(sir, 1.0 / years) - 1);
    }
}
