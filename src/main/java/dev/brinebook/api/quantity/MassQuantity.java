// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api.quantity;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.MassUnit;
import dev.brinebook.quantity.Quantity;
import java.math.BigDecimal;

@SchemaDescription("A mass.")
public record MassQuantity(
        @Property(value = "The number.", required = true, example = "40") BigDecimal value,
        @Property(value = "The unit of the number.", required = true, example = "\"lb\"") MassUnit unit)
        implements Quantity<MassUnit> {
}
