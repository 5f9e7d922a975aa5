// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.guard.Guard;
import java.util.Objects;

/**
 * A conversion of a softener: the yearly use before and after, its cost, and the years over which it is evaluated.
 *
 * @param asFound what one year uses with the existing control
 * @param converted what one year would use after the change, for the same people and water
 * @param cost of the change, parts and work, any currency
 * @param rebate paid back towards the cost, same currency, at most the cost
 * @param horizonYears years of savings that are included
 */
public record Retrofit(YearlyUse asFound, YearlyUse converted, double cost, double rebate, int horizonYears) {

    public static final double MAX_COST = 1e9;
    public static final int MIN_HORIZON_YEARS = 1;
    public static final int MAX_HORIZON_YEARS = CashFlows.MAX_YEARS;
    /** A valve is expected to last longer; a household stays for about that time. */
    public static final int ASSUMED_HORIZON_YEARS = 10;

    public Retrofit {
        Objects.requireNonNull(asFound, "asFound");
        Objects.requireNonNull(converted, "converted");
        Guard.within(cost, 0, MAX_COST, "cost");
        Guard.within(rebate, 0, cost, "rebate");
        Guard.within(horizonYears, MIN_HORIZON_YEARS, MAX_HORIZON_YEARS, "horizonYears");
    }

    /** What is left to pay, in the currency of the cost. */
    public double investment() {
        return cost - rebate;
    }
}
