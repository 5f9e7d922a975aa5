// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.payback.UncertainWorth.Quantiles;
import java.util.Currency;

@SchemaDescription("Quantiles of an amount over the simulated cases.")
public record MoneyQuantiles(
        @Property("Quantile at 5 %.") Money percentile5,
        @Property("Quantile at 25 %.") Money percentile25,
        @Property("Median.") Money median,
        @Property("Quantile at 75 %.") Money percentile75,
        @Property("Quantile at 95 %.") Money percentile95) {

    static MoneyQuantiles of(Quantiles quantiles, Currency currency) {
        return new MoneyQuantiles(Money.of(quantiles.at(0.05), currency), Money.of(quantiles.at(0.25), currency),
                Money.of(quantiles.at(0.5), currency), Money.of(quantiles.at(0.75), currency),
                Money.of(quantiles.at(0.95), currency));
    }
}
