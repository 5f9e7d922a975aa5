// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api.quantity;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.CapacityUnit;
import dev.brinebook.quantity.Quantity;
import java.math.BigDecimal;

@SchemaDescription("An exchange capacity or a hardness load, as calcium carbonate.")
public record CapacityQuantity(
        @Property(value = "The number.", required = true, example = "24000") BigDecimal value,
        @Property(value = "The unit of the number.", required = true, example = "\"gr\"") CapacityUnit unit)
        implements Quantity<CapacityUnit> {
}
