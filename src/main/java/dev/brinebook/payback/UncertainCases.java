// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.payback.UncertainWorth.UncertainInput;
import dev.brinebook.randomness.Draws;
import dev.brinebook.randomness.Sample;
import dev.brinebook.softener.RunningCost;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Simulated cases of a comparison: in each, every uncertain input has a value. All alternatives are tried in the same cases, so that
 * what a case is and what the baseline costs in it is calculated once, when it is first needed, and then kept.
 *
 * <p>Tries one alternative at a time; threads share its cases among them.
 */
public final class UncertainCases {

    private final Comparison comparison;
    private final List<UncertainInput> inputs;
    private final Input[] of;
    private final Draws draws;
    private final UseByLoad baseline;
    /** {@link Outlay#priceLevels} of the prices as given, up to the horizon. */
    private final double[] priceLevels;
    private final Case[] cases = new Case[Sample.MAX_DRAWS];

    /**
     * A case. Thousands are kept at once, so that only what is asked of the baseline is.
     *
     * @param load what the bed has to do, over what it does as given
     * @param theirInvestment of the baseline
     * @param theirYearly likewise
     * @param theirCost over its life
     */
    private record Case(Factors factors, UseByLoad.Load load, RunningCost running, Prices prices, double theirInvestment,
            YearlyCost theirYearly, double theirCost) {
    }

    /**
     * Cases that are calculated when they are needed.
     *
     * @param inputs the uncertain inputs
     * @param seed the seed of all draws
     */
    public UncertainCases(Comparison comparison, List<UncertainInput> inputs, long seed) {
        this.comparison = comparison;
        this.inputs = List.copyOf(inputs);
        of = inputs.stream().map(UncertainInput::input).toArray(Input[]::new);
        draws = new Draws(inputs.stream().map(UncertainInput::factor).toList(), seed);
        baseline = new UseByLoad(comparison, comparison.baseline());
        priceLevels = IntStream.rangeClosed(0, comparison.horizonYears())
                .mapToDouble(Outlay.priceLevels(comparison.bills().prices().growthSharePerYear())::applyAsDouble).toArray();
    }

    Comparison comparison() {
        return comparison;
    }

    List<UncertainInput> inputs() {
        return inputs;
    }

    /** Ranks of each input in the first cases. */
    double[][] ranks(int count) {
        return draws.ranks(count);
    }

    /** Net present value and simple payback of an alternative in each case. */
    Sample sample(AlternativePlan way, int mostDraws, double enoughStandardError) {
        UseByLoad own = new UseByLoad(comparison, way);
        return Sample.of(draws, () -> (values, draw) -> results(way, own, at(values, draw)), mostDraws, enoughStandardError);
    }

    private Case at(double[] values, int draw) {
        if (cases[draw] == null) {
            cases[draw] = calculated(values);
        }
        return cases[draw];
    }

    private Case calculated(double[] values) {
        double[] bounded = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            bounded[i] = bounded(values[i]);
        }
        Factors factors = new Factors(of, bounded);
        AlternativePlan.Circumstances there = factors.circumstances();
        UseByLoad.Load load = UseByLoad.Load.of(there.hardness() * there.dailyUse() / there.capacity());
        RunningCost running = comparison.running(factors);
        Prices prices = factors.on(comparison.bills().prices());
        Alternative theirs = comparison.priced(comparison.baseline(), baseline.use(load, running), factors);
        return new Case(factors, load, running, prices, theirs.outlay().investment(), theirs.yearly(), cost(theirs, prices));
    }

    private double[] results(AlternativePlan way, UseByLoad own, Case in) {
        Alternative ours = comparison.priced(way, own.use(in.load(), in.running()), in.factors());
        double worth = in.theirCost() - cost(ours, in.prices());
        double extra = ours.outlay().investment() - in.theirInvestment();
        double saved = in.theirYearly().minus(ours.yearly()).total();
        double payback = extra <= 0 ? 0 : saved > 0 ? extra / saved : Double.POSITIVE_INFINITY;
        return new double[] {worth, payback};
    }

    private double cost(Alternative alternative, Prices prices) {
        double growth = prices.growthSharePerYear();
        IntToDoubleFunction levels = growth == comparison.bills().prices().growthSharePerYear() ? year -> priceLevels[year]
                : Outlay.priceLevels(growth);
        return LifeCycleCost.of(alternative, comparison.horizonYears(), prices, levels);
    }

    /** A normal factor may fall below zero, which no input can: it is then treated as zero. */
    static double bounded(double factor) {
        return Math.max(0, Math.min(Factors.MAX, factor));
    }
}
