// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.randomness;

/** How much one number goes up, or down, with another. */
public final class RankCorrelation {

    private RankCorrelation() {
    }

    /**
     * Correlation of the ranks of two numbers, from -1 to 1; 0 where one of them never changes.
     *
     * <pre>ρ = Σ (r_i − r̄)(s_i − r̄) / √(Σ (r_i − r̄)² Σ (s_i − r̄)²)</pre>
     *
     * <p>r, s ranks of the two; equal values share the mean of their ranks; r̄ mean rank, (n + 1)/2.
     * Validity: as many of either, two at least.
     * Source: [SPEARMAN-1904].
     */
    public static double of(double[] one, double[] other) {
        if (one.length != other.length || one.length < 2) {
            throw new IllegalArgumentException("both must have as many values, two at least, had " + one.length + " and "
                    + other.length);
        }
        return ofRanks(Ranks.of(one), Ranks.of(other));
    }

    /** The same by the ranks of the two, {@link Ranks#of}. */
    public static double ofRanks(double[] r, double[] s) {
        double mean = (r.length + 1) / 2.0;
        double product = 0;
        double squaresOne = 0;
        double squaresOther = 0;
        for (int i = 0; i < r.length; i++) {
            product += (r[i] - mean) * (s[i] - mean);
            squaresOne += (r[i] - mean) * (r[i] - mean);
            squaresOther += (s[i] - mean) * (s[i] - mean);
        }
        return squaresOne == 0 || squaresOther == 0 ? 0 : product / Math.sqrt(squaresOne * squaresOther);
    }
}
