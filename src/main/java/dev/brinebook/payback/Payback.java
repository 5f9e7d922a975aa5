package dev.brinebook.payback;

import dev.brinebook.guard.Figure;
import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoAnswer;

/**
 * How many years pass until an investment is earned back. A saving of zero or less never earns it back: there is then
 * no number, with the reason, rather than a negative or infinite one.
 */
public final class Payback {

    /** A payback longer than this is not told in years: nothing in a house lasts so long. */
    public static final double ASSUMED_LONGEST_SIMPLE_PAYBACK_YEARS = 100;

    private Payback() {
    }

    /**
     * Years until undiscounted savings of the first year's size make up the investment.
     * <pre>n = I / S</pre>
     * n simple payback, years; I investment, any currency, 0 or above; S saving of the first year, same currency.
     * <p>None when nothing is invested, nothing is saved, or n is above
     * {@value #ASSUMED_LONGEST_SIMPLE_PAYBACK_YEARS} years. It may lie beyond the horizon of the other measures.
     * <p>Source: [CFR-436] section 436.23, estimated simple payback time
     * <p>Deviation: the rule adds up the savings year by year, so that growth shortens it. Here the first year's saving
     * stands for all, the quotient that people reckon themselves; growth counts in the discounted payback.
     */
    public static Figure simpleYears(double investment, double firstYearSaving) {
        Guard.finite(firstYearSaving, "firstYearSaving");
        if (Guard.notNegative(investment, "investment") == 0) {
            return Figure.none(NoAnswer.NO_INVESTMENT);
        }
        if (!(firstYearSaving > 0)) {
            return Figure.none(NoAnswer.NOTHING_SAVED);
        }
        double years = investment / firstYearSaving;
        return years <= ASSUMED_LONGEST_SIMPLE_PAYBACK_YEARS
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
        double open = Guard.notNegative(investment, "investment");
        double total = CashFlows.netPresentValue(0, savings);
        if (open == 0) {
            return Figure.none(NoAnswer.NO_INVESTMENT);
        }
        if (!(total > 0)) {
            return Figure.none(NoAnswer.NOTHING_SAVED);
        }
        double factor = 1;
        for (int year = 0; year < savings.length; year++) {
            factor /= 1 + Guard.within(rateSharePerYear, CashFlows.MIN_RATE_SHARE_PER_YEAR,
                    CashFlows.MAX_RATE_SHARE_PER_YEAR, "rateSharePerYear");
            double worthToday = savings[year] * factor;
            if (worthToday >= open) {
                return Figure.of(year + open / worthToday);
            }
            open -= worthToday;
        }
        return Figure.none(NoAnswer.NOT_WITHIN_HORIZON);
    }
}
