// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api.quantity;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.quantity.SaltEfficiencyUnit;
import java.math.BigDecimal;

@SchemaDescription("Hardness removed per salt used.")
public record SaltEfficiencyQuantity(
        @Property(value = "The number.", required = true, example = "3000") BigDecimal value,
        @Property(value = "The unit of the number.", required = true, example = "\"gr/lb\"") SaltEfficiencyUnit unit)
        implements Quantity<SaltEfficiencyUnit> {
}
