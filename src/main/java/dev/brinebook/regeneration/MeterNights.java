// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * The nights of a household's cycles under a delayed meter, and the use before them, up to a number of lattice points: what
 * {@link MeterRates} reads for any count.
 */
final class MeterNights implements CycleNights {

    private static final double ENDED = 1e-12;
    /** Points of which one sum is kept. */
    private static final int SUMMED = 32;

    /**
     * One night of the cycles of some states.
     *
     * @param day the use on it
     * @param before the use before it
     * @param sums of every {@value #SUMMED} points of that, from none on
     */
    private record Drawn(LatticeNight day, LatticeRow before, double[] sums) {

        static Drawn of(LatticeNight day, LatticeRow before) {
            double[] values = before.values();
            double[] sums = new double[values.length / SUMMED + 1];
            for (int i = 1; i < sums.length; i++) {
                sums[i] = added(sums[i - 1], values, (i - 1) * SUMMED, i * SUMMED);
            }
            return new Drawn(day, before, sums);
        }

        private static double added(double sum, double[] values, int from, int to) {
            double added = sum;
            for (int k = from; k < to; k++) {
                added += values[k];
            }
            return added;
        }

        /** The chance of the first points. */
        double sum(int points) {
            return added(sums[points / SUMMED], before.values(), points / SUMMED * SUMMED, points);
        }

        /** Chance to be at home and still waiting after it, where the controller calls at this lattice point. */
        double waits(int point) {
            double[] values = before.values();
            int from = Math.max(before.first(), point - day.width() + 1);
            int below = Math.min(from - before.first(), values.length);
            int count = Math.min(before.end(), point + 1) - from;
            // Shares are kept from the largest use down, so that both run the same way.
            double certain = below > 0 ? sum(below) : 0;
            return count <= 0 ? certain : certain
                    + LatticeRow.dot(values, from - before.first(), day.downwards(), day.width() - 1 - point + from, count);
        }
    }

    private final RenewalRows rows;
    private final LatticeNight[] days;
    private final int overrideDays;
    private final int points;
    private final boolean absences;
    /** Use on all the nights that differ. */
    private final List<Drawn> drawn = new ArrayList<>();
    /** Their places, by weekday on which a cycle starts and day of the cycle. */
    private final int[][] nights;
    /** By state and class: expected days at home, by the litres used before them. */
    private final double[][][] before;

    /**
     * Calculates them.
     *
     * @param days the use of each class of weekdays
     * @param points lattice points up to which the use before a day is needed
     */
    MeterNights(RenewalRows rows, LatticeNight[] days, int overrideDays, int points) {
        this.rows = rows;
        this.days = days;
        this.overrideDays = overrideDays;
        this.points = points;
        nights = new int[rows.weekdays()][];
        absences = rows.states() > nights.length;
        rows.reach(points);
        Map<LatticeRow, int[]> known = new IdentityHashMap<>();
        for (int weekday = 0; weekday < nights.length; weekday++) {
            nights[weekday] = nights(weekday, known);
        }
        before = absences ? eitherWay() : atHome();
    }

    @Override
    public double[] before(int state, int of) {
        return before[state][of];
    }

    /** Indexes into the list of nights; equal nights share one entry. */
    private int[] nights(int weekday, Map<LatticeRow, int[]> known) {
        int[] places = new int[overrideDays];
        for (int n = 0; n < overrideDays; n++) {
            int kind = rows.classOf(weekday, n + 1);
            LatticeRow row = rows.row(weekday, n + 1);
            int[] made = known.computeIfAbsent(row, r -> new int[days.length]);
            if (made[kind] == 0) {
                drawn.add(Drawn.of(days[kind], row));
                made[kind] = drawn.size();
            }
            places[n] = made[kind] - 1;
        }
        return places;
    }

    /** Of cycles that start at home, by weekday and class. */
    private double[][][] atHome() {
        double[][][] sums = new double[nights.length][days.length][points];
        for (int weekday = 0; weekday < nights.length; weekday++) {
            for (int n = 1; n <= nights[weekday].length; n++) {
                add(sums[weekday], weekday, n, 1);
            }
        }
        return sums;
    }

