// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.guard;

/**
 * Argument checks of the domain, written in positive form so that a NaN is refused like any other value
 * outside the range.
 *
 * <p>A refusal names the argument, the bound and the value. One that reaches a caller over HTTP is a fault of
 * ours: the edge validates first, against the same limits.
 */
public final class Guard {

    /**
     * Relative slack of a closed range of numbers, so that a bound that came by way of another unit is not refused by its
     * last bit.
     */
    public static final double ROUNDING = 1e-9;

    private Guard() {
    }

    /** {@code value} if it is a finite number. */
    public static double finite(double value, String name) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be a finite number, was " + value);
        }
        return value;
    }

    /** {@code value} if it is finite and above zero. */
    public static double positive(double value, String name) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " must be above 0, was " + value);
        }
        return value;
    }

    /** {@code value} if it is finite and zero or above. */
    public static double notNegative(double value, String name) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(name + " must be 0 or above, was " + value);
        }
        return value;
    }

    /** Whether {@code value} lies in the closed range, give or take {@link #ROUNDING}; a NaN does not. */
    public static boolean isWithin(double value, double min, double max) {
        return value >= min - ROUNDING * Math.abs(min) && value <= max + ROUNDING * Math.abs(max);
    }

    /** {@code value} if it lies in the closed range, give or take {@link #ROUNDING}. */
    public static double within(double value, double min, double max, String name) {
        if (!isWithin(value, min, max)) {
            throw new IllegalArgumentException(name + " must be from " + min + " to " + max + ", was " + value);
        }
        return value;
    }

    /** {@code value} if it lies in the closed range. */
    public static int within(int value, int min, int max, String name) {
        if (!(value >= min && value <= max)) {
            throw new IllegalArgumentException(name + " must be from " + min + " to " + max + ", was " + value);
        }
        return value;
    }
}
