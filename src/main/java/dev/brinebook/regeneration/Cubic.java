// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import java.util.function.IntToDoubleFunction;
import org.hipparchus.util.FastMath;

/**
 * A cubic through four points that are equally far apart.
 *
 * <p>Source: [ABRAMOWITZ-STEGUN] 25.2.13, Lagrange's interpolation through four points.
 */
record Cubic(double a, double b, double c, double d) {

    static final int POINTS = 4;
    /** Logarithms end here: less is none. */
    private static final double LEAST = 1e-15;

    /** At a place, counted in distances from the first point. */
    static Cubic at(double place) {
        double x = place;
        return new Cubic(-(x - 1) * (x - 2) * (x - 3) / 6, x * (x - 2) * (x - 3) / 2, -x * (x - 1) * (x - 3) / 2,
                x * (x - 1) * (x - 2) / 6);
    }

    double weight(int point) {
        return switch (point) {
            case 0 -> a;
            case 1 -> b;
            case 2 -> c;
            default -> d;
        };
    }

    /** The value there, from those at the points. */
    double sum(int first, IntToDoubleFunction values) {
        return a * values.applyAsDouble(first) + b * values.applyAsDouble(first + 1) + c * values.applyAsDouble(first + 2)
                + d * values.applyAsDouble(first + 3);
    }

    /** Logarithm of something that falls off fast and is never negative. */
    static double log(double value) {
        return FastMath.log(Math.max(LEAST, value));
    }

    /** Back from {@link #log}. */
    static double fromLog(double log) {
        double value = FastMath.exp(log);
        return value > 2 * LEAST ? value : 0;
    }
}
