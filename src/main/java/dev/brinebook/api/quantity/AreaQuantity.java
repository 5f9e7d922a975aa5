// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api.quantity;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.AreaUnit;
import dev.brinebook.quantity.Quantity;
import java.math.BigDecimal;

@SchemaDescription("An area.")
public record AreaQuantity(
        @Property(value = "The number.", required = true, example = "0.545") BigDecimal value,
        @Property(value = "The unit of the number.", required = true, example = "\"ft2\"") AreaUnit unit)
        implements Quantity<AreaUnit> {
}
