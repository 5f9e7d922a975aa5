// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import java.util.Arrays;
import java.util.List;

/**
 * The days of a series that are a leak or a filling rather than a habit of the home.
 *
 * @param days those above the cap, in order; none when there are too many of them
 * @param above how many days lie above the cap, even when they are too many to be accidents
 * @param capped all days of the series, each held to the cap
 */
public record HighDays(List<HighDay> days, int above, MeteredDays capped) {

    /** Cap over the median of the days with somebody there. Source: [DAIAD] 1.1 days a year lie above it, in 31 % of homes. */
    public static final double CAP_OVER_MEDIAN = 4;
    /** Of more days than this, a habit such as watering: the most in any home of [DAIAD] is 3.5 %. One day may always be high. */
    public static final double ASSUMED_MOST_SHARE = 0.1;
    /** A weekday seen so often whose median is above the cap is a pattern of the week, such as a laundry day. */
    private static final int ASSUMED_LEAST_OF_A_PATTERN = 3;
    private static final int WEEKDAYS = 7;

    public HighDays {
        days = List.copyOf(days);
    }

    /**
     * The days above a cap.
     *
     * <pre>cap = 4 median of the occupied days,   occupied: V ≥ {@link Presence#EMPTY_LITRES} and V ≥ median of V above 0 / 10</pre>
     *
     * <p>V use of a day, L.
     * Validity: any known days; without occupied days there are none above.
     * Source: [DAIAD] two such days of more than 6,000 L gave one home a scatter of 1.33, capped 0.53.
     * Deviation: a weekday whose own median is above the cap has four times that median as its cap; and when a tenth of the days
     * or more lie above, nothing is capped, since then they are how the home uses water.
     */
    public static HighDays of(MeteredDays days) {
        double[] occupied = occupiedLitres(days, days.known());
        double usual = occupied.length == 0 ? 0 : Trend.median(occupied);
        double[] caps = new double[WEEKDAYS];
        for (int w = 0; w < WEEKDAYS; w++) {
            int weekday = w;
            double[] own = occupiedLitres(days, Arrays.stream(days.known()).filter(i -> days.weekday(i) == weekday).toArray());
            boolean pattern = own.length >= ASSUMED_LEAST_OF_A_PATTERN && Trend.median(own) > CAP_OVER_MEDIAN * usual;
            caps[w] = CAP_OVER_MEDIAN * (pattern ? Trend.median(own) : usual);
        }
        List<HighDay> high = Arrays.stream(days.known()).filter(i -> usual > 0 && days.litres(i) > caps[days.weekday(i)])
                .mapToObj(i -> new HighDay(days.dateOf(i), days.litres(i), caps[days.weekday(i)])).toList();
        boolean habit = high.size() > 1 && high.size() >= ASSUMED_MOST_SHARE * days.known().length;
        return high.isEmpty() || habit ? new HighDays(List.of(), high.size(), days)
                : new HighDays(high, high.size(), days.atMost(caps));
    }

    /** Uses of the days with somebody there, weekdays not distinguished. */
    private static double[] occupiedLitres(MeteredDays days, int[] indexes) {
        double[] used = Arrays.stream(days.known()).mapToDouble(days::litres).filter(litres -> litres > 0).toArray();
        if (used.length == 0) {
            return used;
        }
        double share = Presence.EMPTY_SHARE_OF_MEDIAN * Trend.median(used);
        boolean anyThere = Arrays.stream(used).anyMatch(litres -> litres >= Presence.EMPTY_LITRES);
        double least = anyThere ? Math.max(Presence.EMPTY_LITRES, share) : share;
        return Arrays.stream(indexes).mapToDouble(days::litres).filter(litres -> litres >= least && litres > 0).toArray();
    }
}
