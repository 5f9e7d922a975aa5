// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

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

    private static final double NEGLIGIBLE = 1e-14;
    /** Factor by which rows are longer than the first rule needs: other doses reach further. */
    private static final int ROOM = 2;
    /** A cycle that still waits with less than this chance is taken as ended. */
    private static final double ENDED = 1e-12;
    private static final int WEEKDAYS = 7;
    private static final int WAITING = 0;
    private static final int HARD = 1;
    private static final int LITRES = 2;
    private static final double[] NO_SUMS = new double[3];
    /** Days of a class below this number have their own place in the key of a row. */
    private static final int MOST_SHARED_DAYS = 512;

    /** How much is asked about the cycles of a rule; each has all of the one before. */
    enum Detail { HARD_DAYS, HARD_LITRES, EACH_NIGHT }

    /** Values of a distribution from a first lattice point on. */
    record Row(int first, double[] values) {

        /** Sum over the row times others, in four parts that the processor adds up side by side. */
        double dot(double[] others, int size) {
            int count = Math.max(0, Math.min(values.length, size - first));
            double a = 0;
            double b = 0;
            double c = 0;
            double d = 0;
            int i = 0;
            for (int fours = count - 3; i < fours; i += 4) {
                a += values[i] * others[first + i];
                b += values[i + 1] * others[first + i + 1];
                c += values[i + 2] * others[first + i + 2];
                d += values[i + 3] * others[first + i + 3];
            }
            for (; i < count; i++) {
                a += values[i] * others[first + i];
            }
            return a + b + (c + d);
        }

        int end() {
            return first + values.length;
        }
    }

    /** What a class of weekdays contributes to the sums of one rule. */
    private static final class Sums {
        private double[] waiting = new double[64];
        private double[] hard = new double[64];
        private double[] litres = new double[64];
    }

    private final double step;
    private final LatticeDay[] classes;
    private final int[] classOf = new int[WEEKDAYS];
    private final boolean absences;
    private final double leave;
    private final double comeBack;
    private final Sums[] sums;
    /** Sums already made for a rule: by the night, where they are of the same row and class. */
    private final List<List<Made>> seen = new ArrayList<>();
    private final Map<Long, Row> byCounts = new HashMap<>();
    private final List<List<Row>> atHome = new ArrayList<>();
    private final List<List<Row>> vacant = new ArrayList<>();
    /** Sums over cycles that start after a vacant day, by weekday and night. */
    private final List<List<double[]>> afterVacant = new ArrayList<>();
    /** Rows end at this lattice point: no rule so far looked further. */
    private int rowsEnd;

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
        this.leave = leave;
        this.comeBack = comeBack;
        absences = leave > 0;
        double[] used = Arrays.stream(means).filter(mean -> mean > 0).toArray();
        step = Arrays.stream(used).average().orElseThrow() / steps;
        double[] distinct = Arrays.stream(means).distinct().toArray();
        classes = Arrays.stream(distinct).mapToObj(mean -> new LatticeDay(mean, cv, step)).toArray(LatticeDay[]::new);
        for (int weekday = 0; weekday < WEEKDAYS; weekday++) {
            for (int i = 0; i < distinct.length; i++) {
                classOf[weekday] = distinct[i] == means[weekday] ? i : classOf[weekday];
            }
        }
        sums = new Sums[classes.length];
        Arrays.setAll(sums, i -> new Sums());
        for (int weekday = 0; weekday < WEEKDAYS; weekday++) {
            atHome.add(new ArrayList<>());
            vacant.add(new ArrayList<>());
            afterVacant.add(new ArrayList<>());
        }
    }

    /** All cycles of a rule; below {@link Detail#HARD_LITRES} with no hard litres. */
    Cycles cycles(WaitingRule rule, Detail detail) {
        int weekdays = classes.length == 1 && rule.sameEveryWeekday() ? 1 : WEEKDAYS;
        Cycles cycles = new Cycles(weekdays, absences ? 2 : 1, detail == Detail.EACH_NIGHT);
        seen.clear();
        afterVacant.forEach(List::clear);
        boolean litres = detail != Detail.HARD_DAYS;
        int size = prepare(rule, litres);
        reach(size > rowsEnd ? ROOM * size : size);
        for (int state = 0; state < cycles.states(); state++) {
            run(rule, cycles, state, state % weekdays, state < weekdays, litres, size);
        }
        return cycles;
    }

    /** Fills the sums of each class of weekdays and returns their length. */
    private int prepare(WaitingRule rule, boolean litres) {
        boolean lasting = rule.lasting();
        double reach = rule.timed() ? rule.bedLitres() : rule.callLitres();
        int widest = 0;
        for (LatticeDay day : classes) {
            widest = Math.max(widest, day.chances().length);
        }
        int nights = rule.longest() == 0 ? WaitingRule.MOST_NIGHTS : rule.longest();
        int size = (int) Math.min(Math.floor(reach / step) + 3, (double) nights * widest + 3);
        double[] counted = rule.timed() ? null : ends(rule.callLitres() / step, size);
        for (int i = 0; i < classes.length; i++) {
            LatticeDay day = classes[i];
            Sums to = sums[i];
            if (to.waiting.length < size) {
                to.waiting = new double[size];
                to.hard = new double[size];
                to.litres = new double[size];
            }
            if (day.mean() == 0) {
                continue;
            }
            if (!rule.timed()) {
                day.below(rule.callLitres(), to.waiting, size);
            }
            if (rule.bedLitres() == Double.POSITIVE_INFINITY) {
                Arrays.fill(to.hard, 0, size, lasting ? 0 : 1);
                Arrays.fill(to.litres, 0, size, rule.timed() ? day.mean() : 0);
                continue;
            }
            day.below(rule.bedLitres(), to.hard, size);
            for (int k = 0; lasting && k < size; k++) {
                to.hard[k] = counted[k] * (1 - to.hard[k]);
            }
            if (litres) {
                day.excess(rule.bedLitres(), to.litres, size);
            }
            for (int k = 0; litres && k < size; k++) {
                if (lasting) {
                    to.litres[k] *= counted[k];
                } else {
                    boolean usedUp = k * step > rule.bedLitres();
                    to.litres[k] = rule.timed() ? usedUp ? 0 : day.mean() - to.litres[k]
                            : counted[k] * (usedUp ? day.mean() : to.litres[k]);
                }
            }
        }
        return size;
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

    private void run(WaitingRule rule, Cycles cycles, int state, int weekday, boolean afterHome, boolean withLitres, int size) {
        int longest = rule.longestNights()[weekday];
        boolean lasting = rule.lasting();
        double home = afterHome ? 1 : 0;
        double away = 1 - home;
        for (int n = 1; n <= WaitingRule.MOST_NIGHTS; n++) {
            double mean = classes[classOf(weekday, n)].mean();
            double homeToday = absences ? (1 - leave) * home + comeBack * away : home;
            double awayToday = absences ? leave * home + (1 - comeBack) * away : 0;
            double[] sum = mean > 0 ? sums(weekday, afterHome, n, withLitres, size) : NO_SUMS;
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

    /** Distance of lattice points, litres. */
    double step() {
        return step;
    }

    LatticeDay[] classes() {
        return classes;
    }

    /** Weekdays on which cycles start that differ from each other: 7, or 1 where all days are alike. */
    int weekdays() {
        return classes.length == 1 ? 1 : WEEKDAYS;
    }

    /** States in which a cycle may start, as {@link Cycles} counts them. */
    int states() {
        return absences ? 2 * weekdays() : weekdays();
    }

    /** Chance that somebody is at home on a day after one at home, and after a vacant one. */
    double homeAfter(boolean home) {
        return absences ? home ? 1 - leave : comeBack : 1;
    }

    /** Makes rows at least this many lattice points long; shorter rows are discarded. */
    void reach(int points) {
        if (points > rowsEnd) {
            rowsEnd = points;
            byCounts.clear();
            atHome.forEach(List::clear);
            vacant.forEach(List::clear);
        }
    }

    /**
     * The use before day {@code n} of a cycle that starts on a weekday with somebody at home, weighted by the chance that
     * somebody is at home on that day.
     */
    Row row(int weekday, int n) {
        return absences ? homeRow(weekday, n) : countedRow(weekday, n - 1);
    }

    private record Made(Row row, int of, double[] sums) {
    }

    /** Class of the {@code n}th day of a cycle. */
    int classOf(int weekday, int n) {
        return classOf[(weekday + n - 1) % WEEKDAYS];
    }

    /** Sums of the {@code n}th day of a cycle that starts after a day at home or a vacant one. */
    private double[] sums(int weekday, boolean afterHome, int n, boolean litres, int size) {
        if (!absences) {
            return sums(countedRow(weekday, n - 1), classOf(weekday, n), n, litres, size);
        }
        return afterHome ? startedEitherWay(weekday, n, leave, litres, size) : sumsAfterVacant(weekday, n, litres, size);
    }

    /** A cycle that starts with a vacant day goes on as one that starts after a vacant day, a day later. */
    private double[] startedEitherWay(int weekday, int n, double vacantShare, boolean litres, int size) {
        double[] home = sums(homeRow(weekday, n), classOf(weekday, n), n, litres, size);
        double[] away = n == 1 ? NO_SUMS : sumsAfterVacant((weekday + 1) % (classes.length == 1 ? 1 : WEEKDAYS), n - 1, litres,
                size);
        double[] both = new double[home.length];
        for (int i = 0; i < both.length; i++) {
            both[i] = (1 - vacantShare) * home[i] + vacantShare * away[i];
        }
        return both;
    }

    private double[] sumsAfterVacant(int weekday, int n, boolean litres, int size) {
        List<double[]> own = afterVacant.get(weekday);
        while (own.size() < n) {
            own.add(startedEitherWay(weekday, own.size() + 1, 1 - comeBack, litres, size));
        }
        return own.get(n - 1);
    }

    private double[] sums(Row row, int of, int n, boolean litres, int size) {
        while (seen.size() < n) {
            seen.add(new ArrayList<>());
        }
        List<Made> made = seen.get(n - 1);
        for (int i = 0; i < made.size(); i++) {
            if (made.get(i).row() == row && made.get(i).of() == of) {
                return made.get(i).sums();
            }
        }
        Sums with = sums[of];
        double[] result = {row.dot(with.waiting, size), row.dot(with.hard, size), litres ? row.dot(with.litres, size) : 0};
        made.add(new Made(row, of, result));
        return result;
    }

    /** Litres after a number of days of each class, whatever their order. */
    private Row countedRow(int weekday, int days) {
        List<Row> own = atHome.get(weekday);
        if (own.isEmpty()) {
            own.add(new Row(0, new double[] {1}));
        }
        while (own.size() <= days) {
            int n = own.size();
            Row before = own.get(n - 1);
            double[] chances = classes[classOf(weekday, n)].chances();
            own.add(n >= MOST_SHARED_DAYS ? convolved(before, chances)
                    : byCounts.computeIfAbsent(key(weekday, n), key -> convolved(before, chances)));
        }
        return own.get(days);
    }

    /** The number of days of each class as one number. */
    private long key(int weekday, int days) {
        long key = 0;
        for (int i = 0; i < WEEKDAYS; i++) {
            int often = days / WEEKDAYS + (i < days % WEEKDAYS ? 1 : 0);
            key += (long) often << 9 * classOf[(weekday + i) % WEEKDAYS];
        }
        return key;
    }

    /**
     * The litres before day {@code n} of a cycle that starts with somebody at home, together with the chance that somebody is so
     * on that day.
     */
    private Row homeRow(int weekday, int n) {
        List<Row> home = atHome.get(weekday);
        List<Row> away = vacant.get(weekday);
        if (home.isEmpty()) {
            home.add(new Row(0, new double[] {1}));
            away.add(new Row(0, new double[] {0}));
        }
        while (home.size() < n) {
            int day = home.size();
            Row used = convolved(home.get(day - 1), classes[classOf(weekday, day)].chances());
            Row empty = away.get(day - 1);
            home.add(mixed(used, 1 - leave, empty, comeBack));
            away.add(mixed(used, leave, empty, 1 - comeBack));
        }
        return home.get(n - 1);
    }

    private static Row mixed(Row one, double share, Row other, double otherShare) {
        int first = Math.min(one.first, other.first);
        double[] values = new double[Math.max(one.end(), other.end()) - first];
        for (int i = 0; i < one.values.length; i++) {
            values[one.first - first + i] += share * one.values[i];
        }
        for (int i = 0; i < other.values.length; i++) {
            values[other.first - first + i] += otherShare * other.values[i];
        }
        return new Row(first, values);
    }

    private Row convolved(Row row, double[] chances) {
        double[] values = new double[Math.max(0, Math.min(row.values.length + chances.length - 1, rowsEnd - row.first))];
        for (int i = 0; i < row.values.length; i++) {
            double value = row.values[i];
            int last = Math.min(chances.length, values.length - i);
            for (int j = 0; j < last; j++) {
                values[i + j] += value * chances[j];
            }
        }
        int from = 0;
        int to = values.length;
        while (from < to - 1 && Math.abs(values[from]) < NEGLIGIBLE) {
            from++;
        }
        while (to > from + 1 && Math.abs(values[to - 1]) < NEGLIGIBLE) {
            to--;
        }
        return new Row(row.first + from, Arrays.copyOfRange(values, from, to));
    }
}
