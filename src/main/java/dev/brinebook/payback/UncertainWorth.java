// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.randomness.Quantile;
import dev.brinebook.randomness.RankCorrelation;
import dev.brinebook.randomness.Ranks;
import dev.brinebook.randomness.Sample;
import dev.brinebook.randomness.Uncertain;
import dev.brinebook.softener.RunningCost;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Net present value of an alternative against the baseline when its inputs are uncertain, and the inputs that matter most. Each draw
 * takes a value of every uncertain input; salt and water are the long-run expectation for these values, with the settings that
 * then cost least, except those that the caller fixes.
 *
 * @param netPresentValue over the draws
 * @param mean its mean, with the standard error
 * @param paybackYears simple payback over the draws; infinite where it is never paid back
 * @param draws how many were made
 * @param drivers inputs by their effect, largest first
 */
public record UncertainWorth(Quantiles netPresentValue, Sample.Mean mean, Quantiles paybackYears, int draws,
        List<Driver> drivers) {

    private static final double LOW = 0.10;
    private static final double HIGH = 0.90;

    public UncertainWorth {
        drivers = List.copyOf(drivers);
    }

    /** An input that is not known exactly. */
    public record UncertainInput(Input input, Uncertain factor) {
    }

    /**
     * What an input does to the worth.
     *
     * @param input the input
     * @param lowFactor factor that it stays below in one case of ten
     * @param highFactor factor that it is above in one case of ten
     * @param worthAtLow net present value there, the others at their medians
     * @param worthAtHigh likewise
     * @param rankCorrelation of the input with the net present value over the draws
     */
    public record Driver(Input input, double lowFactor, double highFactor, double worthAtLow, double worthAtHigh,
            double rankCorrelation) {

        double swing() {
            return Math.abs(worthAtHigh - worthAtLow);
        }
    }

    /** Sorted values of draws. */
    public record Quantiles(double[] sorted) {

        public Quantiles {
            sorted = sorted.clone();
            Arrays.sort(sorted);
        }

        /** The value that a share of the draws stays below; infinite where that share is never paid back. */
        public double at(double share) {
            return Quantile.ofSorted(sorted, share);
        }

        /** Share of the draws that are at most {@code value}. */
        public double shareUpTo(double value) {
            return (double) Arrays.stream(sorted).filter(one -> one <= value).count() / sorted.length;
        }

        @Override
        public double[] sorted() {
            return sorted.clone();
        }
    }

    /**
     * Distribution of the net present value of an alternative.
     *
     * @param inputs the uncertain inputs
     * @param mostDraws draws at most, see {@link Sample#of}
     * @param enoughStandardError of the mean net present value, 0 to make all draws
     */
    public static UncertainWorth of(Comparison comparison, AlternativePlan way, List<UncertainInput> inputs, int mostDraws,
            double enoughStandardError, long seed) {
        SimulatedCase draw = new SimulatedCase(comparison, way, inputs, new ByLoad(comparison, way),
                new ByLoad(comparison, comparison.baseline()));
        Sample sample = Sample.of(inputs.stream().map(UncertainInput::factor).toList(),
                () -> draw, mostDraws, enoughStandardError, seed);
        double[] worth = sample.result(0);
        double[] ranks = Ranks.of(worth);
        List<Driver> drivers = new ArrayList<>();
        for (int i = 0; i < inputs.size(); i++) {
            drivers.add(driver(comparison, way, inputs, i, RankCorrelation.ofRanks(Ranks.of(sample.input(i)), ranks)));
        }
        drivers.sort(Comparator.comparingDouble(Driver::swing).reversed());
        return new UncertainWorth(new Quantiles(worth), sample.mean(0), new Quantiles(sample.result(1)), sample.draws(),
                drivers);
    }

    /** Share of the draws that pay back within some years. */
    public double paysWithinShare(double years) {
        return paybackYears.shareUpTo(years);
    }

    private static Driver driver(Comparison comparison, AlternativePlan way, List<UncertainInput> inputs, int which, double correlation) {
        double low = bounded(inputs.get(which).factor().quantile(LOW));
        double high = bounded(inputs.get(which).factor().quantile(HIGH));
        return new Driver(inputs.get(which).input(), low, high, worthAt(comparison, way, inputs, which, low),
                worthAt(comparison, way, inputs, which, high), correlation);
    }

    private static double worthAt(Comparison comparison, AlternativePlan way, List<UncertainInput> inputs, int which, double factor) {
        Map<Input, Double> factors = new EnumMap<>(Input.class);
        for (int i = 0; i < inputs.size(); i++) {
            factors.put(inputs.get(i).input(), bounded(i == which ? factor : inputs.get(i).factor().median()));
        }
        return comparison.expectedNetPresentValue(way, new Factors(factors));
    }

    /** A normal factor may fall below zero, which no input can: it is then treated as zero. */
    private static double bounded(double factor) {
        return Math.max(0, Math.min(Factors.MAX, factor));
    }

    /** Expected use of an alternative in a year by its load, interpolated between loads calculated beforehand. */
    private static final class ByLoad {

        private static final int STEPS = 8;
        private static final double LEAST = 0.4;
        private static final double MOST = 2.5;
        /** No household exceeds this multiple; a factor near zero of the capacity would ask for it. */
        private static final double MOST_BEYOND = 1e4;

        private final double visits;
        private final List<List<YearlyUse>> uses = new ArrayList<>();

        ByLoad(Comparison comparison, AlternativePlan way) {
            visits = way.visitsPerYear();
            for (int i = 0; i <= STEPS; i++) {
                AlternativePlan.Circumstances there = new AlternativePlan.Circumstances(load(i), 1, 1);
                uses.add(way.possible(comparison.duty(), there).stream().map(one -> new YearlyUse(one.year().regenerations(),
                        one.year().saltGrams() / 1000, one.year().waterLitres(), visits)).toList());
            }
        }

        private static double load(int step) {
            return LEAST * StrictMath.pow(MOST / LEAST, (double) step / STEPS);
        }

        /** The cheapest of the possible settings, at the simulated load. */
        YearlyUse use(double load, RunningCost cost) {
            double place = STEPS * StrictMath.log(Math.max(LEAST, Math.min(MOST, load)) / LEAST) / StrictMath.log(MOST / LEAST);
            int below = (int) Math.min(STEPS - 1.0, place);
            double share = place - below;
            YearlyUse low = cheapest(uses.get(below), cost);
            YearlyUse high = cheapest(uses.get(below + 1), cost);
            // Beyond the calculated loads, salt and water are proportional to the load.
            double beyond = Math.min(MOST_BEYOND, load / Math.max(LEAST, Math.min(MOST, load)));
            return new YearlyUse(beyond * mixed(share, low.regenerationsPerYear(), high.regenerationsPerYear()),
                    beyond * mixed(share, low.saltKilograms(), high.saltKilograms()),
                    beyond * mixed(share, low.waterLitres(), high.waterLitres()), visits);
        }

        private static double mixed(double share, double low, double high) {
            return low + share * (high - low);
        }

        private YearlyUse cheapest(List<YearlyUse> possible, RunningCost cost) {
            YearlyUse best = new YearlyUse(0, 0, 0, visits);
            double least = Double.POSITIVE_INFINITY;
            for (YearlyUse use : possible) {
                double yearly = use.saltKilograms() * cost.saltPerKilogram()
                        + use.waterLitres() / 1000 * cost.waterPerCubicMetre();
                if (yearly < least) {
                    least = yearly;
                    best = use;
                }
            }
            return best;
        }
    }

    /** The model of one draw. */
    private record SimulatedCase(Comparison comparison, AlternativePlan way, List<UncertainInput> inputs, ByLoad own, ByLoad baseline)
            implements Sample.Model {

        @Override
        public double[] results(double[] values, int draw) {
            Map<Input, Double> of = new EnumMap<>(Input.class);
            for (int i = 0; i < values.length; i++) {
                of.put(inputs.get(i).input(), bounded(values[i]));
            }
            Factors factors = new Factors(of);
            AlternativePlan.Circumstances there = factors.circumstances();
            double load = there.hardness() * there.dailyUse() / there.capacity();
            RunningCost running = comparison.running(factors);
            Alternative ours = comparison.priced(way, own.use(load, running), factors);
            Alternative theirs = comparison.priced(comparison.baseline(), baseline.use(load, running), factors);
            Prices prices = factors.on(comparison.bills().prices());
            int years = comparison.horizonYears();
            double worth = LifeCycleCost.of(theirs, years, prices) - LifeCycleCost.of(ours, years, prices);
            double extra = ours.outlay().investment() - theirs.outlay().investment();
            double saved = theirs.yearly().minus(ours.yearly()).total();
            double payback = extra <= 0 ? 0 : saved > 0 ? extra / saved : Double.POSITIVE_INFINITY;
            return new double[] {worth, payback};
        }
    }
}
