// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Distribution of a household's use after each number of days of a cycle, on a lattice of litres. Uses only add up, so it depends on
 * neither salt dose nor reserve: it is calculated once for a household, each day when it is first needed, and the results of any
 * night-started policy in the long run are a few sums over it.
 *
 * <pre>f(w,0) = 1 at 0,   f(w,n) = f(w,n-1) * p(v),   v = w + n - 1 mod 7
 * A(n) = Σ f(w,n-1)(k) F(v; T - kh)                      still waiting after n nights, A(D) = 0
 * hard(n) = Σ f(w,n-1)(k) c(k) (1 - F(v; B - kh)),  T ≤ B
 * hard(n) = A(n-1) - Σ f(w,n-1)(k) F(v; B - kh),    T &gt; B, and every clock</pre>
 *
 * <p>w first weekday of the cycle; p, F, M see {@link LatticeDay}; T count at which the controller calls; B litres that the bed
 * softens; D longest time; c(k) integrates up to T between lattice points. Hard litres are the same sums over M. With absences
 * the part of f before a day at home and the part before a vacant day are kept separate.
 * Validity: days that do not depend on each other but by the spells of absence; scatter from {@link LatticeDay#LEAST_CV}.
 * Source: [FELLER] renewal theory; the lattice as written here.
 * Deviation: regenerations within 0.01 %, hard days within 0.02 a year at ten steps in a mean day (scatter up to 0.6; twenty
 * above that). Not thread-safe.
 */
final class RenewalTable {

    /** Factor by which rows are longer than the first rule needs: other doses reach further. */
    private static final int ROOM = 2;
    /** A cycle that still waits with less than this chance is taken as ended. */
    private static final double ENDED = 1e-12;
    private static final int WEEKDAYS = 7;
    private static final int WAITING = 0;
    private static final int HARD = 1;
    private static final int LITRES = 2;
    private static final double[] NO_SUMS = new double[3];

    /** How much is asked about the cycles of a rule; each has all of the one before. */
    enum Detail { HARD_DAYS, HARD_LITRES, EACH_NIGHT }

    private final RenewalRows rows;
    private final LatticeDay[] classes;
    private final double step;
    private final boolean absences;
    private final double leave;
    private final double comeBack;
    /** By class, for the rule in hand. */
    private final RuleSums[] ofRule;
    private int size;
    private boolean withLitres;
    /** Sums already made for the rule, by the night and the first weekday that is like the one on which the cycle starts. */
    private final List<double[][]> made = new ArrayList<>();
    /** Sums over cycles that start after a vacant day, by weekday and night. */
    private final List<List<double[]>> afterVacant = new ArrayList<>();

    /**
     * The table of a household; nothing is calculated yet.
     *
     * @param means mean use of each weekday at home, litres, Monday first; one at least above 0
     * @param cv scatter of a day about its mean
     * @param leave probability that a house at home is vacant the next day; 0 where nobody ever leaves
     * @param comeBack probability that a vacant house is at home the next day
     * @param steps lattice points in a mean day that is not without use
     */
    RenewalTable(double[] means, double cv, double leave, double comeBack, int steps) {
        rows = new RenewalRows(means, cv, leave, comeBack, steps);
        this.leave = leave;
        this.comeBack = comeBack;
        absences = rows.absences();
        classes = rows.classes();
        step = rows.step();
        ofRule = new RuleSums[classes.length];
        Arrays.setAll(ofRule, i -> new RuleSums());
        for (int weekday = 0; weekday < WEEKDAYS; weekday++) {
            afterVacant.add(new ArrayList<>());
        }
    }

    /** What it sums over. */
    RenewalRows rows() {
        return rows;
    }

    /** All cycles of a rule; below {@link Detail#HARD_LITRES} with no hard litres. */
    Cycles cycles(WaitingRule rule, Detail detail) {
        int weekdays = classes.length == 1 && rule.sameEveryWeekday() ? 1 : WEEKDAYS;
        made.clear();
        afterVacant.forEach(List::clear);
        withLitres = detail != Detail.HARD_DAYS;
        prepare(rule);
        if (!rule.timed() && rule.longest() == 0 && detail != Detail.EACH_NIGHT) {
            return rows.measure(rows.endsMeasureBefore(size) ? ROOM * size : size).cycles(new Sums(rule));
        }
        Cycles cycles = new Cycles(weekdays, absences ? 2 : 1, detail == Detail.EACH_NIGHT);
        rows.reach(rows.endBefore(size) ? ROOM * size : size);
        for (int state = 0; state < cycles.states(); state++) {
            run(rule, cycles, state);
        }
        return cycles;
    }

    /** What a rule makes of all days on a weekday. */
    private final class Sums implements RenewalMeasure.DaysOfRule {
        private final WaitingRule rule;

        Sums(WaitingRule rule) {
            this.rule = rule;
        }

        private RuleSums of(int weekday) {
            return ofRule[rows.classOf(weekday, 1)];
        }

        private double dot(double[] days, double[] sums) {
            return LatticeRow.dot(days, 0, sums, 0, size);
        }

        @Override
        public double waiting(double[] days, int weekday) {
            return dot(days, of(weekday).waiting());
        }

        @Override
        public double hard(double[] days, int weekday, double ending, double atHome) {
            double sum = dot(days, of(weekday).hard());
            return rule.lasting() ? Math.min(sum, ending) : atHome - sum;
        }

        @Override
        public double hardLitres(double[] days, int weekday) {
            return withLitres ? dot(days, of(weekday).litres()) : 0;
        }
    }

    /** Calculates the sums of each class of weekdays, and how many lattice points matter. */
    private void prepare(WaitingRule rule) {
        double reach = rule.timed() ? rule.bedLitres() : rule.callLitres();
        int widest = 0;
        for (LatticeDay day : classes) {
            widest = Math.max(widest, day.chances().length);
        }
        int nights = rule.longest() == 0 ? WaitingRule.MOST_NIGHTS : rule.longest();
        size = (int) Math.min(Math.floor(reach / step) + 3, (double) nights * widest + 3);
        double[] counted = rule.timed() ? null : ends(rule.callLitres() / step, size);
        for (int i = 0; i < classes.length; i++) {
            ofRule[i].calculate(classes[i], rule, withLitres, counted, size);
        }
    }

    /** Weights that integrate up to a place between lattice points. */
    private static double[] ends(double place, int size) {
        double[] weights = new double[size];
        int k = (int) Math.min(size, Math.floor(place));
        double q = place - Math.floor(place);
        Arrays.fill(weights, 0, Math.max(0, Math.min(size, k - 1)), 1);
        if (k == 0) {
            weights[0] = 1;
        } else if (k == 1) {
            set(weights, 0, 1);
            set(weights, 1, 0.5 + q - q * q / 2);
            set(weights, 2, q * q / 2);
        } else {
            set(weights, k - 1, 25 / 24.0 - q * q / 4 + q * q * q / 6);
            set(weights, k, 0.5 + q - q * q * q / 3);
            set(weights, k + 1, q * q / 4 + q * q * q / 6 - 1 / 24.0);
        }
        return weights;
    }

    private static void set(double[] weights, int index, double value) {
        if (index < weights.length) {
            weights[index] = value;
        }
    }

    private void run(WaitingRule rule, Cycles cycles, int state) {
        int weekday = state % cycles.weekdays();
        int longest = rule.longestNights()[weekday];
        boolean lasting = rule.lasting();
        boolean afterHome = state < cycles.weekdays();
        double home = afterHome ? 1 : 0;
        double away = 1 - home;
        for (int n = 1; n <= WaitingRule.MOST_NIGHTS; n++) {
            double mean = classes[rows.classOf(weekday, n)].mean();
            double homeToday = absences ? (1 - leave) * home + comeBack * away : home;
            double awayToday = absences ? leave * home + (1 - comeBack) * away : 0;
            double[] sum = mean > 0 ? sums(weekday, afterHome, n) : NO_SUMS;
            double homeWaits = mean == 0 || rule.timed() ? homeToday : Math.max(0, Math.min(homeToday, sum[WAITING]));
            double hard = 0;
            double litres = 0;
            if (mean > 0) {
                hard = Math.max(0, lasting ? sum[HARD] : homeToday - sum[HARD]);
                litres = Math.max(0, withLitres && rule.timed() ? homeToday * mean - sum[LITRES] : sum[LITRES]);
                if (lasting) {
                    hard = Math.min(hard, homeToday - (n == longest ? 0 : homeWaits));
                }
            }
            boolean last = n == longest || n == WaitingRule.MOST_NIGHTS;
            double overridden = n == longest && !rule.byClock()[weekday] ? homeWaits + awayToday : 0;
            double endHome = last ? homeToday : homeToday - homeWaits;
            cycles.add(state, home + away, litres, overridden, hard, lasting ? hard : 0, lasting ? endHome - hard : endHome,
                    last ? awayToday : 0);
            home = homeWaits;
            away = awayToday;
            if (last || home + away < ENDED) {
                return;
            }
        }
    }

    /** Sums of the {@code n}th day of a cycle that starts after a day at home or a vacant one. */
    private double[] sums(int weekday, boolean afterHome, int n) {
        if (!absences) {
            return sums(weekday, n);
        }
        return afterHome ? startedEitherWay(weekday, n, leave) : sumsAfterVacant(weekday, n);
    }

    /** A cycle that starts with a vacant day goes on as one that starts after a vacant day, a day later. */
    private double[] startedEitherWay(int weekday, int n, double vacantShare) {
        double[] home = sums(weekday, n);
        double[] away = n == 1 ? NO_SUMS : sumsAfterVacant((weekday + 1) % rows.weekdays(), n - 1);
        double[] both = new double[home.length];
        for (int i = 0; i < both.length; i++) {
            both[i] = (1 - vacantShare) * home[i] + vacantShare * away[i];
        }
        return both;
    }

    private double[] sumsAfterVacant(int weekday, int n) {
        List<double[]> own = afterVacant.get(weekday);
        while (own.size() < n) {
            own.add(startedEitherWay(weekday, own.size() + 1, 1 - comeBack));
        }
        return own.get(n - 1);
    }

    private double[] sums(int weekday, int n) {
        while (made.size() < n) {
            made.add(new double[WEEKDAYS][]);
        }
        double[][] ofNight = made.get(n - 1);
        int first = rows.firstLike(weekday, n);
        if (ofNight[first] == null) {
            LatticeRow row = rows.row(first, n);
            RuleSums with = ofRule[rows.classOf(first, n)];
            ofNight[first] = new double[] {row.dot(with.waiting(), size), row.dot(with.hard(), size),
                withLitres ? row.dot(with.litres(), size) : 0};
        }
        return ofNight[first];
    }
}
