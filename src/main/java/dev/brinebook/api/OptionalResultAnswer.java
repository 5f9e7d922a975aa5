// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api;

import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

@SchemaDescription("A number that may not exist: has either `value`, or `reason` and `why`.")
public record OptionalResultAnswer(
        @Property(value = "The number.", unit = "the unit that the property is named with",
                optional = "when it does not exist", example = "3.084") BigDecimal value,
        @Property(value = "Stable code of the reason why there is no number.", optional = "when value is present") NoResultReason reason,
        @Property(value = "The reason as a sentence.", optional = "when value is present",
                example = "\"It saves nothing, so there is no payback.\"") Message why) {

    /** The figure times {@code factor}, such as 100 for a share given in percent. */
    public static OptionalResultAnswer of(OptionalResult figure, double factor) {
        return figure.exists() ? new OptionalResultAnswer(Rounding.answer(factor * figure.value()), null, null)
                : new OptionalResultAnswer(null, figure.reason(), Message.of(figure.reason()));
    }
}
