// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.savings.SavingsFactors.Factor;

@SchemaDescription("One cause of the difference between the periods, as they were. The causes add up to the difference.")
public record SavingsCause(
        @Property(value = "The cause: water used, hardness of the raw water, regenerations for the same water, salt of each, or price. "
                + "Where the salt of each is not known it is in count.", example = "\"dose\"") Factor cause,
        @Property("Salt saved a year by it. Below 0 it costs salt.") MassQuantity saltPerYear,
        @Property(value = "Money saved a year by it, for salt.", optional = "if salt has no price") Money moneyPerYear) {
}
