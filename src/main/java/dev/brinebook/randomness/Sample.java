// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.randomness;

import dev.brinebook.guard.CancellationToken;
import dev.brinebook.guard.Guard;
import java.util.Arrays;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * Monte Carlo sample of a calculation with uncertain inputs: many draws of the inputs, and the results of each.
 *
 * <p>Inputs are sampled by Latin hypercubes of {@value #DRAWS_PER_CUBE} draws, each of its own numbers. Hypercubes are added
 * until the mean of the first result is known well enough. Draws are numbered: however many threads work on them, every
 * result is the same to its last bit.
 */
public final class Sample {

    public static final int DRAWS_PER_CUBE = Draws.PER_CUBE;
    public static final int MAX_DRAWS = Draws.MOST;
    /** With fewer hypercubes, how much their means differ says little. */
    private static final int FEWEST_CUBES = 4;

    /** A calculation. One is made for each hypercube, so that it may keep memory of its own. */
    @FunctionalInterface
    public interface Model {

        /**
         * The results of a draw, the same number for each.
         *
         * @param inputs a value of each input, in their order; not to be kept
         * @param draw number of the draw, from 0 on
         */
        double[] results(double[] inputs, int draw);
    }

    private final Draws inputs;
    /** By hypercube, result and draw. */
    private final double[][][] results;

    private Sample(Draws inputs, double[][][] results) {
        this.inputs = inputs;
        this.results = results;
    }

    /** A sample on draws of its own. */
    public static Sample of(List<? extends Uncertain> inputs, Supplier<? extends Model> model, int mostDraws,
            double enoughStandardError, long seed) {
        return of(new Draws(inputs, seed), model, mostDraws, enoughStandardError);
    }

    /**
     * Draws until the standard error of the first result's mean is at most {@code enoughStandardError}, or until
     * {@code mostDraws}.
     *
     * @param inputs what is not known exactly
     * @param model makes the calculation
     * @param mostDraws a multiple of {@link #DRAWS_PER_CUBE}, 4 of them at least
     * @param enoughStandardError 0 to make all draws
     */
    public static Sample of(Draws inputs, Supplier<? extends Model> model, int mostDraws, double enoughStandardError) {
        Guard.within(mostDraws, FEWEST_CUBES * DRAWS_PER_CUBE, MAX_DRAWS, "mostDraws");
        Guard.notNegative(enoughStandardError, "enoughStandardError");
        int most = mostDraws / DRAWS_PER_CUBE;
        double[][][] results = new double[most][][];
        int cubes = enoughStandardError > 0 ? FEWEST_CUBES : most;
        int done = 0;
        BooleanSupplier stop = CancellationToken.current();
        while (done < most) {
            IntStream.range(done, cubes).parallel().forEach(cube ->
                    results[cube] = results(inputs.cube(cube), model.get(), cube * DRAWS_PER_CUBE, stop));
            done = cubes;
            if (meanOfCubes(results, done, 0).standardError() <= enoughStandardError) {
                break;
            }
            cubes = Math.min(most, 2 * cubes);
        }
        return new Sample(inputs, Arrays.copyOf(results, done));
    }

    private static double[][] results(double[][] inputs, Model model, int firstDraw, BooleanSupplier stop) {
        return CancellationToken.obeying(stop, () -> {
            double[][] results = new double[0][];
            for (int i = 0; i < inputs.length; i++) {
                CancellationToken.obey();
                double[] ofDraw = model.results(inputs[i], firstDraw + i);
                results = i == 0 ? new double[ofDraw.length][inputs.length] : results;
                for (int which = 0; which < ofDraw.length; which++) {
                    results[which][i] = ofDraw[which];
                }
            }
            return results;
        });
    }

    /** Number of draws made. */
    public int draws() {
        return results.length * DRAWS_PER_CUBE;
    }

    /** A value of an input in each draw. */
    public double[] input(int which) {
        return inputs.input(which, draws());
    }

    /** A result in each draw. */
    public double[] result(int which) {
        double[] all = new double[draws()];
        for (int cube = 0; cube < results.length; cube++) {
            System.arraycopy(results[cube][which], 0, all, cube * DRAWS_PER_CUBE, DRAWS_PER_CUBE);
        }
        return all;
    }

    /** The mean of a result with its standard error: the hypercubes are as many independent estimates of it. */
    public Mean mean(int result) {
        return meanOfCubes(results, results.length, result);
    }

    /**
     * A mean of many draws.
     *
     * @param value the mean
     * @param standardError its standard deviation, from how the means of the hypercubes differ
     */
    public record Mean(double value, double standardError) {
    }

    private static Mean meanOfCubes(double[][][] results, int cubes, int which) {
        double[] means = new double[cubes];
        double sum = 0;
        for (int cube = 0; cube < cubes; cube++) {
            double inCube = 0;
            for (double one : results[cube][which]) {
                inCube += one;
            }
            means[cube] = inCube / DRAWS_PER_CUBE;
            sum += means[cube];
        }
        double mean = sum / cubes;
        double squares = 0;
        for (double one : means) {
            squares += (one - mean) * (one - mean);
        }
        return new Mean(mean, Math.sqrt(squares / (cubes - 1) / cubes));
    }
}
