// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.randomness.Ranks;
import java.util.Arrays;

/**
 * The place in a series where its level changes most.
 *
 * @param lastBefore index of the last value before the change
 * @param statistic K, the largest of the sums
 * @param probability that a series without change has so large a statistic, approximately
 * @param meanBefore mean up to the change
 * @param meanAfter mean after it
 */
public record ChangePoint(int lastBefore, double statistic, double probability, double meanBefore, double meanAfter) {

    /** A change is reported when its probability is below this. */
    public static final double ASSUMED_SIGNIFICANCE = 0.01;
    /** A smaller change of the mean is too small to matter. */
    public static final double ASSUMED_LEAST_CHANGE_SHARE = 0.1;
    /** Fewer values than this show nothing. */
    public static final int ASSUMED_LEAST_VALUES = 28;

    /**
     * The single change point of a series, by ranks.
     *
     * <pre>U(t) = sum over i ≤ t, j > t of sgn(x(i) - x(j)) = 2 (sum of ranks to t) - t (n + 1)
     * K = max |U(t)|,   p = 2 exp(-6 K² / (n³ + n²)), 1 at most</pre>
     *
     * <p>x values in order of time, equal ones sharing their ranks; n their number; t, i, j places in the series.
     * Validity: at least 2 values; p is approximate.
     * Source: [PETTITT-1979].
     * Deviation: the values are taken as independent of each other.
     */
    public static ChangePoint of(double[] values) {
        int n = values.length;
        double[] ranks = Ranks.of(values);
        double sum = 0;
        double largest = -1;
        int at = 0;
        for (int t = 1; t < n; t++) {
            sum += ranks[t - 1];
            double u = Math.abs(2 * sum - t * (n + 1.0));
            if (u > largest) {
                largest = u;
                at = t;
            }
        }
        double cubes = (double) n * n * n + (double) n * n;
        return new ChangePoint(at - 1, largest, Math.min(1, 2 * StrictMath.exp(-6 * largest * largest / cubes)),
                mean(values, 0, at), mean(values, at, n));
    }

    /** Whether the change is neither chance nor too small to matter. */
    public boolean matters() {
        return probability < ASSUMED_SIGNIFICANCE
                && Math.abs(meanAfter - meanBefore) > ASSUMED_LEAST_CHANGE_SHARE * Math.max(meanBefore, meanAfter);
    }

    /** Sum of squares that the change leaves unexplained. */
    double squaresLeft(double[] values) {
        double squares = 0;
        for (int i = 0; i < values.length; i++) {
            double left = values[i] - (i <= lastBefore ? meanBefore : meanAfter);
            squares += left * left;
        }
        return squares;
    }

    private static double mean(double[] values, int from, int to) {
        return Arrays.stream(values, from, to).average().orElseThrow();
    }
}
