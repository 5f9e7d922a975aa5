package dev.brinebook.api;

import dev.brinebook.quantity.Quantity;
import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers inside sentences. */
public final class Text {

    private static final MathContext SHORT = new MathContext(4);

    private Text() {
    }

    /** A number to four significant digits, plain. */
    public static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).round(SHORT).stripTrailingZeros();
        return (rounded.scale() < 0 ? rounded.setScale(0) : rounded).toPlainString();
    }

    /** A quantity to four significant digits with its unit. */
    public static String of(Quantity<?> quantity) {
        return number(quantity.value().doubleValue()) + " " + quantity.unit().symbol();
    }
}
