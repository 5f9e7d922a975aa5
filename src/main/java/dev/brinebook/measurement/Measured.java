// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.measurement;

import dev.brinebook.guard.Guard;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;

/**
 * A quantity calculated from readings, in its base unit, with its uncertainty found in two ways.
 *
 * @param <K> the names of the readings
 * @param value of the readings as they are
 * @param standardUncertainty by propagation, above 0
 * @param contributions change of the value by one standard uncertainty of each reading that it rests on
 * @param simulated the same by drawing the readings at random
 */
public record Measured<K extends Enum<K>>(double value, double standardUncertainty, Map<K, Double> contributions,
        Simulated simulated) {

    /** The coverage factor of an expanded uncertainty, about 95 %. Source: [GUM] 6.3.3. */
    public static final double COVERAGE_FACTOR = 2;
    /** How far the two standard uncertainties may differ, as a share, and the two values, in standard uncertainties. */
    public static final double ASSUMED_AGREEMENT_SHARE = 0.1;

    /**
     * What a simulation finds.
     *
     * @param mean of the draws
     * @param standardUncertainty their standard deviation
     * @param low below which 2.5 % of them lie
     * @param high above which 2.5 % of them lie
     */
    public record Simulated(double mean, double standardUncertainty, double low, double high) {

        /** Half of the interval from low to high. */
        public double halfWidth() {
            return (high - low) / 2;
        }
    }

    public Measured {
        Guard.finite(value, "value");
        Guard.positive(standardUncertainty, "standardUncertainty");
        contributions = Map.copyOf(contributions);
    }

    public double expandedUncertainty() {
        return COVERAGE_FACTOR * standardUncertainty;
    }

    /** Standard uncertainty as a share of the value; infinite for a value of 0. */
    public double relativeUncertainty() {
        return standardUncertainty / Math.abs(value);
    }

    /** Whether propagation and simulation find the same value and the same uncertainty. Source: after [JCGM-101] 8. */
    public boolean agrees() {
        return Math.abs(simulated.standardUncertainty - standardUncertainty) <= ASSUMED_AGREEMENT_SHARE * standardUncertainty
                && Math.abs(simulated.mean - value) <= ASSUMED_AGREEMENT_SHARE * standardUncertainty;
    }

    /** The reading that makes it most uncertain. */
    public Optional<K> largestContribution() {
        return contributions.entrySet().stream().max(Comparator.<Map.Entry<K, Double>>comparingDouble(entry -> Math.abs(entry.getValue()))
                .thenComparing(entry -> -entry.getKey().ordinal())).map(Map.Entry::getKey);
    }

    /** Share of a reading in the variance, 0 to 1. */
    public double varianceShare(K reading) {
        double contribution = contributions.getOrDefault(reading, 0.0);
        return contribution * contribution / (standardUncertainty * standardUncertainty);
    }

    /** How many standard uncertainties lie between this and another quantity that does not depend on it. Source: by definition. */
    public double deviation(double other, double otherUncertainty) {
        return (value - other) / Math.hypot(standardUncertainty, otherUncertainty);
    }
}
