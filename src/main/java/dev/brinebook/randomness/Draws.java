// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.randomness;

import java.util.Arrays;
import java.util.List;

/**
 * Draws of uncertain inputs by seed and number. They come in Latin hypercubes of {@value #PER_CUBE}, each made when first needed and
 * then kept: samples of several calculations see the same draws, and making them takes longer than most calculations.
 *
 * <p>A hypercube may be asked for by one thread at a time.
 */
public final class Draws {

    static final int PER_CUBE = 250;
    static final int MOST = 10_000;

    private final List<? extends Uncertain> inputs;
    private final long seed;
    private final double[][][] cubes = new double[MOST / PER_CUBE][][];
    private double[][] ranks = new double[0][];

    /**
     * Draws that are made as they are needed.
     *
     * @param inputs what is not known exactly
     * @param seed the seed of all hypercubes
     */
    public Draws(List<? extends Uncertain> inputs, long seed) {
        this.inputs = List.copyOf(inputs);
        this.seed = seed;
    }

    /** A value of each input in each draw of a hypercube. */
    double[][] cube(int number) {
        if (cubes[number] == null) {
            cubes[number] = drawn(number);
        }
        return cubes[number];
    }

    private double[][] drawn(int number) {
        // Streams of the household's days are numbered from 0 on; those of the cubes lie beyond.
        LatinHypercube hypercube = LatinHypercube.of(inputs.size(), PER_CUBE, seed ^ (number + 1L) << 32);
        double[][] values = new double[PER_CUBE][inputs.size()];
        for (int d = 0; d < inputs.size(); d++) {
            for (int i = 0; i < PER_CUBE; i++) {
                values[i][d] = inputs.get(d).quantile(hypercube.probability(d, i));
            }
        }
        return values;
    }

    /** A value of an input in each of the first draws. */
    double[] input(int which, int count) {
        double[] values = new double[count];
        for (int draw = 0; draw < count; draw++) {
            values[draw] = cube(draw / PER_CUBE)[draw % PER_CUBE][which];
        }
        return values;
    }

    /** {@link Ranks} of the values of each input in the first draws, not to be changed; for one thread at a time. */
    public double[][] ranks(int count) {
        if (ranks.length == 0 || ranks[0].length != count) {
            ranks = new double[inputs.size()][];
            Arrays.setAll(ranks, which -> Ranks.of(input(which, count)));
        }
        return ranks.clone();
    }
}
