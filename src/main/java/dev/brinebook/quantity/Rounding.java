// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

import dev.brinebook.guard.Guard;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.Optional;

/** Rounding of answers, done once, at the edge. Nothing inside rounds. */
public final class Rounding {

    /** Significant digits of every number in an answer that is not money. */
    public static final int SIGNIFICANT_DIGITS = 6;

    /** Digits of a number that is one of many to be added up: a sum of thousands still rounds to the same six. */
    public static final int ADDEND_DIGITS = 10;

    private static final MathContext ANSWER = new MathContext(SIGNIFICANT_DIGITS, RoundingMode.HALF_EVEN);
    private static final int THOUSANDTH_DECIMALS = 3;
    private static final MathContext ADDEND = new MathContext(ADDEND_DIGITS, RoundingMode.HALF_EVEN);
    /** Each of them exact as a double. */
    private static final double[] POWERS_OF_TEN = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12};
    private static final double HALF = 0.5;
    private static final double TOO_NEAR_HALF = 1e-4;

    private Rounding() {
    }

    /** {@code value}, finite, to six significant digits, without trailing zeros. */
    public static BigDecimal answer(double value) {
        return significant(value, ANSWER);
    }

    /** {@code value}, finite, to ten significant digits, without trailing zeros, for rows whose sum is answered too. */
    public static BigDecimal addend(double value) {
        return significant(value, ADDEND);
    }

    /** {@code value}, finite, rounded to a number of significant digits, without trailing zeros. */
    public static BigDecimal significant(double value, MathContext digits) {
        Guard.finite(value, "value");
        BigDecimal rounded = byScaling(value, digits.getPrecision()).orElseGet(() ->
                BigDecimal.valueOf(value).round(digits)).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }

    /**
     * The same without writing the number in decimals first, which takes most of the time: scaled to a whole number. Nothing
     * where that could go wrong: for numbers out of the usual range, and so near the middle between two, where the mode
     * decides, that the error of the scaling, below one part in 10^15, could decide too.
     */
    private static Optional<BigDecimal> byScaling(double value, int digits) {
        double magnitude = Math.abs(value);
        int decimals = 0;
        while (decimals < POWERS_OF_TEN.length && magnitude * POWERS_OF_TEN[decimals] < POWERS_OF_TEN[digits - 1]) {
            decimals++;
        }
        if (decimals == POWERS_OF_TEN.length || magnitude >= POWERS_OF_TEN[digits]) {
            return Optional.empty();
        }
        double scaled = magnitude * POWERS_OF_TEN[decimals];
        double whole = StrictMath.floor(scaled);
        double rest = scaled - whole;
        if (!(StrictMath.abs(rest - HALF) > TOO_NEAR_HALF)) {
            return Optional.empty();
        }
        long rounded = (long) whole + (rest > HALF ? 1 : 0);
        return Optional.of(BigDecimal.valueOf(value < 0 ? -rounded : rounded, decimals));
    }

    /** As {@link #answer}, in steps of a thousandth: for what is known to some hundredths, such as rare days a year. */
    public static BigDecimal toThousandth(double value) {
        BigDecimal exact = answer(value);
        BigDecimal rounded = exact.setScale(Math.min(exact.scale(), THOUSANDTH_DECIMALS), RoundingMode.HALF_EVEN).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }

    /** {@code value}, finite, in the minor unit of the currency, such as cents, half to even. */
    public static BigDecimal money(double value, Currency currency) {
        int minorDigits = Math.max(0, currency.getDefaultFractionDigits());
        return BigDecimal.valueOf(Guard.finite(value, "value")).setScale(minorDigits, RoundingMode.HALF_EVEN);
    }
}
