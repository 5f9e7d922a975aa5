// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api.quantity;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.quantity.SurfaceFlowUnit;
import java.math.BigDecimal;

@SchemaDescription("Flow per cross-section of the tank.")
public record SurfaceFlowQuantity(
        @Property(value = "The number.", required = true, example = "7") BigDecimal value,
        @Property(value = "The unit of the number.", required = true, example = "\"gpm/ft2\"") SurfaceFlowUnit unit)
        implements Quantity<SurfaceFlowUnit> {
}
