// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import dev.brinebook.household.PeakFlow.Fixtures;
import dev.brinebook.quantity.Exact;
import java.util.Arrays;
import java.util.List;

/**
 * Probability distribution of the total flow of fixtures that run independently of each other.
 *
 * <p>Not for large buildings: the work grows with the square of the fixtures, and the normal fit of {@link PeakFlow} is off
 * by some 5 % there, against 11 % with ten fixtures.
 */
public final class FlowDistribution {

    /** Most fixtures that are tried in every combination. */
    public static final int MAX_FIXTURES = 200;
    /** Steps of flow: flows given in gpm mostly fall on the first, those given in litres on the second. */
    private static final double[] STEPS_LITRES_PER_MINUTE = {0.05 * Exact.US_GALLON_LITRES, 0.1};
    /** Flows less likely than this at the upper end are left off: together they are far below the last digit of a double. */
    private static final double NEVER = 1e-40;
    /** Slack of a cumulative probability for the rounding of its sum. */
    private static final double SUM_ROUNDING = 1e-12;

    private final double stepLitresPerMinute;
    private final double[] probability;

    private FlowDistribution(double stepLitresPerMinute, double[] probability) {
        this.stepLitresPerMinute = stepLitresPerMinute;
        this.probability = probability;
    }

    /** Whether {@code fixtures} are few enough. */
    public static boolean takes(List<Fixtures> fixtures) {
        return fixtures.stream().mapToInt(Fixtures::count).sum() <= MAX_FIXTURES;
    }

    /**
     * The distribution of the flow of {@code fixtures}.
     *
     * <pre>
     * P(i) = (1 - p) P(i) + p P(i - q / h), for each fixture in turn, from P(0) = 1
     * </pre>
     *
     * <p>P(i) probability of the flow i h; p busy probability; q flow, L/min; h step, L/min: of 0.05 gpm and 0.1 L/min the one
     * that the flows lie nearer to.
     * Validity: up to {@value #MAX_FIXTURES} fixtures.
     * Source: [BUCHBERGER-2017] exact sum of independent binomial draws, convolved.
     * Deviation: a flow off the step is rounded to the nearest, so that the result is off by at most half a step for each
     * fixture that runs.
     */
    public static FlowDistribution of(List<Fixtures> fixtures) {
        Guard.within(fixtures.stream().mapToInt(Fixtures::count).sum(), 0, MAX_FIXTURES, "fixtures");
        double step = offStep(fixtures, STEPS_LITRES_PER_MINUTE[1]) < offStep(fixtures, STEPS_LITRES_PER_MINUTE[0])
                ? STEPS_LITRES_PER_MINUTE[1] : STEPS_LITRES_PER_MINUTE[0];
        double[] probability = new double[1 + fixtures.stream().mapToInt(f -> f.count() * steps(f, step)).sum()];
        probability[0] = 1;
        int top = 0;
        for (Fixtures f : fixtures) {
            for (int n = 0; n < f.count(); n++) {
                top = add(probability, top, steps(f, step), f.busyProbability());
            }
        }
        return new FlowDistribution(step, Arrays.copyOf(probability, top + 1));
    }

    /** One more fixture; the last flow that may occur. */
    private static int add(double[] probability, int top, int steps, double busy) {
        for (int i = top + steps; i >= 0; i--) {
            probability[i] = (1 - busy) * probability[i] + (i >= steps ? busy * probability[i - steps] : 0);
        }
        int last = top + steps;
        while (last > 0 && probability[last] < NEVER) {
            probability[last--] = 0;
        }
        return last;
    }

    private static int steps(Fixtures f, double step) {
        return (int) Math.round(f.litresPerMinute() / step);
    }

    private static double offStep(List<Fixtures> fixtures, double step) {
        return fixtures.stream().mapToDouble(f -> f.count() * Math.abs(f.litresPerMinute() - steps(f, step) * step)).sum();
    }

    public double stepLitresPerMinute() {
        return stepLitresPerMinute;
    }

    /** Probability that no fixture runs. */
    public double idleProbability() {
        return probability[0];
    }

    /** Sum of all probabilities, which is 1 but for rounding. */
    double total() {
        return sumFrom(0);
    }

    public double meanLitresPerMinute() {
        double mean = 0;
        for (int i = 1; i < probability.length; i++) {
            mean += i * probability[i];
        }
        return mean * stepLitresPerMinute;
    }

    /**
     * Variance of the flow.
     *
     * <pre>s2 = sum of P(i) (i h - mu)^2,   mu = sum of P(i) i h</pre>
     *
     * <p>s2 variance, (L/min)^2; P(i) probability of the flow i h; h step, L/min; mu {@link #meanLitresPerMinute}.
     * Validity: every distribution.
     * Source: variance, by definition.
     * Deviation: none.
     */
    public double variance() {
        double mean = meanLitresPerMinute();
        double variance = 0;
        for (int i = 0; i < probability.length; i++) {
            double deviation = i * stepLitresPerMinute - mean;
            variance += deviation * deviation * probability[i];
        }
        return variance;
    }

    /**
     * Percentile of the flow over all moments of the busy hour.
     *
     * <pre>Q = least i h for which P(0) + … + P(i) ≥ percentile</pre>
     *
     * <p>Q flow, L/min; P(i) probability of the flow i h; h step, L/min.
     * Validity: percentile from 0 to 1.
     * Source: percentile of a discrete distribution, by definition.
     * Deviation: sums may miss the percentile by 1e-12, for their rounding.
     */
    public double percentileLitresPerMinute(double percentile) {
        return percentileFrom(0, percentile);
    }

    /**
     * Percentile of the flow over the moments of the busy hour in which water runs; 0 if it never runs.
     *
     * <pre>Q = least i h for which (P(1) + … + P(i)) / (1 - P(0)) ≥ percentile</pre>
     *
     * <p>Symbols as in {@link #percentileLitresPerMinute}.
     * Validity: percentile from 0 to 1.
     * Source: percentile of a zero-truncated distribution, by definition.
     * Deviation: sums may miss the percentile by 1e-12, for their rounding.
     */
    public double busyPercentileLitresPerMinute(double percentile) {
        return probability.length == 1 ? 0 : percentileFrom(1, percentile);
    }

    private double percentileFrom(int first, double percentile) {
        Guard.within(percentile, 0, 1, "percentile");
        double wanted = (percentile - SUM_ROUNDING) * sumFrom(first);
        double sum = 0;
        for (int i = first; i < probability.length; i++) {
            sum += probability[i];
            if (sum >= wanted) {
                return i * stepLitresPerMinute;
            }
        }
        return (probability.length - 1) * stepLitresPerMinute;
    }

    private double sumFrom(int first) {
        double sum = 0;
        for (int i = first; i < probability.length; i++) {
            sum += probability[i];
        }
        return sum;
    }
}
