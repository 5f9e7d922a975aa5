package dev.brinebook.payback;

import dev.brinebook.guard.Guard;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.softener.Setup;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Ways of going on with one household, held against one of them.
 *
 * @param ways the ways
 * @param baselineIndex which of them the others are held against
 * @param duty the water and the household
 * @param bills how use becomes bills
 */
public record Comparison(List<Way> ways, int baselineIndex, Duty duty, Bills bills) {

    public static final int MAX_WAYS = 8;

    public Comparison {
        ways = List.copyOf(ways);
        Guard.within(ways.size(), 2, MAX_WAYS, "number of ways");
        Guard.within(baselineIndex, 0, ways.size() - 1, "baselineIndex");
        Objects.requireNonNull(duty, "duty");
        Objects.requireNonNull(bills, "bills");
    }

    public Way baseline() {
        return ways.get(baselineIndex);
    }

    public int horizonYears() {
        return bills.horizonYears();
    }

    /** What running costs by the prices of a comparison. */
    public RunningCost running(Factors factors) {
        Prices prices = bills.prices();
        return new RunningCost(factors.on(Input.SALT_PRICE) * prices.saltPerKilogram(),
                factors.on(Input.WATER_PRICE) * prices.waterPerCubicMetre()
                        + factors.on(Input.SEWER_PRICE) * prices.sewerPerCubicMetre());
    }

    /** What a way is to use in a year. */
    public YearlyUse use(Way way, Factors factors) {
        return way.use(duty, factors.circumstances(), running(factors));
    }

    /** What is set in a way, as the case was given; none where nothing softens. */
    public Optional<Setup> setup(Way way) {
        return way.set(duty, Way.Circumstances.AS_TOLD, running(Factors.AS_TOLD)).map(Way.Possible::setup);
    }

    /** A way as money, in the long run. */
    public Alternative expected(Way way, Factors factors) {
        return priced(way, use(way, factors), factors);
    }

    /** A way as money by what it uses. */
    Alternative priced(Way way, YearlyUse use, Factors factors) {
        return new Alternative(way.name(), factors.on(way.outlay()), factors.on(bills.of(use)));
    }

    /** A way against the baseline, as given. */
    public AgainstBaseline against(Way way) {
        return AgainstBaseline.of(expected(way, Factors.AS_TOLD), expected(baseline(), Factors.AS_TOLD), horizonYears(),
                bills.prices());
    }

    /** What a way costs over the horizon, as given, in today's worth. */
    public double lifeCycleCost(Way way) {
        return LifeCycleCost.of(expected(way, Factors.AS_TOLD), horizonYears(), bills.prices());
    }

    /** Life-cycle cost of the baseline less that of a way. */
    public double expectedNetPresentValue(Way way, Factors factors) {
        Prices prices = factors.on(bills.prices());
        return LifeCycleCost.of(expected(baseline(), factors), horizonYears(), prices)
                - LifeCycleCost.of(expected(way, factors), horizonYears(), prices);
    }
}
