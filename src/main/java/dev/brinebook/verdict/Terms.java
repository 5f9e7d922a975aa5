// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.verdict;

import dev.brinebook.guard.Guard;
import dev.brinebook.payback.CashFlows;
import dev.brinebook.payback.Outlay;
import dev.brinebook.payback.Prices;
import dev.brinebook.payback.Retrofit;
import dev.brinebook.softener.Readiness;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.softener.Sizing;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The money of a verdict.
 *
 * @param prices of salt, water and sewer, and how money is carried through the years
 * @param horizonYears years that count
 * @param outlays outlay of each step, as far as known; correcting settings costs only the visit
 * @param improvements outlay of each improvement, as far as known
 * @param goods what the softener could be replaced by; without prices of their own they are not known to cost anything
 * @param unpriced conditions of every step beyond the settings that have no price, which the outlays do not include
 */
public record Terms(Prices prices, int horizonYears, Map<Step, Outlay> outlays, Map<Improvement, Outlay> improvements,
        List<Sizing.Candidate> goods, List<Readiness.Condition> unpriced) {

    /** A valve is expected to last longer; a household stays for about that time. */
    public static final int ASSUMED_HORIZON_YEARS = Retrofit.ASSUMED_HORIZON_YEARS;

    public Terms {
        Objects.requireNonNull(prices, "prices");
        Guard.within(horizonYears, 1, CashFlows.MAX_YEARS, "horizonYears");
        outlays = Map.copyOf(outlays);
        improvements = Map.copyOf(improvements);
        goods = List.copyOf(goods);
        unpriced = List.copyOf(unpriced);
    }

    /** Outlays that lack nothing, without improvements whose cost is known, and without goods. */
    public Terms(Prices prices, int horizonYears, Map<Step, Outlay> outlays) {
        this(prices, horizonYears, outlays, Map.of(), List.of(), List.of());
    }

    /** A step that is paid for once, as long as the horizon. */
    public static Outlay paidOnce(double cost, double rebate, int horizonYears) {
        return new Outlay(cost, rebate, Math.min(Outlay.MAX_LIFE_YEARS, horizonYears));
    }

    /** What salt and regeneration water cost. */
    public RunningCost running() {
        return new RunningCost(prices.saltPerKilogram(), prices.waterPerCubicMetre() + prices.sewerPerCubicMetre());
    }

    /** Outlay of a step; empty when it is not known. */
    public Optional<Outlay> outlay(Step step) {
        return step.compareTo(Step.SET_RIGHT) <= 0 ? Optional.of(Outlay.NONE) : Optional.ofNullable(outlays.get(step));
    }

    /** Outlay of an improvement; empty when it is not known. */
    Optional<Outlay> outlay(Improvement improvement) {
        return Optional.ofNullable(improvements.get(improvement));
    }

    /** Outlay of one of the goods; empty when it is not known. */
    Optional<Outlay> outlay(Sizing.Candidate goods) {
        return goods.price().stream().mapToObj(price -> paidOnce(price, 0, horizonYears)).findFirst();
    }

    /** What the outlay of a step lacks. */
    List<Readiness.Condition> unpriced(Step step) {
        return step.compareTo(Step.CONVERT) >= 0 ? unpriced : List.of();
    }

    /** Present value of a first-year saving over the horizon. */
    double worthToday(double savingPerYear) {
        return CashFlows.presentValueOfSavings(prices.discountSharePerYear(),
                CashFlows.growing(savingPerYear, prices.growthSharePerYear(), horizonYears));
    }
}
