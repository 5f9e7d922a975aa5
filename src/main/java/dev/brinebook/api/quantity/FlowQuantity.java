// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api.quantity;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.FlowUnit;
import dev.brinebook.quantity.Quantity;
import java.math.BigDecimal;

@SchemaDescription("A flow.")
public record FlowQuantity(
        @Property(value = "The number.", required = true, example = "7") BigDecimal value,
        @Property(value = "The unit of the number.", required = true, example = "\"gpm\"") FlowUnit unit)
        implements Quantity<FlowUnit> {
}
