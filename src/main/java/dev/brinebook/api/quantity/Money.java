// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api.quantity;

import dev.brinebook.api.Amount;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.Currency;

@SchemaDescription("An amount of money.")
public record Money(
        @Property(value = "The amount, a decimal.", required = true, example = "7.5") BigDecimal value,
        @Property(value = "ISO 4217 code of the currency.", required = true, minItems = 3, maxItems = 3,
                example = "\"USD\"") String unit) implements Amount, Checked {

    /** {@code amount} rounded to the minor unit of its currency. */
    public static Money of(double amount, Currency currency) {
        return new Money(Rounding.money(amount, currency), currency.getCurrencyCode());
    }

    /** The amount to its minor unit, with the currency. */
    public Message inWords() {
        return Text.measure(value, unit);
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
            at.add("unit", Code.UNKNOWN_VALUE, Message.of("problem.quantity.mustIso4217Code"));
        }
    }
}
