package dev.brinebook.api;

import dev.brinebook.quantity.Quantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers inside sentences. */
public final class Text {

    private static final MathContext SHORT = new MathContext(4);

    private Text() {
    }

    /** A number to four significant digits, plain. */
    public static BigDecimal number(double value) {
        return Rounding.significant(value, SHORT);
    }

    /** From one quantity to another in the same unit, or the one that both are. */
    public static Message span(Quantity<?> low, Quantity<?> high) {
        return low.equals(high) ? of(low) : Message.of("{0} to {1}", number(low.value().doubleValue()), of(high));
    }

    /** A quantity to four significant digits with its unit. */
    public static Message of(Quantity<?> quantity) {
        return Message.of("{0} {1}", number(quantity.value().doubleValue()), quantity.unit().symbol());
    }
}
