package dev.brinebook.payback;

import dev.brinebook.guard.Figure;
import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoAnswer;

/**
 * How many years pass until an investment is earned back. A saving of zero or less never earns it back: there is then
 * no number, with the reason, rather than a negative or infinite one.
 */
public final class Payback {

    private Payback() {
    }

    /**
     * Years until undiscounted savings of the first year's size make up the investment.
     * <pre>n = I / S</pre>
     * n simple payback, years; I investment, any currency, 0 or above; S saving of the first year, same currency.
     * <p>None when nothing is invested, nothing is saved, or n is above {@code horizonYears}, the years that all measures
     * look at: what was bought is taken to last so long.
     * <p>Source: [CFR-436] section 436.23, estimated simple payback time
     * <p>Deviation: the rule adds up the savings year by year, so that growth shortens it. Here the first year's saving
     * stands for all, the quotient that people reckon themselves; growth counts in the discounted payback.
     */
    public static Figure simpleYears(double investment, double firstYearSaving, int horizonYears) {
        Guard.within(horizonYears, 1, CashFlows.MAX_YEARS, "horizonYears");
        Guard.finite(firstYearSaving, "firstYearSaving");
        if (Guard.notNegative(investment, "investment") == 0) {
            return Figure.none(NoAnswer.NO_INVESTMENT);
        }
        if (!(firstYearSaving > 0)) {
            return Figure.none(NoAnswer.NOTHING_SAVED);
        }
        double years = investment / firstYearSaving;
        return years <= horizonYears
                ? Figure.of(years) : Figure.none(NoAnswer.NOT_WITHIN_HORIZON);
    }

    /**
     * Years until discounted savings first make up the investment.
     * <pre>n = m + (I - C(m)) / (C(m+1) - C(m)),   C(m) = sum over t from 1 to m of S(t) / (1 + d)^t</pre>
     * n discounted payback, years; m last year with C(m) below I; I investment, any currency, 0 or above; S(t) saving
     * of year t; d discount rate, share per year.
     * <p>None when nothing is invested, the savings add up to zero or less, or C stays below I for all years given.
     * <p>Source: [NIST-HB135] discounted payback
     * <p>Deviation: the handbook counts whole years. Here savings are discounted as if they fell at the end of the
     * year, and the last year is then shared out evenly, as teaching texts do: 350 invested, 90 saved and 5 % give
     * 4.44 years; whole years would give 5, and sharing out on the discounting curve itself 4.43.
     */
    public static Figure discountedYears(double investment, double rateSharePerYear, double... savings) {
        Guard.notNegative(investment, "investment");
        double total = CashFlows.netPresentValue(0, savings);
        if (investment > 0 && !(total > 0)) {
            return Figure.none(NoAnswer.NOTHING_SAVED);
        }
        return discountedYears(investment, rateSharePerYear, savings, new double[savings.length]);
    }

    /**
     * The same where money also falls at the end of a year at once: a replacement paid for, or one that is not needed, or
     * what a thing is still worth at the horizon.
     * <pre>
     * n = m + (I - C(m)) / (S(m+1) / (1 + d)^(m+1)),   at most m + 1
     * C(m) = sum over t from 1 to m of (S(t) + E(t)) / (1 + d)^t
     * </pre>
     * E(t) received at the end of year t, negative where paid; the others as above. The savings of a year are shared out
     * within it; E(t) comes after them, and so pays back at the end of the year or not at all.
     * <p>The first time counts: a later replacement may open the account again, which only the net present value tells.
     * <p>None when nothing is invested, or C stays below I; then because nothing is saved if the savings without E add up
     * to zero or less.
     * <p>Source: [NIST-HB135] discounted payback, replacements and residual values in the years in which they fall
     */
    public static Figure discountedYears(double investment, double rateSharePerYear, double[] savings,
            double[] atYearEnd) {
        double open = Guard.notNegative(investment, "investment");
        Guard.within(atYearEnd.length, savings.length, savings.length, "number of years");
        if (open == 0) {
            return Figure.none(NoAnswer.NO_INVESTMENT);
        }
        double[] saved = CashFlows.discounted(rateSharePerYear, before(savings));
        double[] received = CashFlows.discounted(rateSharePerYear, before(atYearEnd));
        for (int year = 1; year <= savings.length; year++) {
            if (saved[year] >= open) {
                return Figure.of(year - 1 + open / saved[year]);
            }
            open -= saved[year] + received[year];
            if (open <= 0) {
                return Figure.of(year);
            }
        }
        return Figure.none(CashFlows.netPresentValue(0, savings) > 0
                ? NoAnswer.NOT_WITHIN_HORIZON : NoAnswer.NOTHING_SAVED);
    }

    /** A today without any, put in front. */
    private static double[] before(double[] years) {
        return CashFlows.of(0, years);
    }
}
