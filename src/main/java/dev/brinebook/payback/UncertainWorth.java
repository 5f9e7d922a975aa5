// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.randomness.Quantile;
import dev.brinebook.randomness.RankCorrelation;
import dev.brinebook.randomness.Ranks;
import dev.brinebook.randomness.Sample;
import dev.brinebook.randomness.Uncertain;
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
    public static final class Quantiles {

        private final double[] sorted;

        /** Of values in any order. */
        public Quantiles(double[] values) {
            this(values, Ranks.order(values));
        }

        private Quantiles(double[] values, int[] order) {
            sorted = new double[values.length];
            Arrays.setAll(sorted, place -> values[order[place]]);
        }

        /** The value that a share of the draws stays below; infinite where that share is never paid back. */
        public double at(double share) {
            return Quantile.ofSorted(sorted, share);
        }

        /** Share of the draws that are at most {@code value}. */
        public double shareUpTo(double value) {
            return (double) Arrays.stream(sorted).filter(one -> one <= value).count() / sorted.length;
        }

        /** The values, from the least on. */
        public double[] sorted() {
            return sorted.clone();
        }
    }

    /**
     * Distribution of the net present value of an alternative.
     *
     * @param cases the cases in which it is tried
     * @param mostDraws draws at most, see {@link Sample#of}
     * @param enoughStandardError of the mean net present value, 0 to make all draws
     */
    public static UncertainWorth of(UncertainCases cases, AlternativePlan way, int mostDraws, double enoughStandardError) {
        Sample sample = cases.sample(way, mostDraws, enoughStandardError);
        double[] worth = sample.result(0);
        int[] order = Ranks.order(worth);
        double[] ranks = Ranks.of(worth, order);
        double[][] inputRanks = cases.ranks(sample.draws());
        List<Driver> drivers = new ArrayList<>();
        for (int i = 0; i < inputRanks.length; i++) {
            drivers.add(driver(cases, way, i, RankCorrelation.ofRanks(inputRanks[i], ranks)));
        }
        drivers.sort(Comparator.comparingDouble(Driver::swing).reversed());
        return new UncertainWorth(new Quantiles(worth, order), sample.mean(0), new Quantiles(sample.result(1)), sample.draws(),
                drivers);
    }

    /** Share of the draws that pay back within some years. */
    public double paysWithinShare(double years) {
        return paybackYears.shareUpTo(years);
    }

    private static Driver driver(UncertainCases cases, AlternativePlan way, int which, double correlation) {
        UncertainInput input = cases.inputs().get(which);
        double low = UncertainCases.bounded(input.factor().quantile(LOW));
        double high = UncertainCases.bounded(input.factor().quantile(HIGH));
        return new Driver(input.input(), low, high, worthAt(cases, way, which, low), worthAt(cases, way, which, high), correlation);
    }

    private static double worthAt(UncertainCases cases, AlternativePlan way, int which, double factor) {
        Map<Input, Double> factors = new EnumMap<>(Input.class);
        for (int i = 0; i < cases.inputs().size(); i++) {
            UncertainInput input = cases.inputs().get(i);
            factors.put(input.input(), UncertainCases.bounded(i == which ? factor : input.factor().median()));
        }
        return cases.comparison().expectedNetPresentValue(way, new Factors(factors));
    }
}
