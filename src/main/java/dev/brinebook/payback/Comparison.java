// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.guard.Guard;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.softener.SoftenerSettings;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Alternatives for one household, compared with one of them, the baseline.
 *
 * @param ways the alternatives
 * @param baselineIndex which of them the others are compared with
 * @param duty the water and the household
 * @param bills turns use into bills
 */
public record Comparison(List<AlternativePlan> ways, int baselineIndex, DesignConditions duty, Bills bills) {

    public static final int MAX_WAYS = 8;

    public Comparison {
        ways = List.copyOf(ways);
        Guard.within(ways.size(), 2, MAX_WAYS, "number of ways");
        Guard.within(baselineIndex, 0, ways.size() - 1, "baselineIndex");
        Objects.requireNonNull(duty, "duty");
        Objects.requireNonNull(bills, "bills");
    }

    public AlternativePlan baseline() {
        return ways.get(baselineIndex);
    }

    public int horizonYears() {
        return bills.horizonYears();
    }

    /** Running costs by the prices of a comparison. */
    public RunningCost running(Factors factors) {
        Prices prices = bills.prices();
        return new RunningCost(factors.on(Input.SALT_PRICE) * prices.saltPerKilogram(),
                factors.on(Input.WATER_PRICE) * prices.waterPerCubicMetre()
                        + factors.on(Input.SEWER_PRICE) * prices.sewerPerCubicMetre());
    }

    /** Expected use of an alternative in a year. */
    public YearlyUse use(AlternativePlan way, Factors factors) {
        return way.use(duty, factors.circumstances(), running(factors));
    }

    /** Settings of an alternative in the given case; none without a softener. */
    public Optional<SoftenerSettings> setup(AlternativePlan way) {
        return way.set(duty, AlternativePlan.Circumstances.AS_GIVEN, running(Factors.AS_GIVEN)).map(AlternativePlan.Possible::setup);
    }

    /** Costs of an alternative, in the long run. */
    public Alternative expected(AlternativePlan way, Factors factors) {
        return priced(way, use(way, factors), factors);
    }

    /** Costs of an alternative by its use. */
    Alternative priced(AlternativePlan way, YearlyUse use, Factors factors) {
        return new Alternative(way.name(), factors.on(way.outlay()), factors.on(bills.of(use)));
    }

    /** An alternative against the baseline, in the given case. */
    public AgainstBaseline against(AlternativePlan way) {
        return AgainstBaseline.of(expected(way, Factors.AS_GIVEN), expected(baseline(), Factors.AS_GIVEN), horizonYears(),
                bills.prices());
    }

    /** Life-cycle cost of an alternative in the given case. */
    public double lifeCycleCost(AlternativePlan way) {
        return LifeCycleCost.of(expected(way, Factors.AS_GIVEN), horizonYears(), bills.prices());
    }

    /** Net present value: life-cycle cost of the baseline less that of an alternative. */
    public double expectedNetPresentValue(AlternativePlan way, Factors factors) {
        Prices prices = factors.on(bills.prices());
        return LifeCycleCost.of(expected(baseline(), factors), horizonYears(), prices)
                - LifeCycleCost.of(expected(way, factors), horizonYears(), prices);
    }
}
