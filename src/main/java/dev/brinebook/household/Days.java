// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import java.time.LocalDate;
import java.util.Arrays;

/**
 * Use of a household on consecutive days, in litres: the one series on which all policies are compared.
 *
 * <p>Not for hours, and not for what the days cost: a day is the smallest step. Immutable; a class and not a record
 * because a record would hand out its array.
 */
public final class Days implements DailyUse {

    /** Days of the year that yearly figures are for; the leap day is left out. */
    public static final int PER_YEAR = 365;

    /** Three years, one of them a leap year. */
    public static final int MAX_DAYS = 1096;
    /** Holds the largest day of a typical year made from the largest means and the widest scatter. */
    public static final double MAX_USE_LITRES = 3_000_000;
    /** Dates of the series lie in these years, the last of which leaves room to count on. */
    public static final int MIN_YEAR = 1900;
    public static final int MAX_YEAR = 2200;

    private final LocalDate firstDate;
    private final double[] useLitres;

    private Days(LocalDate firstDate, double[] useLitres) {
        Guard.within(firstDate.getYear(), MIN_YEAR, MAX_YEAR, "firstDate's year");
        Guard.within(useLitres.length, 1, MAX_DAYS, "number of days");
        for (double litres : useLitres) {
            Guard.within(litres, 0, MAX_USE_LITRES, "useLitres");
        }
        this.firstDate = firstDate;
        this.useLitres = useLitres;
    }

    /** The series as measured or planned, taken as it is. */
    public static Days series(LocalDate firstDate, double... useLitres) {
        return new Days(firstDate, useLitres.clone());
    }

    /** The same use every day. */
    public static Days constant(LocalDate firstDate, int size, double useLitres) {
        double[] uses = new double[Guard.within(size, 1, MAX_DAYS, "number of days")];
        Arrays.fill(uses, useLitres);
        return new Days(firstDate, uses);
    }

    /** Each day at the mean of its weekday. */
    public static Days weekly(LocalDate firstDate, int size, WeekdayMeans means) {
        return new Days(firstDate, means.inOrder(firstDate, Guard.within(size, 1, MAX_DAYS, "number of days")));
    }

    @Override
    public LocalDate firstDate() {
        return firstDate;
    }

    /** Number of days. */
    @Override
    public int size() {
        return useLitres.length;
    }

    /** Use of the day with this index, the first being 0. */
    @Override
    public double useLitres(int index) {
        return useLitres[index];
    }

    /** Date of the day with this index; the index may lie beyond the last day. */
    public LocalDate dateOf(int index) {
        return firstDate.plusDays(index);
    }

    public double sumLitres() {
        double sum = 0;
        for (double litres : useLitres) {
            sum += litres;
        }
        return sum;
    }

    public double meanLitres() {
        return sumLitres() / useLitres.length;
    }

    /** Use of the largest day. */
    public double maxLitres() {
        double max = 0;
        for (double litres : useLitres) {
            max = Math.max(max, litres);
        }
        return max;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Days days && firstDate.equals(days.firstDate)
                && Arrays.equals(useLitres, days.useLitres);
    }

    @Override
    public int hashCode() {
        return 31 * firstDate.hashCode() + Arrays.hashCode(useLitres);
    }

    @Override
    public String toString() {
        return useLitres.length + " days from " + firstDate + ", " + sumLitres() + " L";
    }
}
