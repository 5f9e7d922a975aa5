// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.field;

import dev.brinebook.measurement.Measured;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.DoubleStream;

/** What a technician wants to know of a softener before advice is given. */
public enum FieldQuestion {
    SALT, RESIN, CAPACITY_LEFT, RAW_WATER, DRAIN_FLOW;

    /** Standard uncertainty, as a share, of what nobody measured. */
    public static final double ASSUMED_UNKNOWN_SPREAD = 0.5;

    /** What is known of it; empty where nothing is, or where answers contradict each other. */
    Optional<Measured<ReadingCode>> answer(FieldResults results) {
        return switch (this) {
            case SALT -> results.salt().flatMap(Witnesses::mean);
            case RESIN -> results.resinInTank().flatMap(Witnesses::mean);
            case CAPACITY_LEFT -> results.capacityLeft();
            case RAW_WATER -> results.of(FieldQuantity.RAW_SHARE);
            case DRAIN_FLOW -> results.of(FieldQuantity.DRAIN_FLOW);
        };
    }

    /**
     * How well it is answered: standard uncertainty as a share of the value, or of 1 for what is a share; half the range of answers that
     * contradict each other.
     */
    public double spread(FieldResults results) {
        Optional<Measured<ReadingCode>> answer = answer(results);
        if (answer.isPresent()) {
            boolean share = this == RAW_WATER || this == CAPACITY_LEFT;
            return Math.min(ASSUMED_UNKNOWN_SPREAD, share ? answer.get().standardUncertainty() : answer.get().relativeUncertainty());
        }
        Optional<Witnesses> witnesses = this == SALT ? results.salt() : this == RESIN ? results.resinInTank() : Optional.empty();
        return witnesses.map(several -> Math.min(ASSUMED_UNKNOWN_SPREAD, halfRange(several, results))).orElse(ASSUMED_UNKNOWN_SPREAD);
    }

    private static double halfRange(Witnesses several, FieldResults results) {
        double[] values = several.quantities().stream().mapToDouble(quantity -> results.of(quantity).orElseThrow().value()).toArray();
        DoubleStream sizes = Arrays.stream(values).map(Math::abs);
        return (Arrays.stream(values).max().orElseThrow() - Arrays.stream(values).min().orElseThrow()) / 2
                / sizes.max().orElseThrow();
    }
}
