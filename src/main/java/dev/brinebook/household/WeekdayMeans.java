// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import java.time.DayOfWeek;
import java.time.LocalDate;

/**
 * Mean use of each weekday when the household is at home, in litres a day.
 */
public record WeekdayMeans(double mondayLitres, double tuesdayLitres, double wednesdayLitres, double thursdayLitres,
                           double fridayLitres, double saturdayLitres, double sundayLitres) {

    /**
     * Use of a weekend day over use of another day.
     *
     * <p>Source: [DAIAD] computed from 21,964 home-days.
     */
    public static final double DEFAULT_WEEKEND_RATIO = 1.09;
    public static final double MIN_WEEKEND_RATIO = 0.1;
    public static final double MAX_WEEKEND_RATIO = 5;
    /** Far above any household, so that a slip of the unit is refused. */
    public static final double MAX_MEAN_LITRES = 20_000;
    /** Holds the largest weekend that the largest mean and ratio make, in the busiest month. */
    public static final double MAX_WEEKDAY_LITRES = 150_000;

    /** Refuses a negative or an absurd mean. */
    public WeekdayMeans {
        Guard.within(mondayLitres, 0, MAX_WEEKDAY_LITRES, "mondayLitres");
        Guard.within(tuesdayLitres, 0, MAX_WEEKDAY_LITRES, "tuesdayLitres");
        Guard.within(wednesdayLitres, 0, MAX_WEEKDAY_LITRES, "wednesdayLitres");
        Guard.within(thursdayLitres, 0, MAX_WEEKDAY_LITRES, "thursdayLitres");
        Guard.within(fridayLitres, 0, MAX_WEEKDAY_LITRES, "fridayLitres");
        Guard.within(saturdayLitres, 0, MAX_WEEKDAY_LITRES, "saturdayLitres");
        Guard.within(sundayLitres, 0, MAX_WEEKDAY_LITRES, "sundayLitres");
    }

    /** The same mean on every day. */
    public static WeekdayMeans everyDay(double meanLitres) {
        return new WeekdayMeans(meanLitres, meanLitres, meanLitres, meanLitres, meanLitres, meanLitres, meanLitres);
    }

    /** Seven means in order, the first for Monday. */
    static WeekdayMeans mondayFirst(double... d) {
        return new WeekdayMeans(d[0], d[1], d[2], d[3], d[4], d[5], d[6]);
    }

    /** A week of daily mean {@code meanLitres} whose Saturday and Sunday use {@code weekendRatio} times as much as the other days. */
    public static WeekdayMeans ofWeek(double meanLitres, double weekendRatio) {
        Guard.within(meanLitres, 0, MAX_MEAN_LITRES, "meanLitres");
        double weekday = meanLitres * weekdayFactor(weekendRatio);
        double weekend = meanLitres * weekendFactor(weekendRatio);
        return new WeekdayMeans(weekday, weekday, weekday, weekday, weekday, weekend, weekend);
    }

    /**
     * Use of a day from Monday to Friday over the mean day of the week.
     *
     * <pre>f = 7 / (5 + 2 r)</pre>
     *
     * <p>r use of a weekend day over use of another day.
     * Validity: r from {@value #MIN_WEEKEND_RATIO} to {@value #MAX_WEEKEND_RATIO}.
     * Source: [DAIAD] for r; the factor follows because the seven days must average 1.
     * Deviation: none.
     */
    public static double weekdayFactor(double weekendRatio) {
        return 7 / (5 + 2 * Guard.within(weekendRatio, MIN_WEEKEND_RATIO, MAX_WEEKEND_RATIO, "weekendRatio"));
    }

    /**
     * Use of a Saturday or Sunday over the mean day of the week.
     *
     * <pre>f = 7 r / (5 + 2 r)</pre>
     *
     * <p>r use of a weekend day over use of another day.
     * Validity: r from {@value #MIN_WEEKEND_RATIO} to {@value #MAX_WEEKEND_RATIO}.
     * Source: [DAIAD] for r; the factor follows because the seven days must average 1.
     * Deviation: none.
     */
    public static double weekendFactor(double weekendRatio) {
        return weekendRatio * weekdayFactor(weekendRatio);
    }

    /** Every mean times {@code factor}. */
    public WeekdayMeans times(double factor) {
        return new WeekdayMeans(factor * mondayLitres, factor * tuesdayLitres, factor * wednesdayLitres,
                factor * thursdayLitres, factor * fridayLitres, factor * saturdayLitres, factor * sundayLitres);
    }

    /** Every mean and {@code litres} more. */
    public WeekdayMeans plus(double litres) {
        return new WeekdayMeans(litres + mondayLitres, litres + tuesdayLitres, litres + wednesdayLitres,
                litres + thursdayLitres, litres + fridayLitres, litres + saturdayLitres, litres + sundayLitres);
    }

    /** Mean use of this weekday. */
    public double litres(DayOfWeek day) {
        return mondayFirst()[day.getValue() - 1];
    }

    /** Mean over the seven weekdays. */
    public double meanLitres() {
        double sum = 0;
        for (double litres : mondayFirst()) {
            sum += litres;
        }
        return sum / 7;
    }

    /** Mean of the weekday that has the highest. */
    public double busiestLitres() {
        double busiest = 0;
        for (double litres : mondayFirst()) {
            busiest = Math.max(busiest, litres);
        }
        return busiest;
    }

    /** Number of weekdays on which anything is used. */
    public int weekdaysWithUse() {
        int weekdays = 0;
        for (double litres : mondayFirst()) {
            weekdays += litres > 0 ? 1 : 0;
        }
        return weekdays;
    }

    /** The means of {@code size} consecutive dates. */
    double[] inOrder(LocalDate firstDate, int size) {
        double[] means = mondayFirst();
        int start = firstDate.getDayOfWeek().getValue() - 1;
        double[] inOrder = new double[size];
        for (int i = 0; i < size; i++) {
            inOrder[i] = means[(start + i) % 7];
        }
        return inOrder;
    }

    private double[] mondayFirst() {
        return new double[] {mondayLitres, tuesdayLitres, wednesdayLitres, thursdayLitres, fridayLitres,
            saturdayLitres, sundayLitres};
    }
}
