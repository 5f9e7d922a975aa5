// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import java.util.Arrays;
import java.util.function.IntPredicate;

/**
 * On which known days somebody was there, and how that changes from day to day.
 *
 * <p>A weekday on which hardly anything is ever used is <em>idle</em>: a pattern of the week, such as that of an office, and
 * no absence. Its days count neither as occupied nor as empty.
 *
 * <p>Immutable; a class and not a record because a record would hand out its array.
 */
public final class Presence {

    /**
     * A day with less use, over the mean of its weekday, than this share of the median is taken as one with nobody there.
     * Source: [DAIAD]. Against a tenth of the median of the whole series, half years on their own misplace 56 of 17,243 days
     * with this share and 108 with 0.05: a house with nobody in it still has drips and a cistern that fills.
     */
    public static final double EMPTY_SHARE_OF_MEDIAN = 0.10;
    /**
     * So is a day with less use than this, unless no day has more: it guards days of which most are empty. Source: [DAIAD] for
     * the rule; a person uses more, {@link Demand#MIN_USE_PER_PERSON_LITRES}.
     */
    public static final double EMPTY_LITRES = 10;
    /** A weekday whose mean is below this share of that of the busiest weekday is idle. */
    public static final double ASSUMED_IDLE_SHARE_OF_BUSIEST = 0.05;
    /** A weekday seen less often is no pattern yet. */
    public static final int ASSUMED_LEAST_OF_AN_IDLE_WEEKDAY = 2;
    private static final int WEEKDAYS = 7;

    private final WeekdayLevels all;
    private final boolean[] idle;
    private final int[] occupied;
    private final int emptyDays;
    private final OptionalResult leave;
    private final OptionalResult comeBack;
    private final Occupancy occupancy;

    private Presence(MeteredDays days) {
        all = WeekdayLevels.of(days, days.known());
        idle = idle(all);
        int[] counted = Arrays.stream(days.known()).filter(i -> !idle[days.weekday(i)]).toArray();
        double threshold = threshold(days, counted);
        double least = Arrays.stream(counted).anyMatch(i -> days.litres(i) >= EMPTY_LITRES) ? EMPTY_LITRES : 0;
        IntPredicate isThere = i -> level(days, i) >= threshold && days.litres(i) >= least;
        occupied = Arrays.stream(counted).filter(isThere).toArray();
        emptyDays = counted.length - occupied.length;
        Transitions dayToDay = new Transitions();
        Transitions inOrder = new Transitions();
        for (int j = 0; j < counted.length; j++) {
            boolean there = isThere.test(counted[j]);
            int next = counted[(j + 1) % counted.length];
            boolean thereNext = isThere.test(next);
            if (next == counted[j] + 1) {
                dayToDay.add(there, thereNext);
            }
            if (next <= counted[j] || onlyIdleBetween(days, counted[j], next)) {
                inOrder.add(there, thereNext);
            }
        }
        leave = dayToDay.changed(true);
        comeBack = dayToDay.changed(false);
        occupancy = occupancy(inOrder);
    }

    /**
     * Presence inferred from use, as a Markov chain of two states.
     *
     * <pre>leave = N(there, empty) / N(there, any),   return = N(empty, there) / N(empty, any)</pre>
     *
     * <p>N number of days of the first kind that are followed by one of the second, both known and consecutive.
     * Validity: no probability where no such day is followed by a known one.
     * Source: [ANDERSON-GOODMAN] maximum likelihood.
     * Deviation: none.
     */
    public static Presence of(MeteredDays days) {
        return new Presence(days);
    }

    private static boolean[] idle(WeekdayLevels all) {
        double busiest = 0;
        for (int w = 0; w < WEEKDAYS; w++) {
            busiest = Math.max(busiest, all.count(w) == 0 ? 0 : all.meanLitres(w));
        }
        boolean[] idle = new boolean[WEEKDAYS];
        for (int w = 0; w < WEEKDAYS; w++) {
            idle[w] = all.count(w) >= ASSUMED_LEAST_OF_AN_IDLE_WEEKDAY
                    && all.meanLitres(w) < ASSUMED_IDLE_SHARE_OF_BUSIEST * busiest;
        }
        return idle;
    }

    /** Use of a day over the mean of its weekday, or of all days where the weekday was seen once. */
    private double level(MeteredDays days, int index) {
        int weekday = days.weekday(index);
        boolean own = all.count(weekday) >= ASSUMED_LEAST_OF_AN_IDLE_WEEKDAY && all.meanLitres(weekday) > 0;
        double mean = own ? all.meanLitres(weekday) : all.meanLitres();
        return mean > 0 ? days.litres(index) / mean : 0;
    }

    private double threshold(MeteredDays days, int[] counted) {
        double[] drawn = Arrays.stream(counted).mapToDouble(i -> level(days, i)).filter(level -> level > 0).toArray();
        return drawn.length == 0 ? Double.MAX_VALUE : EMPTY_SHARE_OF_MEDIAN * Trend.median(drawn);
    }

