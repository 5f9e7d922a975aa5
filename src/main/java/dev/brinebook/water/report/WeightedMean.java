// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import dev.brinebook.guard.Guard;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Several tests of one thing, joined by their uncertainties.
 *
 * <pre>
 * x = Σ w xi / Σ w;  w = 1/ui²;  u = 1/√Σ w;  R = √(Σ ((xi − x)/ui)² / (n − 1));  U = 2 u max(1, R)
 * </pre>
 *
 * <p>xi the tests, ui their standard uncertainties; R ratio of what they scatter to what they should.
 * Validity: independent tests; what they share is added afterwards. Source: [BIRGE-1932] for R, [GUM] annex G for k = 2.
 *
 * @param value the mean
 * @param standardUncertainty u, without R
 * @param ratio R, 0 of a single test
 * @param farthest place in the list of the test that is farthest out, in its own uncertainty
 */
public record WeightedMean(double value, double standardUncertainty, double ratio, int farthest) {

    /** From here on the tests contradict each other and have no common mean. */
    public static final double ASSUMED_CONFLICT_RATIO = 2.5;
    private static final double COVERAGE = 2;

    /** The mean of one test or more, each with an uncertainty above 0. */
    public static WeightedMean of(List<Estimate> tests) {
        double weights = 0;
        double sum = 0;
        for (Estimate test : tests) {
            double weight = 1 / square(Guard.positive(test.standardUncertainty(), "standardUncertainty"));
            weights += weight;
            sum += weight * test.value();
        }
        double mean = sum / Guard.positive(weights, "weights");
        double scatter = tests.stream().mapToDouble(test -> square(deviation(test, mean))).sum();
        double ratio = tests.size() > 1 ? Math.sqrt(scatter / (tests.size() - 1)) : 0;
        int farthest = IntStream.range(0, tests.size()).boxed()
                .max(Comparator.comparingDouble(i -> Math.abs(deviation(tests.get(i), mean)))).orElseThrow();
        return new WeightedMean(mean, 1 / Math.sqrt(weights), ratio, farthest);
    }

    private static double deviation(Estimate test, double mean) {
        return (test.value() - mean) / test.standardUncertainty();
    }

    private static double square(double x) {
        return x * x;
    }

    /** Standard uncertainty with the scatter of the tests. */
    public Estimate estimate() {
        return new Estimate(value, standardUncertainty * Math.max(1, ratio));
    }

    /** Expanded uncertainty with the scatter of the tests, k = 2. */
    public double expandedUncertainty() {
        return COVERAGE * estimate().standardUncertainty();
    }

    /** Whether the tests contradict each other, so that one of them should be repeated. */
    public boolean isConflict() {
        return ratio > ASSUMED_CONFLICT_RATIO;
    }

    /** The same with a relative uncertainty that all tests share, such as the size of the drops of one bottle. */
    public Estimate sharing(double relative) {
        return new Estimate(value, StrictMath.hypot(estimate().standardUncertainty(), relative * value));
    }
}
