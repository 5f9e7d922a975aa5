// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.CancellationToken;
import dev.brinebook.guard.WorkingMemory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Distribution of a household's use after each number of days of a cycle, on a lattice of litres, for {@link RenewalTable} and
 * what is read from the same rows. Each day is calculated when it is first needed.
 *
 * <pre>f(w,0) = 1 at 0,   f(w,n) = f(w,n-1) * p(v),   v = w + n - 1 mod 7</pre>
 *
 * <p>w first weekday of the cycle; p see {@link LatticeDay}. With absences the part of f before a day at home and the part before
 * a vacant day are kept separate. Not thread-safe.
 * Validity, source and deviation: as {@link RenewalTable}.
 */
final class RenewalRows {

    private static final double NEGLIGIBLE = 1e-14;
    private static final int WEEKDAYS = 7;
    /** What kept rows take at most; later ones are made anew each time that they are gone through. */
    static final long MOST_BYTES = WorkingMemory.shareOfHeap(1 / 12.0, 32_000_000);
    private static final long MOST_KEPT = MOST_BYTES / Double.BYTES;
    /** Days of a class below this number have their own place in the key of a row. */
    private static final int MOST_SHARED_DAYS = 512;

    private final double step;
    private final LatticeDay[] classes;
    private final int[] classOf = new int[WEEKDAYS];
    private final boolean absences;
    private final double leave;
    private final double comeBack;
    private final Map<Long, LatticeRow> byCounts = new HashMap<>();
    private final List<List<LatticeRow>> atHome = new ArrayList<>();
    /** Vacant on the day after the last of each weekday. */
    private final LatticeRow[] vacant = new LatticeRow[WEEKDAYS];
    /** The last row beyond those that are kept, by weekday. */
    private final Spell[] beyond = new Spell[WEEKDAYS];
    private int kept;
    /** By day of the cycle: the first weekday on which a cycle starts that is like each. */
    private final List<int[]> like = new ArrayList<>();
    /** Rows end at this lattice point: no rule so far looked further. */
    private int rowsEnd;

    /**
     * The use before a day of a cycle.
     *
     * @param day of the cycle
     * @param home together with the chance that somebody is at home on it
     * @param vacant that nobody is
     */
    record Spell(int day, LatticeRow home, LatticeRow vacant) {
    }
    private RenewalMeasure measure;

    /**
     * The rows of a household; nothing is calculated yet.
     *
     * @param means mean use of each weekday at home, litres, Monday first; one at least above 0
     * @param cv scatter of a day about its mean
     * @param leave probability that a house at home is vacant the next day; 0 where nobody ever leaves
     * @param comeBack probability that a vacant house is at home the next day
     * @param steps lattice points in a mean day that is not without use
     */
    RenewalRows(double[] means, double cv, double leave, double comeBack, int steps) {
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
        for (int weekday = 0; weekday < WEEKDAYS; weekday++) {
            atHome.add(new ArrayList<>());
        }
    }

    /** Distance of lattice points, litres. */
    double step() {
        return step;
    }

    /** The use of each class of weekdays. */
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

    /** The sum of all rows up to at least a number of lattice points, for cycles that only use ends. */
    RenewalMeasure measure(int wanted) {
        if (measure == null || measure.points() < wanted) {
            measure = new RenewalMeasure(this, wanted);
        }
        return measure;
    }

    boolean endsMeasureBefore(int points) {
        return measure == null || measure.points() < points;
    }

    /** Makes rows at least this many lattice points long; shorter rows are discarded. */
    void reach(int points) {
        if (points > rowsEnd) {
            rowsEnd = points;
            byCounts.clear();
            atHome.forEach(List::clear);
            Arrays.fill(beyond, null);
            kept = 0;
        }
    }

    /**
     * The use before day {@code n} of a cycle that starts on a weekday with somebody at home, weighted by the chance that
     * somebody is at home on that day.
     */
    LatticeRow row(int weekday, int n) {
        return absences ? homeRow(weekday, n) : countedRow(weekday, n - 1);
    }

    /** Whether rows are shorter than this many lattice points. */
    boolean endBefore(int points) {
        return points > rowsEnd;
    }

    boolean absences() {
        return absences;
    }

