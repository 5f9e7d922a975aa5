package dev.brinebook.payback;

import dev.brinebook.household.Days;
import dev.brinebook.household.DrawnYear;
import dev.brinebook.randomness.Quantile;
import dev.brinebook.randomness.RankCorrelation;
import dev.brinebook.randomness.Sample;
import dev.brinebook.randomness.Uncertain;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What a way is worth against the baseline when its inputs are not known exactly, and what that depends on most. Each draw
 * takes a value of every uncertain input and a year of the household's days of its own.
 *
 * @param netPresentValue over the draws
 * @param mean mean of it, and what that is uncertain by
 * @param paybackYears simple payback over the draws; infinite where it is never paid back
 * @param draws how many were made
 * @param drivers what it depends on, the most first
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
     * @param worthAtLow net present value there, the others at their medians, on the mean of endlessly many years
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
     * The worth of a way.
     *
     * @param inputs what is not known exactly
     * @param mostDraws draws at most, see {@link Sample#of}
     * @param enoughStandardError of the mean net present value, 0 to make all draws
     */
    public static UncertainWorth of(Comparison comparison, Way way, List<UncertainInput> inputs, int mostDraws,
            double enoughStandardError, long seed) {
        Sample sample = Sample.of(inputs.stream().map(UncertainInput::factor).toList(),
                () -> new Draw(comparison, way, inputs, seed), mostDraws, enoughStandardError, seed);
        double[] worth = sample.result(0);
        List<Driver> drivers = new ArrayList<>();
        for (int i = 0; i < inputs.size(); i++) {
            drivers.add(driver(comparison, way, inputs, i, RankCorrelation.of(sample.input(i), worth)));
        }
        drivers.sort(Comparator.comparingDouble(Driver::swing).reversed());
        return new UncertainWorth(new Quantiles(worth), sample.mean(0), new Quantiles(sample.result(1)), sample.draws(),
                drivers);
    }

    /** Share of the draws that pay back within some years. */
    public double paysWithinShare(double years) {
        return paybackYears.shareUpTo(years);
    }

    private static Driver driver(Comparison comparison, Way way, List<UncertainInput> inputs, int which, double correlation) {
        double low = bounded(inputs.get(which).factor().quantile(LOW));
        double high = bounded(inputs.get(which).factor().quantile(HIGH));
        return new Driver(inputs.get(which).input(), low, high, worthAt(comparison, way, inputs, which, low),
                worthAt(comparison, way, inputs, which, high), correlation);
    }

    private static double worthAt(Comparison comparison, Way way, List<UncertainInput> inputs, int which, double factor) {
        Map<Input, Double> factors = new EnumMap<>(Input.class);
        for (int i = 0; i < inputs.size(); i++) {
            factors.put(inputs.get(i).input(), bounded(i == which ? factor : inputs.get(i).factor().median()));
        }
        return comparison.expectedNetPresentValue(way, new Factors(factors));
    }

    /** A normal factor may fall below zero, which nothing that it stands for can: it then counts as zero. */
    private static double bounded(double factor) {
        return Math.max(0, Math.min(Factors.MAX, factor));
    }

    /** One draw after the other, with days in memory of its own. */
    private static final class Draw implements Sample.Model {

        private final Comparison comparison;
        private final Way way;
        private final List<UncertainInput> inputs;
        private final DrawnYear days;

        Draw(Comparison comparison, Way way, List<UncertainInput> inputs, long seed) {
            this.comparison = comparison;
            this.way = way;
            this.inputs = inputs;
            days = new DrawnYear(comparison.duty().demand().model(), comparison.duty().days().firstDate(), Days.PER_YEAR,
                    seed);
        }

        @Override
        public double[] results(double[] values, int draw) {
            Map<Input, Double> of = new EnumMap<>(Input.class);
            for (int i = 0; i < values.length; i++) {
                of.put(inputs.get(i).input(), bounded(values[i]));
            }
            Factors factors = new Factors(of);
            days.draw(draw);
            Alternative own = comparison.alternative(way, days, factors);
            Alternative baseline = comparison.alternative(comparison.baseline(), days, factors);
            Prices prices = factors.on(comparison.bills().prices());
            int years = comparison.horizonYears();
            double worth = LifeCycleCost.of(baseline, years, prices) - LifeCycleCost.of(own, years, prices);
            double extra = own.outlay().investment() - baseline.outlay().investment();
            double saved = baseline.yearly().minus(own.yearly()).total();
            double payback = extra <= 0 ? 0 : saved > 0 ? extra / saved : Double.POSITIVE_INFINITY;
            return new double[] {worth, payback};
        }
    }
}
