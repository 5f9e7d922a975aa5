// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.household.UseChange;

/**
 * The levels of use over which a home is expected: nodes and weights of a quadrature over a standard normal variable.
 *
 * <pre>q(i) = exp(s z(i)) / Σ w exp(s z)</pre>
 *
 * <p>q use over the mean use; s spread of the logarithm; z, w nodes and weights.
 * Source: [ABRAMOWITZ-STEGUN] 25.4.46 and table 25.10, nodes of Gauss and Hermite; 25.4.2 the trapezoidal rule.
 * Deviation: of clocks, hard days within 2.5 % of the mean over all levels, or within 0.006 days a year; within 1 % where the use of an
 * interval scatters by a fifth of the spread or more; of meters, within 2 %. Levels beyond 3.75 standard deviations are
 * left out.
 */
final class Levels {

    /** Of meters in homes whose hard days go smoothly with the level: seven nodes of Gauss and Hermite, highest first. */
    static final Levels OF_METERS = new Levels(
            new double[] {3.750439717725742, 2.366759410734541, 1.154405394739968, 0, -1.154405394739968, -2.366759410734541,
                -3.750439717725742},
            new double[] {0.000548268855972217, 0.0307571239675865, 0.2401231786050127, 16 / 35.0, 0.2401231786050127,
                0.0307571239675865, 0.000548268855972217});
    /** The same of third order. */
    static final Levels FEW = new Levels(new double[] {Math.sqrt(3), 0, -Math.sqrt(3)}, new double[] {1 / 6.0, 2 / 3.0, 1 / 6.0});
    /**
     * Of clocks, which exhaust a bed at once when the level passes what it lasts for: so many that the use of an interval scatters
     * over more than lies between two of them. Also those among which the years of a home are counted.
     */
    static final Levels FINE = evenly(15, 0.25);
    /** Every second of them. */
    private static final Levels HALF_AS_FINE = evenly(7, 0.5);
    /** Days that scatter by less than this share of the spread of levels need more than seven nodes; the usual home's do not. */
    private static final double SCATTER_OF_SEVEN_NODES = 1;
    private static final double SCATTER_OF_HALF_AS_FINE = 0.65;
    /** Levels beyond, a year in sixteen, are the outer ones. */
    private static final double OUTER_NODE = 1.8;
    /** Of a home that stays as it is. */
    private static final Levels ONE = new Levels(new double[] {0}, new double[] {1});

    private final double[] nodes;
    private final double[] weights;

    private Levels(double[] nodes, double[] weights) {
        this.nodes = nodes;
        this.weights = weights;
    }

    /** The trapezoidal rule: as many nodes to each side of the middle, at a distance. */
    private static Levels evenly(int toEachSide, double step) {
        double[] nodes = new double[2 * toEachSide + 1];
        double[] weights = new double[nodes.length];
        double sum = 0;
        for (int i = 0; i < nodes.length; i++) {
            nodes[i] = (toEachSide - i) * step;
            weights[i] = StrictMath.exp(-nodes[i] * nodes[i] / 2);
            sum += weights[i];
        }
        for (int i = 0; i < nodes.length; i++) {
            weights[i] /= sum;
        }
        return new Levels(nodes, weights);
    }

    /** The levels at which a clock is looked at, and those over which the years of a home spread. */
    static Levels fine(UseChange change) {
        return change.levelSpread() == 0 ? ONE : FINE;
    }

    /** The levels at which a meter is looked at whose days scatter by {@code cv}. */
    static Levels ofMeters(UseChange change, double cv) {
        double spread = change.levelSpread();
        return spread == 0 ? ONE : cv >= Math.max(MeterRates.LEAST_CV, SCATTER_OF_SEVEN_NODES * spread) ? OF_METERS
                : cv >= SCATTER_OF_HALF_AS_FINE * spread ? HALF_AS_FINE : FINE;
    }

    /** How far the level that a clock or a meter sees wanders. */
    static double spread(UseChange change, boolean byClock) {
        return byClock ? change.levelSpreadOfSums() : change.levelSpread();
    }

    int count() {
        return nodes.length;
    }

    /** Standard deviations above the middle. */
    double node(int level) {
        return nodes[level];
    }

    /** Chance of a level. */
    double weight(int level) {
        return weights[level];
    }

    /** Whether it is the middle one. */
    boolean isUsual(int level) {
        return level == nodes.length / 2;
    }

    /** Whether it is one of those that are seldom reached. */
    boolean isOuter(int level) {
        return Math.abs(nodes[level]) > OUTER_NODE;
    }

    /** Use at each level over the mean use. */
    double[] factors(double spread) {
        double[] factors = new double[nodes.length];
        double mean = 0;
        for (int i = 0; i < nodes.length; i++) {
            factors[i] = StrictMath.exp(spread * nodes[i]);
            mean += weights[i] * factors[i];
        }
        for (int i = 0; i < nodes.length; i++) {
            factors[i] /= mean;
        }
        return factors;
    }
}