    private boolean onlyIdleBetween(MeteredDays days, int from, int to) {
        for (int i = from + 1; i < to; i++) {
            if (!idle[days.weekday(i)]) {
                return false;
            }
        }
        return true;
    }

    /**
     * The chain with the measured share of occupied days and the measured frequency of changes from one day that is not idle to
     * the next, the first taken to follow the last.
     *
     * <pre>l = (1 − φ) (1 − s),   r = (1 − φ) s,   φ = (1 − leave − return)^(k/7)</pre>
     *
     * <p>s share of occupied days; k weekdays that are not idle: the chain of {@link Occupancy} goes on through the idle ones,
     * of which there are 7/k − 1 from one day to the next. Changes that are never seen are taken as random, φ 0; alternating
     * days, φ below 0, are left as they are.
     *
     * <p>Rival: count changes on consecutive known days alone and take leave as 0.105 / (n + 5) where none was seen, n the
     * occupied days. The share at home is then not that of the days, off by 0.05, 0.02 and 0.02 in 28, 84 and 168 days of the
     * homes of [DAIAD], and no nearer to that of the 120 days that follow: 0.225, 0.141 and 0.088 against 0.208, 0.138 and
     * 0.090 here.
     */
    private Occupancy occupancy(Transitions inOrder) {
        if (emptyDays == 0 || occupied.length == 0) {
            return Occupancy.ALWAYS;
        }
        double share = (double) occupied.length / (occupied.length + emptyDays);
        OptionalResult left = inOrder.changed(true);
        OptionalResult back = inOrder.changed(false);
        double kept = left.exists() && back.exists() ? 1 - left.value() - back.value() : 0;
        double changed = 1 - (kept > 0 ? StrictMath.pow(kept, countedWeekdays() / (double) WEEKDAYS) : kept);
        double rarer = Math.min(share, 1 - share);
        double least = Occupancy.Chain.MIN_PROBABILITY / rarer;
        double held = Math.min(1 / (1 - rarer), Math.max(least, changed));
        return new Occupancy.Chain(held * (1 - share), held * share);
    }

    private int countedWeekdays() {
        int counted = 0;
        for (boolean one : idle) {
            counted += one ? 0 : 1;
        }
        return counted;
    }

    /**
     * Mean of each weekday over its occupied days; one mean for all of them where one was seen less than {@code least}
     * times. An idle weekday has the mean of all its days, over the share of days that are occupied, so that it is right on
     * the mean of days at home and away.
     */
    WeekdayLevels levels(MeteredDays days, int least) {
        WeekdayLevels own = WeekdayLevels.of(days, occupied);
        boolean often = true;
        for (int w = 0; w < WEEKDAYS; w++) {
            often &= idle[w] || own.count(w) >= least;
        }
        WeekdayLevels levels = often ? own : own.pooled();
        for (int w = 0; w < WEEKDAYS; w++) {
            levels = idle[w] ? levels.with(w, idleMeanLitres(w)) : levels;
        }
        return levels;
    }

    /** Whether a weekday, Monday 0, has almost no use. */
    boolean isIdle(int weekday) {
        return idle[weekday];
    }

    /** Mean of an idle weekday: of all its days, over the share of days that are occupied. */
    double idleMeanLitres(int weekday) {
        return all.meanLitres(weekday) / (1 - emptyShare());
    }

    /** Indexes of the days with somebody there, in order. */
    public int[] occupied() {
        return occupied.clone();
    }

    public int occupiedDays() {
        return occupied.length;
    }

    public int emptyDays() {
        return emptyDays;
    }

    /**
     * Share of empty days.
     *
     * <pre>share = e / (e + o)</pre>
     *
     * <p>e known days with nobody there; o with somebody there; idle weekdays are in neither.
     * Validity: at least one such day.
     * Source: a share, by definition.
     * Deviation: none.
     */
    public double emptyShare() {
        return (double) emptyDays / (emptyDays + occupied.length);
    }

    /** Probability that the day after one with somebody there is empty. */
    public OptionalResult leave() {
        return leave;
    }

    /** Probability that somebody is there on the day after an empty one. */
    public OptionalResult comeBack() {
        return comeBack;
    }

    /** Occupancy model: always at home, or a chain with the measured share of occupied days. */
    public Occupancy occupancy() {
        return occupancy;
    }

    /** How often a day of one kind is followed by one of the same or the other. */
    private static final class Transitions {

        private final int[][] followed = new int[2][2];

        void add(boolean there, boolean thereNext) {
            followed[there ? 1 : 0][thereNext ? 1 : 0]++;
        }

        OptionalResult changed(boolean there) {
            int[] after = followed[there ? 1 : 0];
            return after[0] + after[1] == 0 ? OptionalResult.none(NoResultReason.NO_SUCH_DAY_FOLLOWED)
                    : OptionalResult.of((double) after[there ? 0 : 1] / (after[0] + after[1]));
        }
    }
}
