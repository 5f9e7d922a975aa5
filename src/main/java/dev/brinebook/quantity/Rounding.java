package dev.brinebook.quantity;

import dev.brinebook.guard.Guard;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Currency;

/** Rounding of answers, done once, at the edge. Nothing inside rounds. */
public final class Rounding {

    /** Significant digits of every number in an answer that is not money. */
    public static final int SIGNIFICANT_DIGITS = 6;

    /** Digits of a number that is one of many to be added up: a sum of thousands still rounds to the same six. */
    public static final int ADDEND_DIGITS = 10;

    private static final MathContext ANSWER = new MathContext(SIGNIFICANT_DIGITS, RoundingMode.HALF_EVEN);
    private static final MathContext ADDEND = new MathContext(ADDEND_DIGITS, RoundingMode.HALF_EVEN);

    private Rounding() {
    }

    /** {@code value}, finite, to six significant digits, without trailing zeros. */
    public static BigDecimal answer(double value) {
        return rounded(value, ANSWER);
    }

    /** {@code value}, finite, to ten significant digits, without trailing zeros, for rows whose sum is answered too. */
    public static BigDecimal addend(double value) {
        return rounded(value, ADDEND);
    }

    private static BigDecimal rounded(double value, MathContext digits) {
        BigDecimal rounded = BigDecimal.valueOf(Guard.finite(value, "value")).round(digits).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }

    /** {@code value}, finite, in the minor unit of the currency, such as cents, half to even. */
    public static BigDecimal money(double value, Currency currency) {
        int minorDigits = Math.max(0, currency.getDefaultFractionDigits());
        return BigDecimal.valueOf(Guard.finite(value, "value")).setScale(minorDigits, RoundingMode.HALF_EVEN);
    }
}
