// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.household.Days;
import dev.brinebook.household.UseModel;
import java.util.List;

/**
 * How many hard days a year has, exactly: the weekday is the date, so the start of a cycle is a date, and
 *
 * <pre>R[d+n][j + hard] += R[d][j] · chance that the cycle that starts on date d ends after n nights, hard or not</pre>
 *
 * <p>R[d][j] chance that a cycle starts on date d, j hard days having been so far. A cycle under a meter has one hard day at most,
 * its last. Under a clock the bed stays exhausted until the end.
 * The year starts in the midst of cycles: those of {@value #EARLIER} days before are gone through uncounted, their weekday at
 * random. A cycle takes the month in which it starts.
 * Source: [FELLER].
 */
final class YearOfCycles {

    private static final int EARLIER = 371;
    private static final int WEEKDAYS = 7;

    private YearOfCycles() {
    }

    /**
     * The chance of each number of hard days, from none on.
     *
     * @param months the cycles of each month
     * @param means of each weekday, Monday first
     * @param byClock whether the bed stays exhausted until a clock regenerates it
     * @param expected hard days of a mean year
     */
    static double[] hardDayChances(List<Cycles> months, double[] means, boolean byClock, double expected) {
        int most = (int) Math.min(Days.PER_YEAR, Math.ceil(expected + 8 * Math.sqrt(expected + 1) + 8));
        int days = EARLIER + Days.PER_YEAR;
        int occupancies = months.get(0).states() / months.get(0).weekdays();
        double[][][] starts = new double[occupancies][days + 1][];
        double[] result = new double[most + 1];
        for (int day = 0; day < WEEKDAYS; day++) {
            starts[0][day] = new double[most + 1];
            starts[0][day][0] = 1.0 / WEEKDAYS;
        }
        for (int day = 0; day < days; day++) {
            Cycles cycles = months.get(month(day - EARLIER));
            for (int occupancy = 0; occupancy < occupancies; occupancy++) {
                double[] now = starts[occupancy][day];
                if (now != null) {
                    int weekday = day % WEEKDAYS;
                    int state = weekday % cycles.weekdays() + occupancy * cycles.weekdays();
                    if (byClock) {
                        clock(cycles.nights(state), now, day, means, starts, result);
                    } else {
                        meter(cycles.nights(state), now, day, starts, result);
                    }
                }
            }
        }
        for (double[][] byOccupancy : starts) {
            if (byOccupancy[days] != null) {
                add(result, byOccupancy[days], 1, 0);
            }
        }
        return result;
    }

    private static void meter(List<Cycles.Night> nights, double[] now, int day, double[][][] starts, double[] result) {
        double waiting = 1;
        for (int n = 1; n <= nights.size(); n++) {
            Cycles.Night night = nights.get(n - 1);
            boolean counted = day + n > EARLIER;
            if (day + n > EARLIER + Days.PER_YEAR) {
                break;
            }
            waiting -= night.endAfterHardDay() + night.endAtHome() + night.endVacant();
            add(at(starts, 0, day + n, now.length), now, night.endAfterHardDay(), counted ? 1 : 0);
            add(at(starts, 0, day + n, now.length), now, night.endAtHome(), 0);
            if (night.endVacant() > 0) {
                add(at(starts, 1, day + n, now.length), now, night.endVacant(), 0);
            }
        }
        // What still waits after the year has all of its hard days behind it.
        if (day + nights.size() > EARLIER + Days.PER_YEAR) {
            add(result, now, Math.max(0, waiting), 0);
        }
    }

    private static void clock(List<Cycles.Night> nights, double[] now, int day, double[] means, double[][][] starts,
            double[] result) {
        int length = nights.size();
        int end = day + length;
        int last = Math.min(length, EARLIER + Days.PER_YEAR - day);
        double[] to = end > EARLIER + Days.PER_YEAR ? result : at(starts, 0, end, now.length);
        double before = 0;
        for (int n = 1; n <= last; n++) {
            if (means[(day + n - 1) % WEEKDAYS] > 0) {
                int hard = 0;
                for (int later = n; later <= last; later++) {
                    hard += means[(day + later - 1) % WEEKDAYS] > 0 && day + later > EARLIER ? 1 : 0;
                }
                double usedUp = nights.get(n - 1).hardDay();
                add(to, now, Math.max(0, usedUp - before), hard);
                before = usedUp;
            }
        }
        add(to, now, Math.max(0, 1 - before), 0);
    }

    private static double[] at(double[][][] starts, int occupancy, int day, int size) {
        if (starts[occupancy][day] == null) {
            starts[occupancy][day] = new double[size];
        }
        return starts[occupancy][day];
    }

    /** Adds chances shifted by {@code more} hard days; what exceeds the array goes to its last element. */
    private static void add(double[] to, double[] from, double chance, int more) {
        if (chance == 0) {
            return;
        }
        int last = from.length - 1;
        int used = last;
        while (used > 0 && from[used] == 0) {
            used--;
        }
        for (int j = 0; j <= used; j++) {
            to[Math.min(last, j + more)] += chance * from[j];
        }
    }

    /** The month of a day of the year, January first, by an ordinary year; days before the first are those of the year before. */
    private static int month(int day) {
        int left = Math.floorMod(day, Days.PER_YEAR);
        for (int month = 0; month < UseModel.MONTHS; month++) {
            if (left < UseModel.DAYS_OF_MONTHS.get(month)) {
                return month;
            }
            left -= UseModel.DAYS_OF_MONTHS.get(month);
        }
        return 0;
    }
}
