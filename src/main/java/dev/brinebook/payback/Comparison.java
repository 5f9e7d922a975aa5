package dev.brinebook.payback;

import dev.brinebook.guard.Guard;
import dev.brinebook.household.DailyUse;
import dev.brinebook.regeneration.Effort;
import dev.brinebook.softener.Duty;
import java.util.List;
import java.util.Objects;

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

    /** A way as money, by the use of given days. */
    public Alternative alternative(Way way, DailyUse days, Factors factors) {
        return priced(way, way.use(days, duty, factors.circumstances()), factors);
    }

    /** A way as money, by the mean of endlessly many years. */
    public Alternative expected(Way way, Factors factors) {
        return priced(way, way.expectedUse(duty, factors.circumstances()), factors);
    }

    private Alternative priced(Way way, YearlyUse use, Factors factors) {
        return new Alternative(way.name(), factors.on(way.outlay()), factors.on(bills.of(use)));
    }

    /** A way against the baseline on the duty's days, as told. */
    public AgainstBaseline against(Way way) {
        return AgainstBaseline.of(alternative(way, duty.days(), Factors.AS_TOLD),
                alternative(baseline(), duty.days(), Factors.AS_TOLD), horizonYears(), bills.prices());
    }

    /** Most draws in each of which every other way may be held against the baseline, as {@link Effort} goes. */
    public int mostDraws() {
        int others = ways.size() - 1;
        return Effort.mostYears(others, 2 * others, regenerationsPerYear() + (others - 1) * regenerationsPerYear(baseline()));
    }

    /** Of all ways together, on the duty's days. */
    public double regenerationsPerYear() {
        return ways.stream().mapToDouble(this::regenerationsPerYear).sum();
    }

    private double regenerationsPerYear(Way way) {
        return way.use(duty.days(), duty, Way.Circumstances.AS_TOLD).regenerationsPerYear();
    }

    /** What a way costs over the horizon on the duty's days, as told, in today's worth. */
    public double lifeCycleCost(Way way) {
        return LifeCycleCost.of(alternative(way, duty.days(), Factors.AS_TOLD), horizonYears(), bills.prices());
    }

    /** Life-cycle cost of the baseline less that of a way, on the mean of endlessly many years. */
    public double expectedNetPresentValue(Way way, Factors factors) {
        Prices prices = factors.on(bills.prices());
        return LifeCycleCost.of(expected(baseline(), factors), horizonYears(), prices)
                - LifeCycleCost.of(expected(way, factors), horizonYears(), prices);
    }
}
