// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a meter saw on each of a run of days, some of which may be missing. A missing day is never counted as one without
 * use.
 *
 * <p>Immutable; a class and not a record because a record would hand out its array.
 */
public final class MeteredDays {

    private final LocalDate firstDate;
    /** NaN where the day is missing. */
    private final double[] litres;

    private MeteredDays(LocalDate firstDate, double[] litres) {
        Guard.within(firstDate.getYear(), Days.MIN_YEAR, Days.MAX_YEAR, "firstDate's year");
        Guard.within(litres.length, 1, Days.MAX_DAYS, "number of days");
        this.firstDate = firstDate;
        this.litres = litres;
    }

    /** Days in order, an empty value for a missing one. */
    public static MeteredDays of(LocalDate firstDate, List<OptionalDouble> litres) {
        double[] values = litres.stream().mapToDouble(day -> day.isEmpty() ? Double.NaN
                : Guard.within(day.getAsDouble(), 0, Days.MAX_USE_LITRES, "litres")).toArray();
        if (Arrays.stream(values).allMatch(Double::isNaN)) {
            throw new IllegalArgumentException("at least one day must be known");
        }
        return new MeteredDays(firstDate, values);
    }

    public LocalDate firstDate() {
        return firstDate;
    }

    /** Number of days, missing ones too. */
    public int size() {
        return litres.length;
    }

    public LocalDate dateOf(int index) {
        return firstDate.plusDays(index);
    }

    /** Weekday of a day, Monday 0. */
    int weekday(int index) {
        return dateOf(index).getDayOfWeek().getValue() - 1;
    }

    public boolean isKnown(int index) {
        return !Double.isNaN(litres[index]);
    }

    /**
     * Use of the day with this index.
     *
     * @throws IllegalArgumentException when it is missing
     */
    public double litres(int index) {
        return Guard.finite(litres[index], "litres of a day that must be known");
    }

    /** Indexes of the days that are known, in order; at least one. */
    public int[] known() {
        return indexes(true);
    }

    /** Dates that are missing, in order. */
    public List<LocalDate> missing() {
        return Arrays.stream(indexes(false)).mapToObj(this::dateOf).toList();
    }

    /** The days from the one with this index on, which must be known. */
    public MeteredDays since(int index) {
        Guard.finite(litres[index], "litres of the first day");
        return new MeteredDays(dateOf(index), Arrays.copyOfRange(litres, index, litres.length));
    }

    /** The days before the one with this index, of which one at least must be known. */
    public MeteredDays until(int index) {
        Guard.within(index, 1, litres.length, "index");
        return of(firstDate, Arrays.stream(litres, 0, index).mapToObj(day -> Double.isNaN(day) ? OptionalDouble.empty()
                : OptionalDouble.of(day)).toList());
    }

    /** Every known day and {@code litresMore} more, such as for the garden. */
    public MeteredDays plus(double litresMore) {
        Guard.notNegative(litresMore, "litresMore");
        return new MeteredDays(firstDate, Arrays.stream(litres).map(day -> day + litresMore).toArray());
    }

    /** The softened {@code share} of every known day. */
    public MeteredDays times(double share) {
        Guard.notNegative(share, "share");
        return new MeteredDays(firstDate, Arrays.stream(litres).map(day -> day * share).toArray());
    }

    /** Each known day, held to the cap of its weekday, Monday first. */
    MeteredDays atMost(double[] capLitres) {
        double[] held = litres.clone();
        for (int i : known()) {
            held[i] = Math.min(held[i], capLitres[weekday(i)]);
        }
        return new MeteredDays(firstDate, held);
    }

    private int[] indexes(boolean known) {
        List<Integer> indexes = new ArrayList<>();
        for (int i = 0; i < litres.length; i++) {
            if (isKnown(i) == known) {
                indexes.add(i);
            }
        }
        return indexes.stream().mapToInt(Integer::intValue).toArray();
    }

    /** The days that are known, as a series whose dates mean nothing. */
    private Days knownOnly() {
        return Days.series(firstDate, Arrays.stream(known()).mapToDouble(this::litres).toArray());
    }

    public double meanLitres() {
        return knownOnly().meanLitres();
    }

    /** Mean of each weekday over the days that are known; one that was never seen gets the mean of all. */
    public WeekdayMeans weekdayMeans() {
        double[] sum = new double[7];
        int[] count = new int[7];
        for (int i : known()) {
            sum[weekday(i)] += litres[i];
            count[weekday(i)]++;
        }
        double mean = meanLitres();
        double[] d = new double[7];
        for (int i = 0; i < 7; i++) {
            d[i] = count[i] == 0 ? mean : sum[i] / count[i];
        }
        return WeekdayMeans.mondayFirst(d);
    }

    /** The series without gaps: each missing day at the mean of its weekday. */
    public Days filled() {
        double[] means = weekdayMeans().inOrder(firstDate, litres.length);
        double[] filled = litres.clone();
        for (int i = 0; i < filled.length; i++) {
            filled[i] = isKnown(i) ? litres[i] : means[i];
        }
        return Days.series(firstDate, filled);
    }
}
