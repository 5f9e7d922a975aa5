// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.softener;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.softener.DoseChoice;
import java.util.Currency;

@SchemaDescription("Cost of a limit per year.")
public record LimitPrice(
        @Property("The limit.") DoseChoice.Limit limit,
        @Property(value = "Whether the chosen settings meet it. The target for the fewest days between regenerations does not decide "
                + "the choice.",
                example = "true") Boolean kept,
        @Property("Cost per year of meeting it, if it is met. Otherwise the extra cost per year that meeting it "
                + "would take.") Money costPerYear) {

    static LimitPrice of(DoseChoice.PricedLimit price, Currency currency) {
        return new LimitPrice(price.limit(), price.kept(), Money.of(price.costPerYear(), currency));
    }
}
