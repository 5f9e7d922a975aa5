// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.guard.Guard;

/**
 * The discount rate that fits prices in the money of their day.
 *
 * <p>The two defaults do not fit each other: 4 % growth of water bills was read off bills and so contains
 * inflation (nominal), while the 3 % of [CFR-436] section 436.14 excludes it (real). [NIST-HB135] and the same section
 * allow both ways, current money with a nominal rate or constant money with a real one, but never a mix. The readings,
 * for 350 invested, 113.47 saved in the first year and 10 years:
 * <ul>
 * <li>mixed, growth 4 % and discount 3 %: net present value 801.07, discounted payback 3.14 years; flatters the change;
 * <li>all nominal, growth 4 % and discount 5.575 %: 655.44 and 3.31 years;
 * <li>all real, growth 1.463 % and discount 3 %, with the first year's saving deflated by a year: 655.44 again, the
 * same money in other terms.
 * </ul>
 * Brinebook calculates all nominal, since bills, quotes and rebates are in the money of their day.
 */
public final class NominalDiscount {

    /** Real; the floor that the rule sets. Source: [CFR-436] section 436.14(a)(2) */
    public static final double REAL_DISCOUNT_SHARE_PER_YEAR = 0.03;
    /** No source: between the usual 2 % aim of central banks and the average of recent decades. */
    public static final double ASSUMED_INFLATION_SHARE_PER_YEAR = 0.025;
    /** Nominal, 5.575 %: {@link #fromReal} of the two above, written out so that it is a constant for annotations. */
    public static final double DEFAULT_SHARE_PER_YEAR =
            (1 + REAL_DISCOUNT_SHARE_PER_YEAR) * (1 + ASSUMED_INFLATION_SHARE_PER_YEAR) - 1;

    private NominalDiscount() {
    }

    /**
     * The nominal rate equivalent to a real rate under inflation.
     *
     * <pre>D = (1 + d)(1 + i) - 1</pre>
     *
     * <p>D nominal discount rate; d real discount rate; i inflation; all shares per year.
     * Validity: d and i above -1, from {@link CashFlows#MIN_RATE_SHARE_PER_YEAR}.
     * Source: [NIST-HB135] nominal from real discount rate.
     * Deviation: none.
     */
    public static double fromReal(double realSharePerYear, double inflationSharePerYear) {
        double min = CashFlows.MIN_RATE_SHARE_PER_YEAR;
        Guard.within(realSharePerYear, min, CashFlows.MAX_RATE_SHARE_PER_YEAR, "realSharePerYear");
        Guard.within(inflationSharePerYear, min, CashFlows.MAX_RATE_SHARE_PER_YEAR, "inflationSharePerYear");
        return (1 + realSharePerYear) * (1 + inflationSharePerYear) - 1;
    }
}
