// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import dev.brinebook.source.Table;

/**
 * How the use of a day spreads over its hours.
 *
 * <p>Source: [DAIAD] hourly multipliers.
 */
public final class HourlyProfile {

    public static final double MAX_MINUTES = 1440;
    private static final int HOURS = 24;
    private static final double[] SHARES = shares();
    /** Share of the use before each full hour, and all of it at the end. */
    private static final double[] BEFORE = sums(SHARES);
    /** The use in parts, and the hour in which each begins. */
    private static final int PARTS = 64;
    private static final int[] HOUR_OF_PART = hoursOfParts();

    private HourlyProfile() {
    }

    /**
     * Share of a day's use in {@code minutes} from the full {@code hour} on, through midnight if need be.
     *
     * <pre>share = Σ s(h) min(1, t(h) / 60)</pre>
     *
     * <p>s share of an hour; t(h) minutes left at its start; h from {@code hour} on, modulo 24.
     * Validity: up to a day.
     * Source: [DAIAD] hourly multipliers.
     * Deviation: use is taken as even within an hour.
     *
     * @param hour 0 to 23
     * @param minutes 0 to 1,440
     */
    public static double share(int hour, double minutes) {
        Guard.within(hour, 0, HOURS - 1, "hour");
        Guard.within(minutes, 0, MAX_MINUTES, "minutes");
        double share = 0;
        double left = minutes;
        for (int i = hour; left > 0; i = (i + 1) % HOURS) {
            share += SHARES[i] * Math.min(1, left / 60);
            left -= 60;
        }
        return share;
    }

    /**
     * Share of a day's use up to a time of the day.
     *
     * <pre>share = s(0) + … + s(h - 1) + (24 d - h) s(h),   h = whole part of 24 d</pre>
     *
     * <p>s share of an hour; d {@code dayShare}.
     * Validity: d from 0 to 1.
     * Source: [DAIAD] hourly multipliers.
     * Deviation: use is taken as even within an hour.
     *
     * @param dayShare time since midnight as a share of the day, 0 to 1
     */
    public static double shareUntil(double dayShare) {
        double hours = HOURS * Guard.within(dayShare, 0, 1, "dayShare");
        int hour = Math.min(HOURS - 1, (int) hours);
        return BEFORE[hour] + (hours - hour) * SHARES[hour];
    }

    /**
     * The time of the day, as a share of it, up to which a share of its use has passed: the inverse of {@link #shareUntil}.
     *
     * <pre>d = (h + (share - s(0) - … - s(h - 1)) / s(h)) / 24</pre>
     *
     * <p>Symbols as in {@link #shareUntil}; h hour in which the share is reached.
     * Validity: share from 0 to 1.
     * Source: [DAIAD] hourly multipliers.
     * Deviation: use is taken as even within an hour.
     */
    public static double dayShareAt(double shareOfUse) {
        int hour = hourOf(Guard.within(shareOfUse, 0, 1, "shareOfUse"), HOUR_OF_PART[(int) (PARTS * shareOfUse)]);
        return Math.min(1, (hour + (shareOfUse - BEFORE[hour]) / SHARES[hour]) / HOURS);
    }

    /** The hour in which a share is reached, not before {@code first}. */
    private static int hourOf(double shareOfUse, int first) {
        int hour = first;
        while (hour < HOURS - 1 && BEFORE[hour + 1] < shareOfUse) {
            hour++;
        }
        return hour;
    }

    private static int[] hoursOfParts() {
        int[] hours = new int[PARTS + 1];
        for (int part = 0; part <= PARTS; part++) {
            hours[part] = hourOf((double) part / PARTS, 0);
        }
        return hours;
    }

    private static double[] sums(double[] shares) {
        double[] before = new double[shares.length + 1];
        for (int i = 0; i < shares.length; i++) {
            before[i + 1] = before[i] + shares[i];
        }
        before[shares.length] = 1;
        return before;
    }

    private static double[] shares() {
        double[] multipliers = Table.read("/household/hours.csv", ',', 2).stream()
                .mapToDouble(row -> Double.parseDouble(row[1])).toArray();
        if (multipliers.length != HOURS) {
            throw new IllegalStateException("hours.csv must have 24 rows");
        }
        double sum = 0;
        for (double multiplier : multipliers) {
            sum += multiplier;
        }
        double[] shares = new double[HOURS];
        for (int i = 0; i < HOURS; i++) {
            shares[i] = multipliers[i] / sum;
        }
        return shares;
    }
}
