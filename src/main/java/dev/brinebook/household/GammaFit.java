// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import dev.brinebook.source.Table;
import java.util.Arrays;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.special.Erf;
import org.hipparchus.special.Gamma;

/** The gamma distribution that fits days best, and how well that is. */
public final class GammaFit {

    /** Above this shape the series of the digamma function is as good as the function, and its difference exact. */
    private static final double LARGE_SHAPE = 1e4;
    private static final double ACCURACY = 1e-10;
    private static final int MAX_EVALUATIONS = 200;
    private static final double[][] POINTS = Table.read("/household/anderson-darling.csv", ',', 3).stream()
            .map(row -> Arrays.stream(row).mapToDouble(Double::parseDouble).toArray()).toArray(double[][]::new);

    /** How well a gamma distribution describes the days. */
    public enum Verdict {
        /** Days of a gamma distribution would look so more often than one time in twenty. */
        GOOD,
        /** They would between one time in a hundred and one in twenty. */
        DOUBTFUL,
        /** They would less often than one time in a hundred. */
        POOR
    }

    private GammaFit() {
    }

    /**
     * The shape of the gamma distribution that makes the values most likely.
     *
     * <pre>ln a - psi(a) = ln(mean of x) - mean of ln x</pre>
     *
     * <p>a shape; psi digamma function; x values. The root lies between 1 / (2 s) and 1 / s, s the right side.
     * Validity: values above 0; no answer when they do not differ.
     * Source: [CHOI-WETTE] the likelihood equation.
     * Deviation: the estimate is too high by about 3 parts in n, the number of values; it is not corrected.
     */
    public static OptionalResult shape(double[] values) {
        double sum = 0;
        double logs = 0;
        for (double value : values) {
            sum += Guard.positive(value, "value");
            logs += StrictMath.log(value);
        }
        double wanted = StrictMath.log(sum / values.length) - logs / values.length;
        if (!(wanted > ACCURACY)) {
            return OptionalResult.none(NoResultReason.DAYS_DO_NOT_DIFFER);
        }
        return OptionalResult.of(new BrentSolver(ACCURACY, 0).solve(MAX_EVALUATIONS, a -> logLessDigamma(a) - wanted,
                0.5 / wanted * (1 - 1e-6), 1 / wanted * (1 + 1e-6)));
    }

    /** ln a - psi(a); for a large shape by [ABRAMOWITZ-STEGUN] 6.3.18, which avoids the cancellation of two large numbers. */
    static double logLessDigamma(double a) {
        return a > LARGE_SHAPE ? 1 / (2 * a) + 1 / (12 * a * a) : StrictMath.log(a) - Gamma.digamma(a);
    }

    /**
     * Coefficient of variation of a gamma distribution.
     *
     * <pre>CV = 1 / √a</pre>
     *
     * <p>a shape.
     * Validity: a above 0.
     * Source: the gamma distribution, by definition.
     * Deviation: none.
     */
    public static double cv(double shape) {
        return 1 / Math.sqrt(Guard.positive(shape, "shape"));
    }

    /**
     * Standard error of the coefficient of variation.
     *
     * <pre>se = 1 / (2 a √a) / √(n (psi'(a) - 1 / a))</pre>
     *
     * <p>a shape; n number of values; psi' trigamma function.
     * Validity: many values; the result is asymptotic.
     * Source: [CHOI-WETTE] the information of the shape, carried over by the derivative of 1 / √a.
     * Deviation: none.
     */
    public static double cvStandardError(double shape, int values) {
        Guard.positive(shape, "shape");
        double information = shape > LARGE_SHAPE ? 1 / (2 * shape * shape) : Gamma.trigamma(shape) - 1 / shape;
        return 0.5 / (shape * Math.sqrt(shape)) / Math.sqrt(Guard.within(values, 1, Integer.MAX_VALUE, "values") * information);
    }

    /**
     * Anderson-Darling distance of values from a gamma distribution of their own mean, which weights the tails most.
     *
     * <pre>A² = -n - sum over i of (2 i - 1) / n (ln F(x(i)) + ln(1 - F(x(n+1-i))))</pre>
     *
     * <p>F distribution function; x(i) the i-th smallest of n values.
     * Validity: values above 0.
     * Source: [STEPHENS-1986].
     * Deviation: a probability that underflows is taken as the smallest normal number.
     */
    public static double andersonDarling(double[] values, double shape) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double mean = Arrays.stream(sorted).average().orElseThrow();
        int n = sorted.length;
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += (2 * i + 1) * logProbability(sorted[i] / mean, shape, true);
            sum += (2 * (n - i) - 1) * logProbability(sorted[i] / mean, shape, false);
        }
        return -n - sum / n;
    }

    private static double logProbability(double ratio, double shape, boolean below) {
        double probability;
        if (shape > LARGE_SHAPE) {
            // cube-root normal form of the distribution: [WILSON-HILFERTY]
            double z = (StrictMath.cbrt(ratio) - 1 + 1 / (9 * shape)) * 3 * Math.sqrt(shape);
            probability = 0.5 * Erf.erfc((below ? -z : z) / Math.sqrt(2));
        } else {
            probability = below ? Gamma.regularizedGammaP(shape, shape * ratio) : Gamma.regularizedGammaQ(shape, shape * ratio);
        }
        return StrictMath.log(Math.max(probability, Double.MIN_NORMAL));
    }

    /**
     * Verdict on a fitted gamma distribution by its Anderson-Darling statistic.
     *
     * <pre>good: A² &lt; A(5 %, a);   doubtful: A² &lt; A(1 %, a);   else poor</pre>
     *
     * <p>A² {@link #andersonDarling}; a shape; A point that 5 % or 1 % of samples exceed, linear in 1 / a between rows.
     * Validity: below a shape of 0.5 as at 0.5, which calls a fit poor a little too soon.
     * Source: [STEPHENS-1986].
     * Deviation: the means of weekdays are fitted as well, which moves the points by a hundredth only: [BRINEBOOK-SIMULATION].
     */
    public static Verdict verdict(double statistic, double shape) {
        return statistic < point(shape, 1) ? Verdict.GOOD : statistic < point(shape, 2) ? Verdict.DOUBTFUL : Verdict.POOR;
    }

    /** The statistic that 5 % (column 1) or 1 % (column 2) of samples exceed. */
    static double point(double shape, int column) {
        double x = 1 / Guard.positive(shape, "shape");
        for (int i = 1; i < POINTS.length; i++) {
            double left = 1 / POINTS[i - 1][0];
            double right = 1 / POINTS[i][0];
            if (x >= right) {
                double share = Math.min(1, (x - right) / (left - right));
                return POINTS[i][column] + share * (POINTS[i - 1][column] - POINTS[i][column]);
            }
        }
        return POINTS[POINTS.length - 1][column];
    }
}
