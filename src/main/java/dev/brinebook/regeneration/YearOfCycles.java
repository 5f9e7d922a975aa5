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
    private static final double NEGLIGIBLE = 1e-15;

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
        Chances[][] starts = new Chances[occupancies][days + 1];
        Chances result = new Chances(most);
        for (int day = 0; day < WEEKDAYS; day++) {
            starts[0][day] = new Chances(most, 1.0 / WEEKDAYS);
        }
        for (int day = 0; day < days; day++) {
            Cycles cycles = months.get(month(day - EARLIER));
            for (int occupancy = 0; occupancy < occupancies; occupancy++) {
                if (starts[occupancy][day] != null) {
                    Chances now = starts[occupancy][day].trimmed();
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
        for (Chances[] byOccupancy : starts) {
            if (byOccupancy[days] != null) {
                result.add(byOccupancy[days], 1, 0);
            }
        }
        return result.values;
    }

    /** Chances of numbers of hard days, from none on; what exceeds the array is in its last element. */
    private static final class Chances {

        private final double[] values;
        /** The fewest and the most hard days that have a chance. */
        private int first;
        private int used;

        /** Nothing yet. */
        Chances(int most) {
            values = new double[most + 1];
            first = most;
        }

        /** No hard day, with a chance. */
        Chances(int most, double chance) {
            this(most);
            values[0] = chance;
            first = 0;
        }

        /** Adds others with {@code more} hard days. */
        void add(Chances from, double chance, int more) {
            if (chance == 0) {
                return;
            }
            int last = values.length - 1;
            int whole = Math.min(from.used, last - more);
            for (int j = from.first; j <= whole; j++) {
                values[j + more] += chance * from.values[j];
            }
            for (int j = Math.max(from.first, whole + 1); j <= from.used; j++) {
                values[last] += chance * from.values[j];
            }
            first = Math.min(first, Math.min(last, from.first + more));
            used = Math.max(used, Math.min(last, from.used + more));
        }

        /** Adds others, as they are and with one more hard day. */
        void addWithOneMore(Chances from, double chance, double chanceOfOneMore) {
            if (chance == 0 && chanceOfOneMore == 0) {
                return;
            }
            if (from.used + 1 >= values.length) {
                add(from, chance, 0);
                add(from, chanceOfOneMore, 1);
                return;
            }
            double[] others = from.values;
            values[from.first] += chance * others[from.first];
            for (int j = from.first + 1; j <= from.used; j++) {
                values[j] += chance * others[j] + chanceOfOneMore * others[j - 1];
            }
            values[from.used + 1] += chanceOfOneMore * others[from.used];
            first = Math.min(first, from.first);
            used = Math.max(used, from.used + (chanceOfOneMore == 0 ? 0 : 1));
        }

        /** Leaves out the ends that no digit of the result has. */
        Chances trimmed() {
            while (used > first && values[used] < NEGLIGIBLE) {
                used--;
            }
            while (first < used && values[first] < NEGLIGIBLE) {
                first++;
            }
            return this;
        }
    }

    private static void meter(List<Cycles.Night> nights, Chances now, int day, Chances[][] starts, Chances result) {
        double waiting = 1;
        for (int n = 1; n <= nights.size(); n++) {
            Cycles.Night night = nights.get(n - 1);
            boolean counted = day + n > EARLIER;
            if (day + n > EARLIER + Days.PER_YEAR) {
                break;
            }
            waiting -= night.endAfterHardDay() + night.endAtHome() + night.endVacant();
            Chances to = at(starts, 0, day + n, now);
            if (counted) {
                to.addWithOneMore(now, night.endAtHome(), night.endAfterHardDay());
            } else {
                to.add(now, night.endAtHome() + night.endAfterHardDay(), 0);
            }
            if (night.endVacant() > 0) {
                at(starts, 1, day + n, now).add(now, night.endVacant(), 0);
            }
        }
        // What still waits after the year has all of its hard days behind it.
        if (day + nights.size() > EARLIER + Days.PER_YEAR) {
            result.add(now, Math.max(0, waiting), 0);
        }
    }

    private static void clock(List<Cycles.Night> nights, Chances now, int day, double[] means, Chances[][] starts, Chances result) {
        int end = day + nights.size();
        int last = Math.min(nights.size(), EARLIER + Days.PER_YEAR - day);
        Chances to = end > EARLIER + Days.PER_YEAR ? result : at(starts, 0, end, now);
        int hard = 0;
        for (int n = 1; n <= last; n++) {
            hard += means[(day + n - 1) % WEEKDAYS] > 0 && day + n > EARLIER ? 1 : 0;
        }
        double before = 0;
        for (int n = 1; n <= last; n++) {
            if (means[(day + n - 1) % WEEKDAYS] > 0) {
                double usedUp = nights.get(n - 1).hardDay();
                to.add(now, Math.max(0, usedUp - before), hard);
                before = usedUp;
                hard -= day + n > EARLIER ? 1 : 0;
            }
        }
        to.add(now, Math.max(0, 1 - before), 0);
    }

    private static Chances at(Chances[][] starts, int occupancy, int day, Chances like) {
        if (starts[occupancy][day] == null) {
            starts[occupancy][day] = new Chances(like.values.length - 1);
        }
        return starts[occupancy][day];
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
