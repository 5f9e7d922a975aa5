// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.Guard;
import java.util.Arrays;
import org.hipparchus.analysis.polynomials.PolynomialFunction;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * A smooth rising curve through given points that never overshoots them, so that it has one inverse.
 *
 * <p>In each interval a cubic Hermite polynomial; at each inner knot the weighted harmonic mean of the two chords:
 *
 * <pre>(w₁ + w₂) / d = w₁/Δ₁ + w₂/Δ₂,  w₁ = 2h₂ + h₁,  w₂ = h₂ + 2h₁</pre>
 *
 * <p>d slope at the knot; Δ₁, Δ₂ slopes of the chords before and after; h₁, h₂ lengths of the intervals. At the ends
 * the one-sided parabola, kept between 0 and three times the chord.
 * Validity: knots that strictly rise in both coordinates, at least three.
 * Source: [FRITSCH-CARLSON] theorem on the region of monotonicity; [FRITSCH-BUTLAND] equation 5 for the slopes.
 * Deviation: none.
 */
public final class MonotoneCubic {

    private static final int MAX_EVALUATIONS = 200;
    private static final double INVERSE_RELATIVE_ACCURACY = 1e-14;

    private final double[] x;
    private final double[] y;
    private final PolynomialSplineFunction curve;

    private MonotoneCubic(double[] x, double[] y) {
        this.x = x;
        this.y = y;
        this.curve = new PolynomialSplineFunction(x, pieces(x, y, slopes(x, y)));
    }

    /**
     * The curve through the points (x[i], y[i]).
     *
     * @throws IllegalArgumentException when there are fewer than three, or they do not strictly rise
     */
    public static MonotoneCubic through(double[] x, double[] y) {
        Guard.within(x.length, 3, Integer.MAX_VALUE, "number of knots");
        Guard.within(y.length, x.length, x.length, "number of values");
        for (int i = 1; i < x.length; i++) {
            Guard.positive(x[i] - x[i - 1], "rise of x to knot " + i);
            Guard.positive(y[i] - y[i - 1], "rise of y to knot " + i);
        }
        return new MonotoneCubic(x.clone(), y.clone());
    }

    public double min() {
        return x[0];
    }

    public double max() {
        return x[x.length - 1];
    }

    /**
     * The value at {@code at}, which must lie between the first and the last knot; exact at a knot. What the guard takes
     * for a rounding past an end is treated as that end.
     */
    public double value(double at) {
        double inside = Math.max(min(), Math.min(max(), Guard.within(at, min(), max(), "x")));
        int knot = Arrays.binarySearch(x, inside);
        return knot >= 0 ? y[knot] : curve.value(inside);
    }

    /**
     * The argument at which the curve takes {@code value}, found between the two knots around it.
     *
     * @throws IllegalArgumentException when the curve takes it nowhere
     */
    public double inverse(double value) {
        double inside = Math.max(y[0], Math.min(y[y.length - 1], Guard.within(value, y[0], y[y.length - 1], "y")));
        int found = Arrays.binarySearch(y, inside);
        if (found >= 0) {
            return x[found];
        }
        int above = -found - 1;
        BrentSolver solver = new BrentSolver(INVERSE_RELATIVE_ACCURACY, Double.MIN_NORMAL, 0);
        return solver.solve(MAX_EVALUATIONS, at -> value(at) - inside, x[above - 1], x[above]);
    }

    private static double[] slopes(double[] x, double[] y) {
        int last = x.length - 1;
        double[] slope = new double[x.length];
        for (int i = 1; i < last; i++) {
            double before = x[i] - x[i - 1];
            double after = x[i + 1] - x[i];
            double w1 = 2 * after + before;
            double w2 = after + 2 * before;
            slope[i] = (w1 + w2) / (w1 / chord(x, y, i - 1) + w2 / chord(x, y, i));
        }
        slope[0] = endSlope(x[1] - x[0], x[2] - x[1], chord(x, y, 0), chord(x, y, 1));
        slope[last] = endSlope(x[last] - x[last - 1], x[last - 1] - x[last - 2], chord(x, y, last - 1),
                chord(x, y, last - 2));
        return slope;
    }

    private static double endSlope(double outerLength, double innerLength, double outerChord, double innerChord) {
        double parabola = ((2 * outerLength + innerLength) * outerChord - outerLength * innerChord)
                / (outerLength + innerLength);
        return Math.max(0, Math.min(3 * outerChord, parabola));
    }

    private static double chord(double[] x, double[] y, int interval) {
        return (y[interval + 1] - y[interval]) / (x[interval + 1] - x[interval]);
    }

    private static PolynomialFunction[] pieces(double[] x, double[] y, double[] slope) {
        PolynomialFunction[] pieces = new PolynomialFunction[x.length - 1];
        for (int i = 0; i < pieces.length; i++) {
            double length = x[i + 1] - x[i];
            double chord = chord(x, y, i);
            pieces[i] = new PolynomialFunction(y[i], slope[i], (3 * chord - 2 * slope[i] - slope[i + 1]) / length,
                    (slope[i] + slope[i + 1] - 2 * chord) / (length * length));
        }
        return pieces;
    }
}
