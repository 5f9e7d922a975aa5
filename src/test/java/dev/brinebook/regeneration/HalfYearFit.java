// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.household.DayVariation;
import dev.brinebook.household.MeteredDays;
import dev.brinebook.household.Occupancy;
import dev.brinebook.household.UseModel;
import dev.brinebook.household.WeekdayMeans;
import java.util.Arrays;

/**
 * A household's days fitted as the back-test fits them: plain means of the weekdays over the occupied days, their scatter within
 * the weekday, absences counted on days that follow each other.
 *
 * @param meanLitres mean of the occupied days
 * @param weekdays mean of each weekday, Monday first
 * @param cv scatter about the mean of the weekday, n - 7 degrees of freedom
 * @param leave share of the occupied days that a vacant one follows; 0.105 over n + 5 where none was seen but there are vacant days
 * @param comeBack share of the vacant days that an occupied one follows; 0.32 where none was seen
 */
record HalfYearFit(double meanLitres, double[] weekdays, double cv, double leave, double comeBack) {

    private static final int WEEKDAYS = 7;

    static HalfYearFit of(MeteredDays days, double absenceLitres) {
        int[] known = days.known();
        int[] occupied = Arrays.stream(known).filter(i -> days.litres(i) >= absenceLitres).toArray();
        double[] means = new double[WEEKDAYS];
        int[] counts = new int[WEEKDAYS];
        for (int i : occupied) {
            means[weekday(days, i)] += days.litres(i);
            counts[weekday(days, i)]++;
        }
        for (int w = 0; w < WEEKDAYS; w++) {
            means[w] /= counts[w];
        }
        double squares = Arrays.stream(occupied).mapToDouble(i -> days.litres(i) / means[weekday(days, i)] - 1)
                .map(deviation -> deviation * deviation).sum();
        int[][] followed = new int[2][2];
        for (int i : known) {
            if (i + 1 < days.size() && days.isKnown(i + 1)) {
                followed[days.litres(i) >= absenceLitres ? 1 : 0][days.litres(i + 1) >= absenceLitres ? 1 : 0]++;
            }
        }
        boolean vacant = occupied.length < known.length;
        int after = followed[1][0] + followed[1][1];
        double leave = followed[1][0] > 0 ? (double) followed[1][0] / after : vacant ? 0.105 / (after + 5) : 0;
        double comeBack = followed[0][1] > 0 ? (double) followed[0][1] / (followed[0][0] + followed[0][1]) : vacant ? 0.32 : 0;
        return new HalfYearFit(Arrays.stream(occupied).mapToDouble(days::litres).average().orElseThrow(), means,
                Math.sqrt(squares / (occupied.length - WEEKDAYS)), leave, comeBack);
    }

    private static int weekday(MeteredDays days, int index) {
        return days.dateOf(index).getDayOfWeek().ordinal();
    }

    UseModel model() {
        return new UseModel(means(), DayVariation.ofCv(cv), UseModel.EVEN_MONTHS,
                leave > 0 ? new Occupancy.Chain(leave, comeBack) : Occupancy.ALWAYS);
    }

    private WeekdayMeans means() {
        return new WeekdayMeans(weekdays[0], weekdays[1], weekdays[2], weekdays[3], weekdays[4], weekdays[5], weekdays[6]);
    }
}
