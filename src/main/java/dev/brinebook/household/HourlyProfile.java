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

    private HourlyProfile() {
    }

    /**
     * Share of a day's use that falls in {@code minutes} from the full {@code hour} on, through midnight if need be.
     *
     * <pre>share = sum of the hours' shares, the last hour in proportion</pre>
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
