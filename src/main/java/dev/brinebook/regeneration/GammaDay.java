// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import org.hipparchus.special.Gamma;

/** Parts of a day's use that lie above a bound. */
final class GammaDay {

    private GammaDay() {
    }

    /**
     * Mean use above a bound, E(X - x)+.
     * <pre>M(x) = m (1 - P(a+1, x/s)) - x (1 - P(a, x/s)),   a = 1/CV²,  s = m CV²</pre>
     * P: regularized lower incomplete gamma function; m mean; below x = 0 it is m - x.
     *
     * <p>Source: [DAIAD] for the distribution.
     */
    static double excessLitres(double mean, double cv, double litres) {
        if (mean == 0 || litres <= 0) {
            return Math.max(0, mean - litres);
        }
        if (cv < LatticeDay.LEAST_CV) {
            return Math.max(0, mean - litres);
        }
        double shape = 1 / (cv * cv);
        double y = litres / (mean * cv * cv);
        return mean * Gamma.regularizedGammaQ(shape + 1, y) - litres * Gamma.regularizedGammaQ(shape, y);
    }

    /**
     * Half of the mean square of what lies above a bound, E((X - x)+²) / 2.
     * <pre>(m s (a+1) Q(a+2, y) - 2 x m Q(a+1, y) + x² Q(a, y)) / 2,   y = x/s</pre>
     * Q: regularized upper incomplete gamma function.
     *
     * <p>Source: [DAIAD] for the distribution.
     */
    static double halfSquareExcess(double mean, double cv, double litres) {
        if (cv < LatticeDay.LEAST_CV || mean == 0) {
            double over = Math.max(0, mean - litres);
            return over * over / 2;
        }
        double shape = 1 / (cv * cv);
        double scale = mean * cv * cv;
        double y = Math.max(0, litres) / scale;
        return (mean * scale * (shape + 1) * Gamma.regularizedGammaQ(shape + 2, y)
                - 2 * litres * mean * Gamma.regularizedGammaQ(shape + 1, y)
                + litres * litres * Gamma.regularizedGammaQ(shape, y)) / 2;
    }
}
