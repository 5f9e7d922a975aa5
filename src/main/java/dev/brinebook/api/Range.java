package dev.brinebook.api;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
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

    /** As {@link Guard#within}, so that what passes here passes there. */
    boolean holds(double number) {
        return Guard.isWithin(number, min, max) && !(aboveMin && number <= min);
    }

    /** Exactly: a whole number did not come by way of another unit. */
    boolean holdsWhole(long number) {
        return number >= min && number <= max && !(aboveMin && number <= min);
    }

    /** The range in the caller's unit. Every bound it states is accepted when it is sent. */
    Message inWords(DoubleUnaryOperator toBase, DoubleUnaryOperator fromBase) {
        return inWords(() -> aboveMin ? Rounding.answer(fromBase.applyAsDouble(min)) : bound(min, 1, toBase, fromBase),
                () -> bound(max, -1, toBase, fromBase));
    }

    /** The range of a whole number, to its last digit. */
    Message inWholeNumbers() {
        return inWords(() -> BigDecimal.valueOf((long) min), () -> BigDecimal.valueOf((long) max));
    }

    private Message inWords(Supplier<BigDecimal> lowest, Supplier<BigDecimal> highest) {
        if (min == Double.NEGATIVE_INFINITY) {
            return Message.of("{0} or below", highest.get());
        }
        BigDecimal low = lowest.get();
        if (max == Double.POSITIVE_INFINITY) {
            return aboveMin ? Message.of("above {0}", low) : Message.of("{0} or above", low);
        }
        BigDecimal high = highest.get();
        return aboveMin ? Message.of("above {0} to {1}", low, high) : Message.of("from {0} to {1}", low, high);
    }

    /** A bound rounded for print, one step of its last digit further in where the rounding left the range. */
    private BigDecimal bound(double base, int inwards, DoubleUnaryOperator toBase, DoubleUnaryOperator fromBase) {
        BigDecimal told = Rounding.answer(fromBase.applyAsDouble(base));
        boolean taken = holds(toBase.applyAsDouble(told.doubleValue()));
        return taken ? told : told.add(BigDecimal.valueOf(inwards).multiply(step(told)));
    }

    private static BigDecimal step(BigDecimal told) {
        return BigDecimal.ONE.scaleByPowerOfTen(told.precision() - told.scale() - Rounding.SIGNIFICANT_DIGITS);
    }
}