    /** Class of the {@code n}th day of a cycle. */
    int classOf(int weekday, int n) {
        return classOf[(weekday + n - 1) % WEEKDAYS];
    }

    /**
     * The first weekday on which a cycle starts whose {@code n}th day is of the same class, after as many days of each class;
     * itself where there is none before it.
     */
    int firstLike(int weekday, int n) {
        while (like.size() < n) {
            like.add(firstAlike(like.size() + 1));
        }
        return like.get(n - 1)[weekday];
    }

    private int[] firstAlike(int n) {
        int[] first = new int[WEEKDAYS];
        for (int weekday = 0; weekday < WEEKDAYS; weekday++) {
            int other = 0;
            while (other < weekday && !isLike(other, weekday, n)) {
                other++;
            }
            first[weekday] = other;
        }
        return first;
    }

    private boolean isLike(int one, int other, int n) {
        return classes.length == 1 || !absences && n <= MOST_SHARED_DAYS && classOf(one, n) == classOf(other, n)
                && key(one, n - 1) == key(other, n - 1);
    }

    /** Litres after a number of days of each class, whatever their order. */
    private LatticeRow countedRow(int weekday, int days) {
        List<LatticeRow> own = atHome.get(weekday);
        if (own.isEmpty()) {
            own.add(new LatticeRow(0, new double[] {1}));
        }
        while (own.size() <= days) {
            CancellationToken.obey();
            int n = own.size();
            LatticeRow before = own.get(n - 1);
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
    private LatticeRow homeRow(int weekday, int n) {
        List<LatticeRow> home = atHome.get(weekday);
        if (home.isEmpty()) {
            home.add(new LatticeRow(0, new double[] {1}));
            vacant[weekday] = new LatticeRow(0, new double[] {0});
        }
        while (home.size() < n && kept < MOST_KEPT) {
            Spell next = next(weekday, new Spell(home.size(), home.get(home.size() - 1), vacant[weekday]));
            kept += next.home.values().length;
            home.add(next.home);
            vacant[weekday] = next.vacant;
        }
        return n <= home.size() ? home.get(n - 1) : beyond(weekday, n).home;
    }

    /** A row beyond those that are kept; quick where days are asked for one after another. */
    private Spell beyond(int weekday, int n) {
        Spell at = beyond[weekday];
        if (at == null || at.day > n) {
            List<LatticeRow> home = atHome.get(weekday);
            at = new Spell(home.size(), home.get(home.size() - 1), vacant[weekday]);
        }
        while (at.day < n) {
            at = next(weekday, at);
        }
        beyond[weekday] = at;
        return at;
    }

    /** The first day of a cycle whose home is as likely to be vacant as on any other. */
    static Spell first(double homeShare) {
        return new Spell(1, new LatticeRow(0, new double[] {homeShare}), new LatticeRow(0, new double[] {1 - homeShare}));
    }

    /** The day after in a cycle that starts on a weekday. */
    Spell next(int weekday, Spell spell) {
        CancellationToken.obey();
        LatticeRow used = convolved(spell.home, classes[classOf(weekday, spell.day)].chances());
        return new Spell(spell.day + 1, mixed(used, 1 - leave, spell.vacant, comeBack), mixed(used, leave, spell.vacant, 1 - comeBack));
    }

    private static LatticeRow mixed(LatticeRow one, double share, LatticeRow other, double otherShare) {
        int first = Math.min(one.first(), other.first());
        double[] values = new double[Math.max(one.end(), other.end()) - first];
        for (int i = 0; i < one.values().length; i++) {
            values[one.first() - first + i] += share * one.values()[i];
        }
        for (int i = 0; i < other.values().length; i++) {
            values[other.first() - first + i] += otherShare * other.values()[i];
        }
        return new LatticeRow(first, values);
    }

    private LatticeRow convolved(LatticeRow row, double[] chances) {
        double[] known = row.values();
        double[] values = new double[Math.max(0, Math.min(known.length + chances.length - 1, rowsEnd - row.first()))];
        for (int i = 0; i < known.length; i++) {
            double value = known[i];
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
        return new LatticeRow(row.first() + from, Arrays.copyOfRange(values, from, to));
    }
}