    private void add(double[][] to, int weekday, int n, double share) {
        LatticeRow row = drawn.get(nights[weekday][n - 1]).before();
        double[] sum = to[rows.classOf(weekday, n)];
        int end = Math.min(row.end(), sum.length);
        for (int k = row.first(); k < end; k++) {
            sum[k] += share * row.values()[k - row.first()];
        }
    }

    /** The same of cycles that start after a day at home, then after a vacant one. */
    private double[][][] eitherWay() {
        int weekdays = nights.length;
        double[][][] home = new double[weekdays][days.length][points];
        double[][][] afterVacant = new double[weekdays][days.length][points];
        for (int n = 1; n <= overrideDays; n++) {
            boolean last = n == overrideDays;
            double[][][] longer = new double[weekdays][][];
            double[][][] all = new double[2 * weekdays][][];
            for (int weekday = 0; weekday < weekdays; weekday++) {
                add(home[weekday], weekday, n, 1);
                double[][] later = afterVacant[(weekday + 1) % weekdays];
                longer[weekday] = mixed(home[weekday], rows.homeAfter(false), later);
                all[weekday] = last ? mixed(home[weekday], rows.homeAfter(true), later) : null;
                all[weekdays + weekday] = longer[weekday];
            }
            if (last) {
                return all;
            }
            afterVacant = longer;
        }
        throw new IllegalStateException("an override is needed with absences");
    }

    private static double[][] mixed(double[][] home, double share, double[][] other) {
        double[][] mixed = new double[home.length][home[0].length];
        for (int of = 0; of < home.length; of++) {
            for (int k = 0; k < mixed[of].length; k++) {
                mixed[of][k] = share * home[of][k] + (1 - share) * other[of][k];
            }
        }
        return mixed;
    }

    @Override
    public Cycles cycles(int point) {
        int weekdays = nights.length;
        Cycles cycles = new Cycles(weekdays, absences ? 2 : 1, false);
        double[] waits = new double[drawn.size()];
        for (int i = 0; i < waits.length; i++) {
            waits[i] = drawn.get(i).waits(point);
        }
        double[] home = new double[weekdays * cycles.states() / weekdays];
        double[] away = new double[home.length];
        double[] afterVacant = new double[weekdays];
        Arrays.fill(home, 0, weekdays, 1);
        Arrays.fill(away, weekdays, away.length, 1);
        for (int n = 1; n <= overrideDays; n++) {
            double[] later = afterVacant.clone();
            for (int weekday = 0; weekday < weekdays; weekday++) {
                double own = waits[nights[weekday][n - 1]];
                boolean idle = days[rows.classOf(weekday, n)].mean() == 0;
                double next = later[(weekday + 1) % weekdays];
                add(cycles, weekday, n, idle, absences ? rows.homeAfter(true) * own + (1 - rows.homeAfter(true)) * next : own,
                        home, away);
                if (absences) {
                    afterVacant[weekday] = rows.homeAfter(false) * own + (1 - rows.homeAfter(false)) * next;
                    add(cycles, weekdays + weekday, n, idle, afterVacant[weekday], home, away);
                }
            }
        }
        return cycles;
    }

    /** The next night of the cycles that start in a state. */
    private void add(Cycles cycles, int state, int n, boolean idle, double waits, double[] home, double[] away) {
        double waiting = home[state] + away[state];
        if (waiting <= ENDED) {
            return;
        }
        double homeToday = home[state] * rows.homeAfter(true) + away[state] * rows.homeAfter(false);
        double awayToday = waiting - homeToday;
        double homeWaits = idle ? homeToday : Math.max(0, Math.min(homeToday, waits));
        boolean last = n == overrideDays;
        cycles.add(state, waiting, 0, last ? homeWaits + awayToday : 0, 0, 0, last ? homeToday : homeToday - homeWaits,
                last ? awayToday : 0);
        home[state] = homeWaits;
        away[state] = awayToday;
    }
}
