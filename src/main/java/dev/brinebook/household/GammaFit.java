package dev.brinebook.household;

import dev.brinebook.guard.Figure;
import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoAnswer;
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
     * <pre>ln a - psi(a) = ln(mean of x) - mean of ln x</pre>
     * a: shape; psi: digamma function; x: values above 0. No answer when they do not differ.
     *
     * <p>Source: [CHOI-WETTE] the likelihood equation. Its root lies between 1 / (2 s) and 1 / s, s the right side. It is
     * too high by about 3 parts in n; that is left as it is.
     */
    public static Figure shape(double[] values) {
        double sum = 0;
        double logs = 0;
        for (double value : values) {
            sum += Guard.positive(value, "value");
            logs += StrictMath.log(value);
        }
        double wanted = StrictMath.log(sum / values.length) - logs / values.length;
        if (!(wanted > ACCURACY)) {
            return Figure.none(NoAnswer.DAYS_DO_NOT_DIFFER);
        }
        return Figure.of(new BrentSolver(ACCURACY, 0).solve(MAX_EVALUATIONS, a -> logLessDigamma(a) - wanted,
                0.5 / wanted * (1 - 1e-6), 1 / wanted * (1 + 1e-6)));
    }

    /** ln a - psi(a); for a large shape by [ABRAMOWITZ-STEGUN] 6.3.18, which the difference of two large numbers is not. */
    static double logLessDigamma(double a) {
        return a > LARGE_SHAPE ? 1 / (2 * a) + 1 / (12 * a * a) : StrictMath.log(a) - Gamma.digamma(a);
    }

    /** Coefficient of variation of a gamma distribution, 1 / √a. */
    public static double cv(double shape) {
        return 1 / Math.sqrt(Guard.positive(shape, "shape"));
    }

    /**
     * Standard error of the coefficient of variation.
     * <pre>se = 1 / (2 a √a) / √(n (psi'(a) - 1 / a))</pre>
     * a: shape; n: number of values; psi': trigamma function. For many values.
     *
     * <p>Source: [CHOI-WETTE] the information of the shape, carried over by the derivative of 1 / √a.
     */
    public static double cvStandardError(double shape, int values) {
        Guard.positive(shape, "shape");
        double information = shape > LARGE_SHAPE ? 1 / (2 * shape * shape) : Gamma.trigamma(shape) - 1 / shape;
        return 0.5 / (shape * Math.sqrt(shape)) / Math.sqrt(Guard.within(values, 1, Integer.MAX_VALUE, "values") * information);
    }

    /**
     * How far ordered values stand from a gamma distribution of their own mean, the tails counted most.
     * <pre>A² = -n - sum over i of (2 i - 1) / n (ln F(x(i)) + ln(1 - F(x(n+1-i))))</pre>
     * F: distribution function; x(i): the i-th smallest of n values.
     *
     * <p>Source: [STEPHENS-1986]. A probability that underflows is taken as the smallest normal number.
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
     * What the statistic means for a fitted gamma distribution. Between rows of the table linear in 1 / shape; below a
     * shape of 0.5 as at 0.5, which calls a fit poor a little too soon.
     *
     * <p>Source: [STEPHENS-1986]. That means of weekdays are fitted as well moves the points by a hundredth only:
     * [BRINEBOOK-SIMULATION].
     */
    public static Verdict verdict(double statistic, double shape) {
        return statistic < point(shape, 1) ? Verdict.GOOD : statistic < point(shape, 2) ? Verdict.DOUBTFUL : Verdict.POOR;
    }

    /** The statistic that 5 % (column 1) or 1 % (column 2) of samples pass. */
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
