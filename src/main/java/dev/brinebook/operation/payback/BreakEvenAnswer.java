package dev.brinebook.operation.payback;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.guard.NoAnswer;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;

@About("Where a way is worth just as much as the baseline, all else as given. Settings are chosen anew along the way, but for"
        + " those that the request fixes.")
public record BreakEvenAnswer(
        @Property(value = "What is changed.", example = "\"dailyUse\"") Of of,
        @Property(value = "Factor on the value told at which it breaks even; days of the clock for clockInterval.",
                optional = "when it never breaks even in the range", min = 0, example = "0.62") BigDecimal at,
        @Property(value = "The value there, with its unit.", optional = "when it never breaks even in the range",
                example = "\"186 gal a day\"") Message value,
        @Property(value = "Put back in, the way is worth zero within this: settings go in steps, and where a step crosses zero"
                + " there is no value of just no worth.", optional = "when it never breaks even in the range") Money within,
        @Property(value = "Least that was looked at, as at is told.", min = 0, example = "0.05") BigDecimal from,
        @Property(value = "Most that was looked at.", min = 0, example = "20") BigDecimal to,
        @Property(value = "Stable code of why there is none.", optional = "when there is one") NoAnswer reason,
        @Property(value = "A sentence for a customer.", example = "\"It pays above 186 gal a day; here it is 300 gal.\"")
        Message sentence) {

    /** What a break-even is asked of. */
    public enum Of {
        HARDNESS, DAILY_USE, SALT_PRICE, FIRST_COST, CLOCK_INTERVAL
    }
}
