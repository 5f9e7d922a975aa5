// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api.quantity;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.quantity.WaterPerCapacityUnit;
import java.math.BigDecimal;

@SchemaDescription("Regeneration water per capacity restored.")
public record WaterPerCapacityQuantity(
        @Property(value = "The number.", required = true, example = "2.4") BigDecimal value,
        @Property(value = "The unit of the number.", required = true, example = "\"gal/kgr\"") WaterPerCapacityUnit unit)
        implements Quantity<WaterPerCapacityUnit> {
}
