// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api.quantity;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.BedFlowUnit;
import dev.brinebook.quantity.Quantity;
import java.math.BigDecimal;

@SchemaDescription("Flow per volume of resin.")
public record BedFlowQuantity(
        @Property(value = "The number.", required = true, example = "5") BigDecimal value,
        @Property(value = "The unit of the number.", required = true, example = "\"gpm/ft3\"") BedFlowUnit unit)
        implements Quantity<BedFlowUnit> {
}
