// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import dev.brinebook.randomness.RandomStream;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;

/**
 * How the days of a household come about.
 *
 * <pre>V = o · m(weekday) · f(month) · G,   G gamma of mean 1 and scatter CV</pre>
 *
 * <p>V use of a day, litres; o whether somebody is at home, 1 or 0; m mean of the weekday when somebody is; f factor of the
 * month.
 * Validity: days that do not depend on each other but by the spells of {@link Occupancy}.
 * Source: [DAIAD] for gamma, scatter, weekend and absences.
 * Deviation: none.
 *
 * @param means mean use of each weekday when somebody is at home
 * @param variation scatter of a day about its mean
 * @param monthFactors use of a day of each month over that of the year, January first
 * @param occupancy on which days somebody is at home
 * @param change how far the home departs from this in the long run, and in each simulated year
 */
public record UseModel(WeekdayMeans means, DayVariation variation, List<Double> monthFactors, Occupancy occupancy,
        UseChange change) {

    public static final int MONTHS = 12;
    public static final double MAX_MONTH_FACTOR = 3;
    private static final int MONTHS_OF_A_SEASON = 3;
    /** Every month like the others. */
    public static final List<Double> EVEN_MONTHS = List.of(1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0);

    public UseModel {
        Objects.requireNonNull(means, "means");
        Objects.requireNonNull(occupancy, "occupancy");
        Objects.requireNonNull(variation, "variation");
        Objects.requireNonNull(change, "change");
        monthFactors = List.copyOf(monthFactors);
        Guard.within(monthFactors.size(), MONTHS, MONTHS, "number of monthFactors");
        monthFactors.forEach(factor -> Guard.within(factor, 0, MAX_MONTH_FACTOR, "monthFactor"));
    }

    /** A home that stays as it is. */
    public UseModel(WeekdayMeans means, DayVariation variation, List<Double> monthFactors, Occupancy occupancy) {
        this(means, variation, monthFactors, occupancy, UseChange.NONE);
    }

    /** Weekdays alone, always at home. */
    public UseModel(WeekdayMeans means, DayVariation variation) {
        this(means, variation, EVEN_MONTHS, Occupancy.ALWAYS);
    }

    /** The same with other means. */
    public UseModel withMeans(WeekdayMeans others) {
        return new UseModel(others, variation, monthFactors, occupancy, change);
    }

    /** The same with another {@link UseChange}. */
    public UseModel with(UseChange other) {
        return new UseModel(means, variation, monthFactors, occupancy, other);
    }

    /**
     * The same in four seasons, of three months each, in order of their factors.
     *
     * <pre>f(season) = Σ f(m) n(m) / Σ n(m)</pre>
     *
     * <p>f factor of a month; n its days; the sums are over the three months of the season.
     * Validity: months with no more than four different factors stay unchanged.
     * Source: a weighted mean, by definition.
     * Deviation: none.
     */
    public UseModel withSeasonsOfMonths() {
        if (monthFactors.stream().distinct().count() <= MONTHS / MONTHS_OF_A_SEASON) {
            return this;
        }
        Integer[] order = IntStream.range(0, MONTHS).boxed().sorted(Comparator.comparing(monthFactors::get)).toArray(Integer[]::new);
        Double[] factors = new Double[MONTHS];
        for (int first = 0; first < MONTHS; first += MONTHS_OF_A_SEASON) {
            double sum = 0;
            int days = 0;
            for (int i = first; i < first + MONTHS_OF_A_SEASON; i++) {
                sum += monthFactors.get(order[i]) * DAYS_OF_MONTHS.get(order[i]);
                days += DAYS_OF_MONTHS.get(order[i]);
            }
            for (int i = first; i < first + MONTHS_OF_A_SEASON; i++) {
                factors[order[i]] = sum / days;
            }
        }
        return new UseModel(means, variation, List.of(factors), occupancy, change);
    }

    /** Scatter of a day: its standard deviation over its mean. */
    public double cv() {
        return variation.cv();
    }

    /** Days of each month of an ordinary year. */
    public static final List<Integer> DAYS_OF_MONTHS = List.of(31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31);

    /** Share of the days with somebody at home in the long run. */
    public double occupiedShare() {
        return occupancy.longRun().map(Occupancy.Chain::occupiedShare).orElse(1.0);
    }

    /**
     * Mean use of a day in the long run, vacant days and months included.
     *
     * <pre>V = o m Σ f(i) n(i) / 365</pre>
     *
     * <p>V litres; o {@link #occupiedShare}; m mean of the week at home, L; f factor and n days of month i.
     * Validity: an ordinary year.
     * Source: a weighted mean, by definition.
     * Deviation: none.
     */
    public double meanLitres() {
        double factors = 0;
        for (int month = 0; month < MONTHS; month++) {
            factors += monthFactors.get(month) * DAYS_OF_MONTHS.get(month) / Days.PER_YEAR;
        }
        return occupiedShare() * means.meanLitres() * factors;
    }

    /** Mean use of each weekday of the busiest month when somebody is at home: the basis of a reserve. */
    public WeekdayMeans busiestMonthMeans() {
        return means.times(monthFactors.stream().mapToDouble(Double::doubleValue).max().orElseThrow());
    }

    /**
     * A run of typical days: occupied dates chosen by the seed, each with the mean of its weekday and month, and varied as in
     * {@link DayVariation#typicalDays}.
     */
    public Days typicalDays(LocalDate firstDate, int size, long seed) {
        boolean[] occupied = occupied(firstDate, size, new RandomStream(seed, 0));
        double[] meanLitres = new double[size];
        for (int i = 0; i < size; i++) {
            meanLitres[i] = occupied[i] ? occupiedMeanLitres(firstDate.plusDays(i)) : 0;
        }
        return variation.typicalDays(firstDate, meanLitres, seed);
    }

    /** Mean use of a date on which somebody is at home. */
    double occupiedMeanLitres(LocalDate date) {
        return means.litres(date.getDayOfWeek()) * monthFactors.get(date.getMonthValue() - 1);
    }

    /** The same of each date of a run. */
    double[] occupiedMeanLitres(LocalDate firstDate, int size) {
        double[] meanLitres = new double[size];
        Arrays.setAll(meanLitres, day -> occupiedMeanLitres(firstDate.plusDays(day)));
        return meanLitres;
    }

    /** The days of {@code size} from {@code firstDate} on on which somebody is at home, by the seed. */
    private boolean[] occupied(LocalDate firstDate, int size, RandomStream stream) {
        boolean[] occupied = new boolean[size];
        for (int i = 0; i < size; i++) {
            LocalDate date = firstDate.plusDays(i);
            occupied[i] = i == 0 ? occupancy.first(date, stream) : occupancy.next(date, occupied[i - 1], stream);
        }
        return occupied;
    }
}
