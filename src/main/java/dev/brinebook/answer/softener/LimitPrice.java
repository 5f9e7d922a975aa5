package dev.brinebook.answer.softener;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.softener.DoseChoice;
import java.util.Currency;

@About("What a limit costs a year.")
public record LimitPrice(
        @Property("The limit.") DoseChoice.Limit limit,
        @Property(value = "Whether the settings chosen keep to it. The fewest days between regenerations do not decide.",
                example = "true") Boolean kept,
        @Property("What it costs a year where it is kept; what keeping to it would cost more where it is not.") Money costPerYear) {

    static LimitPrice of(DoseChoice.PricedLimit price, Currency currency) {
        return new LimitPrice(price.limit(), price.kept(), Money.of(price.costPerYear(), currency));
    }
}
