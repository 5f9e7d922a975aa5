package dev.brinebook.regeneration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What a household has drawn after each number of days of a cycle, on a lattice of litres. Uses only add up, so this depends on
 * neither salt dose nor reserve: it is worked out once for a household, each day when it is first needed, and what any
 * night-started policy does in the long run are a few sums over it.
 *
 * <pre>f(w,0) = 1 at 0,   f(w,n) = f(w,n-1) * p(v),   v = w + n - 1 mod 7
 * A(n) = Σ f(w,n-1)(k) F(v; T - kh)                      still waiting after n nights, A(D) = 0
 * hard(n) = Σ f(w,n-1)(k) c(k) (1 - F(v; B - kh)),  T ≤ B
 * hard(n) = A(n-1) - Σ f(w,n-1)(k) F(v; B - kh),    T &gt; B, and every clock</pre>
 *
 * <p>w first weekday of the cycle; p, F, M see {@link LatticeDay}; T count at which the controller calls; B litres that the bed
 * softens; D longest time; c(k) integrates up to T between lattice points. Hard litres are the same sums over M. With absences
 * the part of f that stands before a day at home and that before a vacant day are kept apart.
 * Validity: days that do not depend on each other but by the spells of absence; scatter from {@link LatticeDay#LEAST_CV}.
 * Source: [FELLER] renewal theory; the lattice as written here.
 * Deviation: regenerations within 0.01 %, hard days within 0.02 a year at ten steps in a mean day (scatter up to 0.6; twenty
 * above that). Used by one thread.
 */
final class RenewalTable {

    private static final double NEGLIGIBLE = 1e-14;
    /** A cycle that still waits with less than this chance is taken as ended. */
    private static final double ENDED = 1e-12;
    private static final int WEEKDAYS = 7;
    private static final double[] NO_SUMS = new double[3];
    private static final int MOST_NIGHTS = 40_000;
    /** So many days of a class have a place of their own in the key of a row. */
    private static final int MOST_SHARED_DAYS = 512;

    /** Values of a distribution from a first lattice point on. */
    private record Row(int first, double[] values) {

        /** Sums over the row times each of three others. */
        void dot(double[] waiting, double[] hard, double[] litres, int size, double[] sums) {
            int last = Math.min(end(), size);
            double a = 0;
            double b = 0;
            double c = 0;
            for (int k = first; k < last; k++) {
                double chance = values[k - first];
                a += chance * waiting[k];
                b += chance * hard[k];
                c += chance * litres[k];
            }
            sums[0] = a;
            sums[1] = b;
            sums[2] = c;
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

    /**
     * The table of a household; nothing is worked out yet.
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
        for (int state = 0; state < 2 * WEEKDAYS; state++) {
            atHome.add(new ArrayList<>());
            vacant.add(new ArrayList<>());
        }
    }

    /**
     * All cycles of a rule.
     *
     * @param nightByNight whether each night is kept
     */
    Cycles cycles(WaitingRule rule, boolean nightByNight) {
        int weekdays = classes.length == 1 && rule.sameEveryWeekday() ? 1 : WEEKDAYS;
        Cycles cycles = new Cycles(weekdays, absences ? 2 : 1, nightByNight);
        seen.clear();
        int size = prepare(rule);
        for (int state = 0; state < cycles.states(); state++) {
            run(rule, cycles, state, state % weekdays, state < weekdays, size);
        }
        return cycles;
    }

    /** Fills the sums of each class of weekdays, and tells how far they reach. */
    private int prepare(WaitingRule rule) {
        double reach = rule.timed() ? rule.bedLitres() : rule.bedLitres() == Double.POSITIVE_INFINITY ? rule.callLitres()
                : Math.max(rule.callLitres(), rule.bedLitres());
        int widest = 0;
        for (LatticeDay day : classes) {
            widest = Math.max(widest, day.chances().length);
        }
        int nights = rule.longest() == 0 ? MOST_NIGHTS : rule.longest();
        int size = (int) Math.min(Math.floor(reach / step) + 3, (double) nights * widest + 3);
        double[] counted = rule.timed() ? null : ends(rule.callLitres() / step, size);
        boolean lasting = !rule.timed() && rule.callLitres() <= rule.bedLitres();
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
            day.excess(rule.bedLitres(), to.litres, size);
            for (int k = 0; k < size; k++) {
                if (lasting) {
                    to.hard[k] = counted[k] * (1 - to.hard[k]);
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

    private void run(WaitingRule rule, Cycles cycles, int state, int weekday, boolean afterHome, int size) {
        int longest = rule.longestNights()[weekday];
        double home = afterHome ? 1 : 0;
        double away = 1 - home;
        for (int n = 1; n <= MOST_NIGHTS; n++) {
            int of = classOf[(weekday + n - 1) % WEEKDAYS];
            Sums sum = sums[of];
            double mean = classes[of].mean();
            Row row = row(weekday, afterHome, n);
            double[] dots = NO_SUMS;
            double homeToday = absences ? (1 - leave) * home + comeBack * away : home;
            double awayToday = absences ? leave * home + (1 - comeBack) * away : 0;
            if (mean > 0) {
                dots = dots(row, of, n, size);
            }
            double homeWaits = mean == 0 || rule.timed() ? homeToday : Math.max(0, Math.min(homeToday, dots[0]));
            double hard = 0;
            double litres = 0;
            if (mean > 0) {
                boolean lasting = !rule.timed() && rule.callLitres() <= rule.bedLitres();
                double share = dots[1];
                double amount = dots[2];
                hard = Math.max(0, lasting ? share : homeToday - share);
                litres = Math.max(0, rule.timed() ? homeToday * mean - amount : amount);
                if (lasting) {
                    hard = Math.min(hard, homeToday - (n == longest ? 0 : homeWaits));
                }
            }
            boolean last = n == longest;
            double overridden = last && !rule.byClock()[weekday] ? homeWaits + awayToday : 0;
            double endHome = last ? homeToday : homeToday - homeWaits;
            boolean single = !rule.timed() && rule.callLitres() <= rule.bedLitres();
            cycles.add(state, home + away, litres, overridden, hard, single ? hard : 0, single ? endHome - hard : endHome,
                    last ? awayToday : 0);
            home = homeWaits;
            away = awayToday;
            if (last || home + away < ENDED) {
                return;
            }
        }
    }

    private record Made(Row row, int of, double[] sums) {
    }

    private double[] dots(Row row, int of, int n, int size) {
        while (seen.size() < n) {
            seen.add(new ArrayList<>());
        }
        List<Made> made = seen.get(n - 1);
        for (int i = 0; i < made.size(); i++) {
            if (made.get(i).row() == row && made.get(i).of() == of) {
                return made.get(i).sums();
            }
        }
        double[] dots = new double[3];
        row.dot(sums[of].waiting, sums[of].hard, sums[of].litres, size, dots);
        made.add(new Made(row, of, dots));
        return dots;
    }

    /** The litres before day {@code n} of a cycle, together with the chance that somebody is at home on that day. */
    private Row row(int weekday, boolean afterHome, int n) {
        return absences ? homeRow(weekday + (afterHome ? 0 : WEEKDAYS), n) : countedRow(weekday, n - 1);
    }

    /** The litres after so many days: how many there were of each class decides, not their order. */
    private Row countedRow(int weekday, int days) {
        List<Row> own = atHome.get(weekday);
        if (own.isEmpty()) {
            own.add(new Row(0, new double[] {1}));
        }
        while (own.size() <= days) {
            int n = own.size();
            Row before = own.get(n - 1);
            double[] chances = classes[classOf[(weekday + n - 1) % WEEKDAYS]].chances();
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

    private Row homeRow(int state, int n) {
        List<Row> home = atHome.get(state);
        List<Row> away = vacant.get(state);
        if (home.isEmpty()) {
            boolean afterHome = state < WEEKDAYS;
            home.add(new Row(0, new double[] {afterHome ? 1 - leave : comeBack}));
            away.add(new Row(0, new double[] {afterHome ? leave : 1 - comeBack}));
        }
        while (home.size() < n) {
            int day = home.size();
            Row used = convolved(home.get(day - 1), classes[classOf[(state + day - 1) % WEEKDAYS]].chances());
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

    private static Row convolved(Row row, double[] chances) {
        double[] values = new double[row.values.length + chances.length - 1];
        for (int i = 0; i < row.values.length; i++) {
            double value = row.values[i];
            for (int j = 0; j < chances.length; j++) {
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
