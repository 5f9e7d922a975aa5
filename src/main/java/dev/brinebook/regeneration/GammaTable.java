// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.LastResultsCache;
import java.util.Arrays;
import org.hipparchus.special.Gamma;

/**
 * Gamma distribution of mean 1 in a table: chance to stay below a value, and mean of what lies above it. The density is summed
 * up with three Gauss points a step, exact to rounding; between points a cubic is laid through four.
 *
 * <p>Source: [DAIAD] for the distribution; [ABRAMOWITZ-STEGUN] 25.4.30 for the sum.
 */
final class GammaTable {

    /** Three scatters of days and three of their sums, for some kinds of households; a table takes some 20 kB. */
    private static final int MOST_SCATTERS = 24;
    private static final LastResultsCache<Double, GammaTable> BY_CV = new LastResultsCache<>(MOST_SCATTERS, GammaTable::new);
    private static final double NEGLIGIBLE = 1e-16;
    /** Points in a standard deviation, and at least in 1. */
    private static final double POINTS_IN_DEVIATION = 24;
    private static final double LEAST_POINTS = 80;
    /** Where the density may be steep the function itself is asked. */
    private static final int EXACT = 8;
    /** Gauss-Legendre points and weights of third order on 0 to 1. */
    private static final double[] POINTS = {0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)};
    private static final double[] WEIGHTS = {5 / 18.0, 8 / 18.0, 5 / 18.0};

    private final double shape;
    private final double step;
    private final double logOfFactor;
    private final double[] below;
    private final double[] excess;

    private GammaTable(double cv) {
        shape = 1 / (cv * cv);
        step = 1 / Math.max(LEAST_POINTS, POINTS_IN_DEVIATION / cv);
        logOfFactor = shape * StrictMath.log(shape) - Gamma.logGamma(shape);
        double[] shares = new double[1024];
        double[] means = new double[1024];
        means[0] = 1;
        double share = 0;
        int i = 1;
        for (boolean last = false; !last; i++) {
            double x = i * step;
            if (i <= EXACT) {
                share = Gamma.regularizedGammaP(shape, x * shape);
            } else {
                for (int j = 0; j < POINTS.length; j++) {
                    share += WEIGHTS[j] * density(x + (POINTS[j] - 1) * step) * step;
                }
            }
            if (i == shares.length) {
                shares = Arrays.copyOf(shares, 2 * i);
                means = Arrays.copyOf(means, 2 * i);
            }
            double density = density(x);
            last = x > 1 && density < NEGLIGIBLE;
            shares[i] = last ? 1 : Math.min(1, share);
            means[i] = last ? 0 : Math.max(0, 1 - share + density * x / shape - x * (1 - share));
        }
        below = Arrays.copyOf(shares, i);
        excess = Arrays.copyOf(means, i);
    }

    /** The table of a coefficient of variation. */
    static GammaTable of(double cv) {
        return BY_CV.of(cv);
    }

    private double density(double x) {
        return StrictMath.exp(logOfFactor + (shape - 1) * StrictMath.log(x) - shape * x);
    }

    /** Beyond this there is nothing. */
    double largest() {
        return (below.length - 1) * step;
    }

    /** Chance to stay below a value, 0 or above. */
    double below(double value) {
        double place = value / step;
        int i = (int) place;
        return i >= below.length - 1 ? 1 : i == 0 ? value == 0 ? 0 : Gamma.regularizedGammaP(shape, value * shape)
                : cubic(below, i, place - i);
    }

    /** Mean of what lies above a value, 0 or above. */
    double excess(double value) {
        double place = value / step;
        int i = (int) place;
        return i >= excess.length - 1 ? 0 : i == 0 ? GammaDay.excessLitres(1, 1 / Math.sqrt(shape), value)
                : cubic(excess, i, place - i);
    }

    private static double cubic(double[] table, int i, double t) {
        double after = i + 2 < table.length ? table[i + 2] : table[table.length - 1];
        return -t * (t - 1) * (t - 2) / 6 * table[i - 1] + (t + 1) * (t - 1) * (t - 2) / 2 * table[i]
                - (t + 1) * t * (t - 2) / 2 * table[i + 1] + (t + 1) * t * (t - 1) / 6 * after;
    }
}
