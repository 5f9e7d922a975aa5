// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import org.hipparchus.special.Erf;

/**
 * A steady rise or fall of a series.
 *
 * @param statistic S, pairs that rise less pairs that fall
 * @param probability that a series without trend has so large a statistic, approximately
 * @param slopePerDay the middle of the slopes of all pairs
 */
public record Trend(long statistic, double probability, double slopePerDay) {

    /**
     * The trend of values on days, which may have gaps.
     *
     * <pre>S = sum over i &lt; j of sgn(x(j) - x(i)),   var = (n (n-1) (2n+5) - sum of t (t-1) (2t+5)) / 18
     * z = (|S| - 1) / √var,   p = erfc(z / √2)
     * slope = median of (x(j) - x(i)) / (d(j) - d(i))</pre>
     *
     * <p>S statistic; x values; d their days, rising; n their number; t how many share one value; z standard normal; p
     * probability; slope in units of x per day.
     * Validity: at least 2 values; p is approximate.
     * Source: [MANN-KENDALL] the test, [THEIL-SEN] the slope.
     * Deviation: the values are taken as independent of each other.
     */
    public static Trend of(int[] days, double[] values) {
        int n = values.length;
        double[] slopes = new double[n * (n - 1) / 2];
        long s = 0;
        int pair = 0;
        for (int j = 1; j < n; j++) {
            for (int i = 0; i < j; i++) {
                s += Integer.signum(Double.compare(values[j], values[i]));
                slopes[pair] = (values[j] - values[i]) / (days[j] - days[i]);
                pair++;
            }
        }
        double variance = variance(values);
        double z = variance > 0 ? Math.max(0, Math.abs(s) - 1) / Math.sqrt(variance) : 0;
        return new Trend(s, Erf.erfc(z / Math.sqrt(2)), median(slopes));
    }

    private static double variance(double[] values) {
        Map<Double, Integer> ties = new TreeMap<>();
        for (double value : values) {
            ties.merge(value, 1, Integer::sum);
        }
        return (term(values.length) - ties.values().stream().mapToDouble(Trend::term).sum()) / 18;
    }

    private static double term(int n) {
        return (double) n * (n - 1) * (2 * n + 5);
    }

    /** Sum of squares about a line of this slope through the mean. */
    double squaresLeft(int[] days, double[] values) {
        double[] level = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            level[i] = values[i] - slopePerDay * days[i];
        }
        double mean = Arrays.stream(level).average().orElseThrow();
        return Arrays.stream(level).map(left -> (left - mean) * (left - mean)).sum();
    }

    static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }
}
