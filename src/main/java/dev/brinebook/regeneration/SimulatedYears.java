// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import dev.brinebook.household.SampledYears;
import java.util.Arrays;
import java.util.function.ToDoubleFunction;

/**
 * Results of a policy in many simulated years in a row: bed and controller carry over from each year to the next.
 *
 * <p>Several policies that are tried on the same {@link SampledYears} see the same days.
 */
public final class SimulatedYears {

    public static final int MIN_YEARS = 10;

    private final Totals[] years;
    private final double mostLitres;

    private SimulatedYears(Totals[] years, double mostLitres) {
        this.years = years;
        this.mostLitres = mostLitres;
    }

    /** The years of {@code drawn} under {@code policy}. */
    public static SimulatedYears of(SampledYears drawn, double hardnessMilligramsPerLitre, Regeneration regeneration,
            Policy policy) {
        Simulation run = Simulation.counting(Guard.notNegative(hardnessMilligramsPerLitre, "hardnessMilligramsPerLitre"),
                regeneration, policy);
        Totals[] years = new Totals[drawn.count()];
        for (int year = 0; year < years.length; year++) {
            years[year] = run.through(drawn.year(year));
        }
        return new SimulatedYears(years, run.mostLitres());
    }

    /**
     * Whether a bed is never exhausted in them. A controller does not know the bed: then all but what the bed takes up and gives back
     * is as with any other that is not.
     */
    boolean areSoft(double hardnessMilligramsPerLitre, Regeneration regeneration) {
        return mostLitres * hardnessMilligramsPerLitre / 1000 <= regeneration.capacityGrams();
    }

    /** Number of years. */
    public int count() {
        return years.length;
    }

    /** Totals of one year. */
    public Totals year(int number) {
        return years[number];
    }

    /** How one of the totals spreads over the years. */
    public Spread spread(ToDoubleFunction<Totals> total) {
        return Spread.of(Arrays.stream(years).mapToDouble(total).toArray());
    }

    /** Share of the years with a day on which the bed is exhausted. */
    public double yearsWithHardDaysShare() {
        return (double) Arrays.stream(years).filter(year -> year.hardDays() > 0).count() / years.length;
    }
}
