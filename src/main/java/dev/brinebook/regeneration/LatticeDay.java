// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import java.util.Arrays;
import org.hipparchus.special.Gamma;

/**
 * The use of one weekday with somebody at home, gamma distributed, on a lattice of litres.
 *
 * <pre>F(x) = P(a, x/s)      M(x) = E(X - x)+ = m (1 - P(a+1, x/s)) - x (1 - F(x))
 * p(0) = (M(h) - m + h) / h,   p(k) = [M((k+1)h) - 2 M(kh) + M((k-1)h)] / h</pre>
 *
 * <p>X use of the day; m its mean, litres; a = 1/CV²; s = m CV²; P regularized lower incomplete gamma function; h step of the
 * lattice. The chances p keep the mean exactly. They widen the variance by h²/6, which {@code 7/6 p(k) - (p(k-1) + p(k+1))/12}
 * takes out again, where next to nothing lies near 0; the negative values that this may leave far out are kept, since cutting
 * them would shift the mean.
 * Validity: CV from {@value #LEAST_CV}.
 * Source: [DAIAD] for the gamma distribution; the rest follows.
 * Deviation: F and M between points of the table, h/8 apart, are read with a cubic through four points.
 */
final class LatticeDay {

    /** Days that scatter less are treated as all alike. */
    static final double LEAST_CV = 0.02;
    /** Above this the density near 0 is too large for the variance to be corrected. */
    private static final double LARGEST_CORRECTED_CV = 0.92;
    /** With a mean of this many steps almost no use falls in the first step. */
    private static final double FEWEST_CORRECTED_STEPS = 4;
    /** Points of the table in one step. */
    private static final int FINE = 8;

    private final double mean;
    private final double step;
    private final double cv;
    private final int points;
    private final double[] below;
    private final double[] excess;
    private final double[] chances;

    LatticeDay(double mean, double cv, double step) {
        this.mean = mean;
        this.step = step;
        this.cv = cv;
        if (mean == 0) {
            points = 0;
            below = new double[0];
            excess = new double[0];
            chances = new double[] {1};
            return;
        }
        GammaTable table = GammaTable.of(cv);
        double fine = step / FINE;
        points = (int) Math.ceil(table.largest() * mean / fine) + 2;
        // The last point once more, so that every place in the table has four points about it.
        below = new double[points + 1];
        excess = new double[points + 1];
        for (int i = 0; i < points; i++) {
            double relative = i * fine / mean;
            below[i] = table.below(relative);
            excess[i] = mean * table.excess(relative);
        }
        below[points] = below[points - 1];
        excess[points] = excess[points - 1];
        chances = chances(cv < LARGEST_CORRECTED_CV && mean >= FEWEST_CORRECTED_STEPS * step);
    }

    /** Distance of lattice points, litres. */
    double step() {
        return step;
    }

    double mean() {
        return mean;
    }

    /** Chance of each number of steps, from 0 on. */
    double[] chances() {
        return chances;
    }

    private double[] chances(boolean corrected) {
        int size = (points - 1) / FINE + 2;
        double[] plain = new double[size];
        plain[0] = (excessAt(1) - mean + step) / step;
        for (int k = 1; k < size; k++) {
            plain[k] = (excessAt(k + 1) - 2 * excessAt(k) + excessAt(k - 1)) / step;
        }
        if (!corrected) {
            return plain;
        }
        double[] narrow = new double[size + 1];
        for (int k = 0; k <= size; k++) {
            double at = k < size ? plain[k] : 0;
            double before = k == 0 ? plain[0] : plain[k - 1];
            narrow[k] = 7 / 6.0 * at - (before + (k + 1 < size ? plain[k + 1] : 0)) / 12;
        }
        return narrow;
    }

    private double excessAt(int steps) {
        int i = steps * FINE;
        return i < points ? excess[i] : 0;
    }

    /** Fills {@code shares[k]} with the chance to stay below {@code litres} less k steps. */
    void below(double litres, double[] shares, int size) {
        double place = litres / step * FINE;
        int whole = (int) Math.floor(place);
        int k = surely(whole, size);
        Arrays.fill(shares, 0, k, 1);
        k = read(below, whole, place - whole, shares, k, size);
        for (; k < size && whole - k * FINE >= 0; k++) {
            shares[k] = Gamma.regularizedGammaP(1 / (cv * cv), Math.max(0, litres - k * step) / (mean * cv * cv));
        }
        Arrays.fill(shares, Math.min(k, size), size, 0);
    }

    /** Fills {@code means[k]} with the mean use above {@code litres} less k steps. */
    void excess(double litres, double[] means, int size) {
        double place = litres / step * FINE;
        int whole = (int) Math.floor(place);
        int k = surely(whole, size);
        Arrays.fill(means, 0, k, 0);
        k = read(excess, whole, place - whole, means, k, size);
        for (; k < size && whole - k * FINE >= 0; k++) {
            double[] weights = weights(place - whole);
            means[k] = weights[0] * (2 * excess[0] - excess[1]) + weights[1] * excess[0] + weights[2] * excess[1]
                    + weights[3] * excess[2];
        }
        for (; k < size; k++) {
            means[k] = mean - (litres - k * step);
        }
    }

    /** How many steps down a place stays beyond the table. */
    private int surely(int whole, int size) {
        return whole < points - 1 ? 0 : Math.min(size, (whole - points + 1) / FINE + 1);
    }

    /** Reads a table a step apart, downwards to where a point before it is missing; returns the first step not read. */
    private int read(double[] table, int whole, double past, double[] to, int from, int size) {
        double[] weights = weights(past);
        int end = Math.min(size, whole < 1 ? 0 : (whole - 1) / FINE + 1);
        for (int k = from; k < end; k++) {
            int i = whole - k * FINE;
            to[k] = weights[0] * table[i - 1] + weights[1] * table[i] + weights[2] * table[i + 1] + weights[3] * table[i + 2];
        }
        return Math.max(from, end);
    }

    /** Of the four points about a place, by its distance from the second. */
    private static double[] weights(double t) {
        return new double[] {-t * (t - 1) * (t - 2) / 6, (t + 1) * (t - 1) * (t - 2) / 2, -(t + 1) * t * (t - 2) / 2,
            (t + 1) * t * (t - 1) / 6};
    }
}
