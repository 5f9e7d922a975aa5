// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api.quantity;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.BedCapacityUnit;
import dev.brinebook.quantity.Quantity;
import java.math.BigDecimal;

@SchemaDescription("Exchange capacity per volume of resin.")
public record BedCapacityQuantity(
        @Property(value = "The number.", required = true, example = "24") BigDecimal value,
        @Property(value = "The unit of the number.", required = true, example = "\"kgr/ft3\"") BedCapacityUnit unit)
        implements Quantity<BedCapacityUnit> {
}
