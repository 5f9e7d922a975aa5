// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import dev.brinebook.household.Days;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * {@link Totals} scaled to a year of 365 days; counts become fractions, which no single year shows.
 */
public record YearlyTotals(double regenerations, double overrides, double saltGrams, double waterLitres,
                           double throughBedLitres, double bypassedLitres, double hardDays, double hardLitres,
                           double removedGrams, double regeneratedGrams, double unusedGrams) {

    /** Mean days between two regenerations; none where it never regenerates. */
    public OptionalResult intervalDays() {
        return regenerations > 0 ? OptionalResult.of(Days.PER_YEAR / regenerations) : OptionalResult.none(NoResultReason.NEVER_REGENERATES);
    }

    /** Share of the water used that passed an exhausted bed: 1 where all did, although both scatter over simulated years. */
    public double hardShare() {
        double drawn = throughBedLitres + bypassedLitres;
        return drawn > 0 ? Math.min(1, hardLitres / drawn) : 0;
    }

    /** The mean of several years, each with its weight; the weights sum to 1. */
    static YearlyTotals mean(double[] weights, List<YearlyTotals> years) {
        return new YearlyTotals(mean(weights, years, YearlyTotals::regenerations), mean(weights, years, YearlyTotals::overrides),
                mean(weights, years, YearlyTotals::saltGrams), mean(weights, years, YearlyTotals::waterLitres),
                mean(weights, years, YearlyTotals::throughBedLitres), mean(weights, years, YearlyTotals::bypassedLitres),
                mean(weights, years, YearlyTotals::hardDays), mean(weights, years, YearlyTotals::hardLitres),
                mean(weights, years, YearlyTotals::removedGrams), mean(weights, years, YearlyTotals::regeneratedGrams),
                mean(weights, years, YearlyTotals::unusedGrams));
    }

    private static double mean(double[] weights, List<YearlyTotals> years, ToDoubleFunction<YearlyTotals> total) {
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            sum += weights[i] * total.applyAsDouble(years.get(i));
        }
        return sum;
    }

    /** Every total times 365 over the {@code days} it was counted on. */
    public static YearlyTotals of(Totals totals, int days) {
        double scale = (double) Days.PER_YEAR / Guard.within(days, 1, Days.MAX_DAYS, "days");
        return new YearlyTotals(scale * totals.regenerations(), scale * totals.overrides(), scale * totals.saltGrams(),
                scale * totals.waterLitres(), scale * totals.throughBedLitres(), scale * totals.bypassedLitres(),
                scale * totals.hardDays(), scale * totals.hardLitres(), scale * totals.removedGrams(),
                scale * totals.regeneratedGrams(), scale * totals.unusedGrams());
    }

    /** The totals of a number of days at the same rate. */
    public YearlyTotals in(int days) {
        return times((double) days / Days.PER_YEAR);
    }

    /** Every total times {@code factor}. */
    YearlyTotals times(double factor) {
        return new YearlyTotals(factor * regenerations, factor * overrides, factor * saltGrams, factor * waterLitres,
                factor * throughBedLitres, factor * bypassedLitres, factor * hardDays, factor * hardLitres,
                factor * removedGrams, factor * regeneratedGrams, factor * unusedGrams);
    }

    /** Every total of both together. */
    YearlyTotals plus(YearlyTotals other) {
        return new YearlyTotals(regenerations + other.regenerations, overrides + other.overrides, saltGrams + other.saltGrams,
                waterLitres + other.waterLitres, throughBedLitres + other.throughBedLitres,
                bypassedLitres + other.bypassedLitres, hardDays + other.hardDays, hardLitres + other.hardLitres,
                removedGrams + other.removedGrams, regeneratedGrams + other.regeneratedGrams, unusedGrams + other.unusedGrams);
    }
}
