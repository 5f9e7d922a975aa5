// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

@SchemaDescription("Value of an input at which an option breaks even with the baseline, with all other inputs as given. Settings are "
        + "chosen again for each value, except those fixed by the request.")
public record BreakEvenAnswer(
        @Property(value = "The input varied.", example = "\"dailyUse\"") Of of,
        @Property(value = "Break-even factor on the given value. For clockInterval, the days of the clock.",
                optional = "when it never breaks even in the range", min = 0, example = "0.62") BigDecimal at,
        @Property(value = "Break-even value, with its unit.", optional = "when it never breaks even in the range",
                example = "\"186 gal a day\"") Message value,
        @Property(value = "Accuracy of the break-even value, as a net present value. Settings change in steps, so the result "
                + "can jump past zero.", optional = "when it never breaks even in the range") Money within,
        @Property(value = "Lowest value tried, in the form of at.", min = 0, example = "0.05") BigDecimal from,
        @Property(value = "Highest value tried.", min = 0, example = "20") BigDecimal to,
        @Property(value = "Stable code of the reason.", optional = "when there is one") NoResultReason reason,
        @Property(value = "A sentence for a customer.", example = "\"This option pays above 186 gal of water a day. You use 300 gal.\"")
        Message sentence) {

    /** What a break-even is asked of. */
    public enum Of {
        HARDNESS, DAILY_USE, SALT_PRICE, FIRST_COST, CLOCK_INTERVAL
    }
}
