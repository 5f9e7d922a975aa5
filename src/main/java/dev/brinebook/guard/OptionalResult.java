// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.guard;

import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;

/**
 * A number that may honestly not exist, with the reason when it does not: a payback where nothing is saved, a rate of
 * return of flows that never change sign.
 *
 * <p>Not for a missing input: that is a violation at the edge.
 */
public final class OptionalResult {

    private final double value;
    private final NoResultReason reason;

    private OptionalResult(double value, NoResultReason reason) {
        this.value = value;
        this.reason = reason;
    }

    /** The number {@code value}, which must be finite. */
    public static OptionalResult of(double value) {
        return new OptionalResult(Guard.finite(value, "value"), null);
    }

    /** No number, because of {@code reason}. */
    public static OptionalResult none(NoResultReason reason) {
        return new OptionalResult(Double.NaN, Objects.requireNonNull(reason, "reason"));
    }

    public boolean exists() {
        return reason == null;
    }

    /**
     * The number.
     *
     * @throws IllegalStateException when there is none, naming the reason
     */
    public double value() {
        if (reason != null) {
            throw new IllegalStateException("no number: " + reason);
        }
        return value;
    }

    /**
     * Why there is no number.
     *
     * @throws IllegalStateException when there is one
     */
    public NoResultReason reason() {
        if (reason == null) {
            throw new IllegalStateException("the number exists: " + value);
        }
        return reason;
    }

    /** The number as the library's optional. */
    public OptionalDouble asOptional() {
        return reason == null ? OptionalDouble.of(value) : OptionalDouble.empty();
    }

    /** The figure with {@code change} applied to its number, or the same reason. */
    public OptionalResult map(DoubleUnaryOperator change) {
        return reason == null ? of(change.applyAsDouble(value)) : this;
    }

    @Override
    public String toString() {
        return reason == null ? Double.toString(value) : "none: " + reason;
    }
}
