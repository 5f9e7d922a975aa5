// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.payback;

import dev.brinebook.api.From;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.payback.YearlyCost;
import java.util.Currency;

@SchemaDescription("Money per year, by item. Each line is rounded on its own, so the total may differ from the sum by cents. A saving "
        + "is negative if more is paid.")
public record MoneyLines(
        @Property("Salt.") Money salt,
        @Property("Cost of water.") Money water,
        @Property("Cost of waste water.") Money sewer,
        @Property("Cost of service visits.") Money service,
        @From({"salt", "water", "sewer", "service"})
        @Property("Total.") Money total) {

    public static MoneyLines of(YearlyCost cost, Currency currency) {
        return new MoneyLines(Money.of(cost.salt(), currency), Money.of(cost.water(), currency),
                Money.of(cost.sewer(), currency), Money.of(cost.service(), currency), Money.of(cost.total(), currency));
    }
}
