// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;

/**
 * Years until an investment is paid back. A saving of zero or less never pays it back: the result is then
 * a reason and no number, rather than a negative or infinite one.
 */
public final class Payback {

    private Payback() {
    }

    /**
     * Simple payback: years until undiscounted savings of the first year's size equal the investment.
     *
     * <pre>n = I / S</pre>
     *
     * <p>n simple payback, years; I investment, any currency; S saving of the first year, same currency.
     * Validity: I of 0 or more. None when nothing is invested, nothing is saved, or n is above {@code horizonYears}, the horizon
     * of all measures: the equipment is assumed to last that long.
     * Source: [CFR-436] section 436.23, estimated simple payback time.
     * Deviation: the rule adds up the savings year by year, so that growth shortens it. Here the first year's saving
     * represents all years, the quotient that people calculate themselves; growth enters the discounted payback.
     */
    public static OptionalResult simpleYears(double investment, double firstYearSaving, int horizonYears) {
        Guard.within(horizonYears, 1, CashFlows.MAX_YEARS, "horizonYears");
        Guard.finite(firstYearSaving, "firstYearSaving");
        if (Guard.notNegative(investment, "investment") == 0) {
            return OptionalResult.none(NoResultReason.NO_INVESTMENT);
        }
        if (!(firstYearSaving > 0)) {
            return OptionalResult.none(NoResultReason.NOTHING_SAVED);
        }
        double years = investment / firstYearSaving;
        return years <= horizonYears
                ? OptionalResult.of(years) : OptionalResult.none(NoResultReason.NOT_WITHIN_HORIZON);
    }

    /**
     * Discounted payback: years until discounted savings first equal the investment.
     *
     * <pre>n = m + (I - C(m)) / (C(m+1) - C(m)),   C(m) = sum over t from 1 to m of S(t) / (1 + d)^t</pre>
     *
     * <p>n discounted payback, years; m last year with C(m) below I; I investment, any currency; S(t) saving of year t; C(m)
     * discounted savings up to year m; d discount rate, share per year.
     * Validity: I of 0 or more. None when nothing is invested, the savings add up to zero or less, or C stays below I for all
     * years given.
     * Source: [NIST-HB135] discounted payback.
     * Deviation: the handbook counts whole years. Here savings are discounted as if they fell at the end of the
     * year, and the last year is then shared out evenly, as teaching texts do: 350 invested, 90 saved and 5 % give
     * 4.44 years; whole years would give 5, and sharing out on the discounting curve itself 4.43.
     */
    public static OptionalResult discountedYears(double investment, double rateSharePerYear, double... savings) {
        Guard.notNegative(investment, "investment");
        double total = CashFlows.netPresentValue(0, savings);
        if (investment > 0 && !(total > 0)) {
            return OptionalResult.none(NoResultReason.NOTHING_SAVED);
        }
        return discountedYears(investment, rateSharePerYear, savings, new double[savings.length]);
    }

    /**
     * Discounted payback with single amounts at the end of a year: a replacement paid for, or one that is not needed, or
     * the residual value at the horizon.
     *
     * <pre>
     * n = m + (I - C(m)) / (S(m+1) / (1 + d)^(m+1)),   at most m + 1
     * C(m) = sum over t from 1 to m of (S(t) + E(t)) / (1 + d)^t
     * </pre>
     *
     * <p>E(t) received at the end of year t, negative where paid; the others as in the method without it. The savings of a year are
     * spread evenly over it; E(t) comes after them, and so pays back at the end of the year or not at all.
     * Validity: none when nothing is invested, or C stays below I; then because nothing is saved if the savings without E add up
     * to zero or less.
     * Source: [NIST-HB135] discounted payback, replacements and residual values in the years in which they fall.
     * Deviation: the first time is taken: a later replacement may make the balance negative again, which only the net present
     * value shows.
     */
    public static OptionalResult discountedYears(double investment, double rateSharePerYear, double[] savings,
            double[] atYearEnd) {
        double open = Guard.notNegative(investment, "investment");
        Guard.within(atYearEnd.length, savings.length, savings.length, "number of years");
        if (open == 0) {
            return OptionalResult.none(NoResultReason.NO_INVESTMENT);
        }
        double[] saved = CashFlows.discounted(rateSharePerYear, before(savings));
        double[] received = CashFlows.discounted(rateSharePerYear, before(atYearEnd));
        for (int year = 1; year <= savings.length; year++) {
            if (saved[year] >= open) {
                return OptionalResult.of(year - 1 + open / saved[year]);
            }
            open -= saved[year] + received[year];
            if (open <= 0) {
                return OptionalResult.of(year);
            }
        }
        return OptionalResult.none(CashFlows.netPresentValue(0, savings) > 0
                ? NoResultReason.NOT_WITHIN_HORIZON : NoResultReason.NOTHING_SAVED);
    }

    /** The amounts with a 0 for today in front. */
    private static double[] before(double[] years) {
        return CashFlows.of(0, years);
    }
}
