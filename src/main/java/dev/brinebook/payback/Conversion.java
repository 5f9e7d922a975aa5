package dev.brinebook.payback;

import dev.brinebook.guard.Guard;
import java.util.Objects;

/**
 * A change of a softener whose worth is asked: what a year uses before and after, what the change costs and for how
 * many years it is looked at.
 *
 * @param asFound what one year uses as the softener stands
 * @param converted what one year would use after the change, for the same people and water
 * @param cost of the change, parts and work, any currency
 * @param rebate paid back towards the cost, same currency, at most the cost
 * @param horizonYears how many years of savings count
 */
public record Conversion(YearlyUse asFound, YearlyUse converted, double cost, double rebate, int horizonYears) {

    public static final double MAX_COST = 1e9;
    public static final int MIN_HORIZON_YEARS = 1;
    public static final int MAX_HORIZON_YEARS = CashFlows.MAX_YEARS;
    /** A valve is expected to last longer; a household stays about so long. */
    public static final int ASSUMED_HORIZON_YEARS = 10;

    public Conversion {
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
