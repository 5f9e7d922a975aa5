package dev.brinebook.api.quantity;

import dev.brinebook.api.About;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.Currency;

@About("An amount of money. Not for calculation: inside, prices are plain numbers in one currency.")
public record Money(
        @Property(value = "The amount, a decimal.", required = true, example = "7.5") BigDecimal value,
        @Property(value = "ISO 4217 code of the currency.", required = true, minItems = 3, maxItems = 3,
                example = "\"USD\"") String unit) implements Checked {

    /** {@code amount} rounded to the minor unit of its currency. */
    public static Money of(double amount, Currency currency) {
        return new Money(Rounding.money(amount, currency), currency.getCurrencyCode());
    }

    /** The amount to its minor unit, with the currency. */
    public Message inWords() {
        return Message.of("{0} {1}", value, unit);
    }

    public Currency currency() {
        return Currency.getInstance(unit);
    }

    @Override
    public void check(Violations at) {
        if (unit == null || unit.length() != 3) {
            return;
        }
        try {
            Currency.getInstance(unit);
        } catch (IllegalArgumentException unknown) {
            at.add("unit", Code.UNKNOWN_VALUE, Message.of("must be the ISO 4217 code of a currency, such as USD or EUR"));
        }
    }
}
