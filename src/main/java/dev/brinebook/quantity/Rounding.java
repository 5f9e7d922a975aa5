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

    private static final MathContext ANSWER = new MathContext(SIGNIFICANT_DIGITS, RoundingMode.HALF_EVEN);

    private Rounding() {
    }

    /** {@code value}, finite, to six significant digits, without trailing zeros. */
    public static BigDecimal answer(double value) {
        BigDecimal rounded = BigDecimal.valueOf(Guard.finite(value, "value")).round(ANSWER).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }

    /** {@code value}, finite, in the minor unit of the currency, such as cents, half to even. */
    public static BigDecimal money(double value, Currency currency) {
        int minorDigits = Math.max(0, currency.getDefaultFractionDigits());
        return BigDecimal.valueOf(Guard.finite(value, "value")).setScale(minorDigits, RoundingMode.HALF_EVEN);
    }
}
