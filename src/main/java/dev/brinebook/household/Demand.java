// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * The water that a household uses through its softener.
 *
 * @param model the model of its days
 * @param measured the days as measured, softened part only; absent when they are to be made from the means
 * @param peakLitresPerMinute flow of short peaks
 * @param continuousLitresPerMinute flow that lasts
 */
public record Demand(UseModel model, Optional<Days> measured, double peakLitresPerMinute,
        double continuousLitresPerMinute) {

    public static final int MAX_PEOPLE = 15;
    /** Softened use of a mean day above which the flows of dwellings do not hold. Source: [CP-COMMERCIAL] 1,000 gal. */
    public static final double MOST_OF_A_HOUSEHOLD_LITRES = 3800;
    public static final double MIN_USE_PER_PERSON_LITRES = 10;
    public static final double MAX_USE_PER_PERSON_LITRES = 1_000;
    /** Indoor use of a person and day beyond which it is doubted: a fifth of the mean, and nearly three times it. [REU-2016-PERSON]. */
    private static final double ASSUMED_LEAST_PLAUSIBLE_LITRES = 40;
    private static final double ASSUMED_MOST_PLAUSIBLE_LITRES = 600;
    /** Highest mean indoor use of a day; with the outdoor use it stays within {@link WeekdayMeans#MAX_MEAN_LITRES}. */
    public static final double MAX_DAILY_USE_LITRES = 15_000;
    public static final double MAX_OUTDOOR_USE_LITRES = 5_000;
    /** Softened outdoor use of a day where none is given. Source: [CP-INSTALLATION] outdoor taps are left unsoftened. */
    public static final double DEFAULT_OUTDOOR_USE_LITRES = 0;
    /** Highest use of one measured day. */
    public static final double MAX_MEASURED_DAY_LITRES = 45_000;
    public static final double MAX_FLOW_LITRES_PER_MINUTE = 500;
    /** Most that the mean use may be uncertain by, as a share of it. */
    public static final double MAX_USE_UNCERTAINTY_SHARE = 0.5;
    /** Of a use that was not measured day by day: twice the variation that comparisons assume of it. Source: from memory. */
    public static final double ASSUMED_USE_UNCERTAINTY_SHARE = 0.2;
    private static final double HIGH_DAY_SHARE = 0.999;

    public Demand {
        Objects.requireNonNull(model, "model");
        Objects.requireNonNull(measured, "measured");
        Guard.notNegative(peakLitresPerMinute, "peakLitresPerMinute");
        Guard.notNegative(continuousLitresPerMinute, "continuousLitresPerMinute");
    }

    /** Weekdays alone, always at home. */
    public Demand(WeekdayMeans means, DayVariation variation, Optional<Days> measured, double peakLitresPerMinute,
            double continuousLitresPerMinute) {
        this(new UseModel(means, variation), measured, peakLitresPerMinute, continuousLitresPerMinute);
    }

    /** Mean softened use of each weekday when somebody is at home. */
    public WeekdayMeans means() {
        return model.means();
    }

    /** Whether a daily use per person is plausible; 0 is, in an empty house. */
    public static boolean isPlausiblePerPerson(double litresPerDay) {
        return litresPerDay == 0 || Guard.isWithin(litresPerDay, ASSUMED_LEAST_PLAUSIBLE_LITRES, ASSUMED_MOST_PLAUSIBLE_LITRES);
    }

    /** How the days scatter about their mean. */
    public DayVariation variation() {
        return model.variation();
    }

    /** Mean softened use of a day: of those measured, else of an ordinary week at home. */
    public double meanLitres() {
        return measured.map(Days::meanLitres).orElseGet(means()::meanLitres);
    }

    /**
     * Use that one day in a thousand of the busiest weekday and month exceeds.
     *
     * <pre>V = m x(CV, 0.999)</pre>
     *
     * <p>V use, L; m mean of the busiest weekday in the busiest month, L; x {@link DayVariation#gammaQuantile}.
     * Validity: as the quantile.
     * Source: as the quantile.
     * Deviation: none.
     */
    public double highDayLitres() {
        return model.busiestMonthMeans().busiestLitres() * DayVariation.gammaQuantile(model.cv(), HIGH_DAY_SHARE);
    }

    /**
     * Hardness that a mean day loads on the resin.
     *
     * <pre>L = V H / 1000</pre>
     *
     * <p>L load, g as CaCO3 per day; V {@link #meanLitres}; H compensated hardness, mg/L as CaCO3.
     * Validity: H of 0 or more.
     * Source: mass balance, by definition.
     * Deviation: none.
     */
    public double dailyLoadGrams(double compensatedMgPerL) {
        return meanLitres() * compensatedMgPerL / 1000;
    }

    /**
     * The days to try policies on: those measured, or {@code size} typical ones from {@code firstDate} on.
     *
     * @param seed sets the order of high and low days, never their total
     */
    public Days days(LocalDate firstDate, int size, long seed) {
        return measured.orElseGet(() -> model.typicalDays(firstDate, size, seed));
    }

    /**
     * Scatter of {@code days} about their mean: the coefficient of variation.
     *
     * <pre>CV = √(Σ (V(i) - m)² / (n - 1)) / m</pre>
     *
     * <p>V use of a day, L; m mean, L; n number of days.
     * Validity: 0 for fewer than two days, or where nothing is used.
     * Source: the sample coefficient of variation, by definition.
     * Deviation: none.
     */
    public static double coefficientOfVariation(Days days) {
        double mean = days.meanLitres();
        if (mean == 0 || days.size() < 2) {
            return 0;
        }
        double squares = 0;
        for (int i = 0; i < days.size(); i++) {
            double deviation = days.useLitres(i) - mean;
            squares += deviation * deviation;
        }
        return Math.sqrt(squares / (days.size() - 1)) / mean;
    }
}
