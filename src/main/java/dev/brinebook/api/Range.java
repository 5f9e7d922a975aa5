// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.text.Measure;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Supplier;

/**
 * The range that a number must lie in, in the base unit.
 *
 * @param min lowest number
 * @param max highest number
 * @param aboveMin whether {@code min} itself is refused
 */
record Range(double min, double max, boolean aboveMin) {

    private static final int READ_DIGITS = 4;

    /** As {@link Guard#within}, so that what passes here passes there. */
    boolean holds(double number) {
        return Guard.isWithin(number, min, max) && !(aboveMin && number <= min);
    }

    /** Exactly: a whole number was not converted from another unit. */
    boolean holdsWhole(long number) {
        return number >= min && number <= max && !(aboveMin && number <= min);
    }

    /** The range in the unit of the request, whose symbol may be empty. Every bound it states is accepted when it is sent. */
    Message inWords(DoubleUnaryOperator toBase, DoubleUnaryOperator fromBase, String unit) {
        return inWords(() -> aboveMin ? Rounding.answer(fromBase.applyAsDouble(min)) : bound(min, 1, toBase, fromBase),
                () -> bound(max, -1, toBase, fromBase), unit);
    }

    /** The range of a whole number, to its last digit. */
    Message inWholeNumbers(String unit) {
        return inWords(() -> BigDecimal.valueOf((long) min), () -> BigDecimal.valueOf((long) max), unit);
    }

    private Message inWords(Supplier<BigDecimal> lowest, Supplier<BigDecimal> highest, String unit) {
        if (min == Double.NEGATIVE_INFINITY) {
            return Message.of("range.most", withUnit(highest.get(), unit));
        }
        BigDecimal low = lowest.get();
        if (max == Double.POSITIVE_INFINITY) {
            Object least = withUnit(low, unit);
            return aboveMin ? Message.of("range.above", least) : Message.of("range.least", least);
        }
        Object high = withUnit(highest.get(), unit);
        return aboveMin ? Message.of("range.aboveUp", low, high) : Message.of("range.fromTo", low, high);
    }

    /** The number as a slot of a text takes it. */
    static Object withUnit(BigDecimal number, String unit) {
        return unit.isEmpty() ? number : new Measure(number, unit);
    }

    /**
     * A bound rounded for print, one step of its last digit further in where the rounding left the range; a decimal of another unit
     * inwards to what people read.
     */
    private BigDecimal bound(double base, int inwards, DoubleUnaryOperator toBase, DoubleUnaryOperator fromBase) {
        BigDecimal rounded = Rounding.answer(fromBase.applyAsDouble(base));
        BigDecimal read = rounded.round(new MathContext(READ_DIGITS, inwards > 0 ? RoundingMode.CEILING : RoundingMode.FLOOR));
        if (rounded.scale() > 0 && holds(toBase.applyAsDouble(read.doubleValue()))) {
            return read;
        }
        boolean taken = holds(toBase.applyAsDouble(rounded.doubleValue()));
        return taken ? rounded : rounded.add(BigDecimal.valueOf(inwards).multiply(step(rounded)));
    }

    private static BigDecimal step(BigDecimal rounded) {
        return BigDecimal.ONE.scaleByPowerOfTen(rounded.precision() - rounded.scale() - Rounding.SIGNIFICANT_DIGITS);
    }
}
