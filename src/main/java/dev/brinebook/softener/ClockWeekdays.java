// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.guard.Guard;
import dev.brinebook.household.WeekdayMeans;
import java.time.DayOfWeek;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/** The weekdays of a clock that counts weekdays, for an interval in days. */
public final class ClockWeekdays {

    private static final int WEEK = DayOfWeek.values().length;
    /** Two weekdays with less than a tenth between them are alike. */
    private static final double ASSUMED_ALIKE_SHARE = 0.1;

    private ClockWeekdays() {
    }

    /** Whether no weekday has much more use than another. */
    public static boolean isEven(WeekdayMeans means) {
        double most = Arrays.stream(DayOfWeek.values()).mapToDouble(means::litres).max().orElseThrow();
        double least = Arrays.stream(DayOfWeek.values()).mapToDouble(means::litres).min().orElseThrow();
        return most - least <= ASSUMED_ALIKE_SHARE * most;
    }

    /**
     * Weekdays in the early morning of which it regenerates, from Monday on: as few as leave no longer gap than {@code days}, spread
     * evenly, so that the largest use between two regenerations is least; of equal ones, those where the use after a regeneration
     * comes earliest, so that a fresh bed meets the peak.
     *
     * <pre>k = ceil(7 / days),  at least 1</pre>
     *
     * <p>k weekdays. Source: common practice.
     *
     * @param days longest gap, 1 or more
     */
    public static List<DayOfWeek> forEvery(int days, WeekdayMeans means) {
        Guard.positive(days, "days");
        int count = Math.max(1, (WEEK + days - 1) / days);
        return Arrays.stream(DayOfWeek.values()).map(first -> spread(first, count)).min(Comparator
                .<List<DayOfWeek>>comparingDouble(set -> Math.rint(largest(set, means))).thenComparingDouble(set -> wait(set, means)))
                .orElseThrow().stream().sorted().toList();
    }

    private static List<DayOfWeek> spread(DayOfWeek first, int count) {
        return IntStream.range(0, count).mapToObj(i -> first.plus((long) i * WEEK / count)).toList();
    }

    /** The largest use between two regenerations, litres. */
    private static double largest(List<DayOfWeek> set, WeekdayMeans means) {
        return set.stream().mapToDouble(day -> {
            double sum = 0;
            for (int after = 0; after < gap(day, set); after++) {
                sum += means.litres(day.plus(after));
            }
            return sum;
        }).max().orElseThrow();
    }

    /** Litres times the days since the regeneration before them. */
    private static double wait(List<DayOfWeek> set, WeekdayMeans means) {
        return set.stream().mapToDouble(day -> IntStream.range(0, gap(day, set))
                .mapToDouble(after -> after * means.litres(day.plus(after))).sum()).sum();
    }

    private static int gap(DayOfWeek day, List<DayOfWeek> set) {
        int gap = 1;
        while (!set.contains(day.plus(gap))) {
            gap++;
        }
        return gap;
    }
}
