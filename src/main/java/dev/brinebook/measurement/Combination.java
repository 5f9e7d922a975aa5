// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.measurement;

import dev.brinebook.guard.Guard;
import java.util.Arrays;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;

/**
 * Several answers to one question, and whether they agree.
 *
 * @param weights of each in the mean, summing to 1; all 0 where they contradict each other
 * @param chiSquare of all of them
 * @param probability that answers that agree scatter as much, 0 to 1; 1 for a single one
 * @param leftOut the one without which the others agree, where all of them do not
 */
public record Combination(double[] weights, double chiSquare, double probability, OptionalInt leftOut) {

    /** Below this probability, answers contradict each other. Source: [CP-FIELD-TESTS], the usual level. */
    public static final double LEAST_PROBABILITY = 0.05;

    public Combination {
        weights = weights.clone();
    }

    @Override
    public double[] weights() {
        return weights.clone();
    }

    /** Whether all answers agree. */
    public boolean agrees() {
        return probability >= LEAST_PROBABILITY;
    }

    /** Whether there is a mean: all agree, or all but one. */
    public boolean hasMean() {
        return Arrays.stream(weights).anyMatch(weight -> weight > 0);
    }

    /**
     * Combines answers by their uncertainty.
     *
     * <pre>
     * x̄ = Σ(x_i / u_i²) / Σ(1 / u_i²)
     * χ² = Σ((x_i − x̄) / u_i)²,  with n − 1 degrees of freedom
     * </pre>
     *
     * <p>x_i answers, u_i their standard uncertainties. Where χ² is less likely than {@link #LEAST_PROBABILITY} nothing is averaged; of
     * three or more, the one is left out without which the others agree best, if they do.
     * Validity: answers that do not depend on each other; with readings in common χ² is a little small.
     * Source: [GUM] 5.1.2 and 4.2.4 for the mean; χ² by definition.
     * Deviation: leaving one out is ours.
     */
    public static Combination of(double[] values, double[] uncertainties) {
        Guard.within(values.length, 1, Integer.MAX_VALUE, "number of answers");
        boolean[] used = new boolean[values.length];
        Arrays.fill(used, true);
        double chiSquare = chiSquare(values, uncertainties, used);
        double probability = probability(chiSquare, values.length);
        if (probability >= LEAST_PROBABILITY) {
            return new Combination(weights(uncertainties, used), chiSquare, probability, OptionalInt.empty());
        }
        OptionalInt out = values.length < 3 ? OptionalInt.empty() : IntStream.range(0, values.length).boxed()
                .min((one, other) -> Double.compare(without(one, values, uncertainties), without(other, values, uncertainties)))
                .filter(one -> probability(without(one, values, uncertainties), values.length - 1) >= LEAST_PROBABILITY)
                .map(OptionalInt::of).orElse(OptionalInt.empty());
        if (out.isEmpty()) {
            return new Combination(new double[values.length], chiSquare, probability, out);
        }
        used[out.getAsInt()] = false;
        return new Combination(weights(uncertainties, used), chiSquare, probability, out);
    }

    /** The weighted mean of the answers. */
    public double mean(double[] values) {
        return IntStream.range(0, values.length).mapToDouble(i -> weights[i] * values[i]).sum();
    }

    /**
     * Probability that χ² is as large or larger by chance.
     *
     * @param answers number of answers, one more than the degrees of freedom
     */
    public static double probability(double chiSquare, int answers) {
        return answers < 2 ? 1 : 1 - new ChiSquaredDistribution(answers - 1.0).cumulativeProbability(chiSquare);
    }

    private static double without(int one, double[] values, double[] uncertainties) {
        boolean[] used = new boolean[values.length];
        Arrays.fill(used, true);
        used[one] = false;
        return chiSquare(values, uncertainties, used);
    }

    private static double[] weights(double[] uncertainties, boolean[] used) {
        double[] weights = IntStream.range(0, used.length).mapToDouble(i -> used[i] ? 1 / (uncertainties[i] * uncertainties[i]) : 0)
                .toArray();
        double sum = Arrays.stream(weights).sum();
        return Arrays.stream(weights).map(weight -> weight / sum).toArray();
    }

    private static double chiSquare(double[] values, double[] uncertainties, boolean[] used) {
        double[] weights = weights(uncertainties, used);
        double mean = IntStream.range(0, values.length).mapToDouble(i -> weights[i] * values[i]).sum();
        return IntStream.range(0, values.length).filter(i -> used[i]).mapToDouble(i -> (values[i] - mean) / uncertainties[i])
                .map(z -> z * z).sum();
    }
}
