// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.complaint;

import dev.brinebook.guard.Guard;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Where a cause puts a number: ranges, each as likely as its share, and within each every value alike.
 *
 * @param ranges at least one, of shares that sum to 1
 */
record Prediction(List<Range> ranges) {

    private static final NormalDistribution NORMAL = new NormalDistribution(0, 1);
    private static final double SHARES_OFF = 1e-9;

    /** A range with its share. */
    record Range(double low, double high, double share) {

        Range {
            Guard.positive(high - low, "high - low");
            Guard.within(share, 0, 1, "share");
        }

        /** From "low..high" or "low..high@share". */
        static Range of(String text) {
            String[] parts = text.split("@");
            String[] ends = parts[0].split("\\.\\.");
            return new Range(Double.parseDouble(ends[0]), Double.parseDouble(ends[1]), parts.length == 1 ? 1
                    : Double.parseDouble(parts[1]));
        }
    }

    Prediction {
        ranges = List.copyOf(ranges);
        Guard.within(ranges.stream().mapToDouble(Range::share).sum(), 1 - SHARES_OFF, 1 + SHARES_OFF, "sum of shares");
    }

    /** From ranges joined by "+". */
    static Prediction of(String text) {
        return new Prediction(Arrays.stream(text.split("\\+")).map(Range::of).toList());
    }

    /**
     * Density of a reading.
     *
     * <pre>f(x) = Σ p (Φ((x − a)/u) − Φ((x − b)/u)) / (b − a)</pre>
     *
     * <p>a, b ends of a range, p its share; u standard uncertainty of the reading, above 0; Φ the standard normal distribution.
     * Validity: any x.
     * Source: a normal error on a uniform value, by definition.
     * Deviation: none.
     */
    double density(double x, double uncertainty) {
        double sum = 0;
        for (Range range : ranges) {
            sum += range.share * (normal((x - range.low) / uncertainty) - normal((x - range.high) / uncertainty))
                    / (range.high - range.low);
        }
        return sum;
    }

    /** Probability of a reading of at most x: the integral of {@link #density}. */
    double below(double x, double uncertainty) {
        double sum = 0;
        for (Range range : ranges) {
            sum += range.share * uncertainty * (normalIntegral((x - range.low) / uncertainty)
                    - normalIntegral((x - range.high) / uncertainty)) / (range.high - range.low);
        }
        return sum;
    }

    private static double normal(double z) {
        return NORMAL.cumulativeProbability(z);
    }

    /** ∫ Φ from −∞ to z = z Φ(z) + φ(z). */
    private static double normalIntegral(double z) {
        return z * NORMAL.cumulativeProbability(z) + NORMAL.density(z);
    }

    double low() {
        return ranges.stream().mapToDouble(Range::low).min().orElseThrow();
    }

    double high() {
        return ranges.stream().mapToDouble(Range::high).max().orElseThrow();
    }

    /** How far a value lies outside of every range. */
    double distance(double x) {
        return ranges.stream().mapToDouble(range -> Math.max(0, Math.max(range.low - x, x - range.high))).min().orElseThrow();
    }
}
