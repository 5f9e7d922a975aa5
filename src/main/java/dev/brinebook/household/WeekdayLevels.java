// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

/** Means of the weekdays over some days, and how many days they are of. Weekdays count from 0 for Monday. */
final class WeekdayLevels {

    private static final int WEEKDAYS = 7;

    private final double[] sumLitres = new double[WEEKDAYS];
    private final int[] count = new int[WEEKDAYS];
    private final double[] meanLitres = new double[WEEKDAYS];
    private int fitted;

    private WeekdayLevels() {
    }

    /** Means of the days with these indexes; of a weekday that is not among them, 0. */
    static WeekdayLevels of(MeteredDays days, int[] indexes) {
        WeekdayLevels levels = new WeekdayLevels();
        for (int i : indexes) {
            levels.sumLitres[days.weekday(i)] += days.litres(i);
            levels.count[days.weekday(i)]++;
        }
        for (int w = 0; w < WEEKDAYS; w++) {
            levels.meanLitres[w] = levels.count[w] == 0 ? 0 : levels.sumLitres[w] / levels.count[w];
            levels.fitted += levels.count[w] == 0 ? 0 : 1;
        }
        return levels;
    }

    /** The mean of all days for every weekday. */
    WeekdayLevels pooled() {
        WeekdayLevels pooled = copy();
        for (int w = 0; w < WEEKDAYS; w++) {
            pooled.meanLitres[w] = meanLitres();
        }
        pooled.fitted = Math.min(1, fitted);
        return pooled;
    }

    /** Another mean for one weekday, that no day is measured against. */
    WeekdayLevels with(int weekday, double litres) {
        WeekdayLevels other = copy();
        other.meanLitres[weekday] = litres;
        return other;
    }

    private WeekdayLevels copy() {
        WeekdayLevels copy = new WeekdayLevels();
        System.arraycopy(sumLitres, 0, copy.sumLitres, 0, WEEKDAYS);
        System.arraycopy(count, 0, copy.count, 0, WEEKDAYS);
        System.arraycopy(meanLitres, 0, copy.meanLitres, 0, WEEKDAYS);
        copy.fitted = fitted;
        return copy;
    }

    /** How many days of a weekday there were. */
    int count(int weekday) {
        return count[weekday];
    }

    double meanLitres(int weekday) {
        return meanLitres[weekday];
    }

    /** Mean of all days; 0 when there are none. */
    double meanLitres() {
        double sum = 0;
        int days = 0;
        for (int w = 0; w < WEEKDAYS; w++) {
            sum += sumLitres[w];
            days += count[w];
        }
        return days == 0 ? 0 : sum / days;
    }

    /** How many means were fitted to the days. */
    int fitted() {
        return fitted;
    }

    /** Monday first. */
    double[] mondayFirst() {
        return meanLitres.clone();
    }
}
