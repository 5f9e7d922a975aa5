// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.randomness;

import dev.brinebook.guard.Guard;

/**
 * Latin hypercube sampling of several numbers at once: each range is cut into as many equally likely
 * parts as there are draws, and every part is sampled once.
 *
 * <p>Draws are numbered, so that they can be worked on in any order and by any number of threads. Immutable.
 *
 * <p>Source: [MCKAY-1979].
 */
public final class LatinHypercube {

    public static final int MAX_DRAWS = 100_000;
    public static final int MAX_DIMENSIONS = 100;

    private final double[][] probability;

    private LatinHypercube(double[][] probability) {
        this.probability = probability;
    }

    /** {@code draws} draws of {@code dimensions} numbers that do not depend on each other. */
    public static LatinHypercube of(int dimensions, int draws, long seed) {
        Guard.within(dimensions, 0, MAX_DIMENSIONS, "dimensions");
        Guard.within(draws, 1, MAX_DRAWS, "draws");
        double[][] probability = new double[dimensions][draws];
        for (int dimension = 0; dimension < dimensions; dimension++) {
            RandomStream stream = new RandomStream(seed, dimension);
            double[] column = probability[dimension];
            for (int i = 0; i < draws; i++) {
                // 1 - u is above 0, so that no probability is 0; the last part ends below 1 by its half digit.
                column[i] = Math.min((i + 1 - stream.nextDouble()) / draws, 1 - 0x1.0p-53);
            }
            for (int i = draws - 1; i > 0; i--) {
                int j = (int) (stream.nextDouble() * (i + 1));
                double swapped = column[i];
                column[i] = column[j];
                column[j] = swapped;
            }
        }
        return new LatinHypercube(probability);
    }

    public int draws() {
        return probability.length == 0 ? 0 : probability[0].length;
    }

    /** The probability that a dimension has in a draw: above 0 and below 1. */
    public double probability(int dimension, int draw) {
        return probability[dimension][draw];
    }
}
