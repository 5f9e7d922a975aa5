package dev.brinebook.operation.payback;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.payback.UncertainWorth.Quantiles;
import java.util.Currency;

@About("Amounts that a share of the draws stay below.")
public record MoneyQuantiles(
        @Property("5 % stay below it.") Money percentile5,
        @Property("25 % stay below it.") Money percentile25,
        @Property("Half stay below it.") Money median,
        @Property("75 % stay below it.") Money percentile75,
        @Property("95 % stay below it.") Money percentile95) {

    static MoneyQuantiles of(Quantiles quantiles, Currency currency) {
        return new MoneyQuantiles(Money.of(quantiles.at(0.05), currency), Money.of(quantiles.at(0.25), currency),
                Money.of(quantiles.at(0.5), currency), Money.of(quantiles.at(0.75), currency),
                Money.of(quantiles.at(0.95), currency));
    }
}
