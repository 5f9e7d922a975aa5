// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api.quantity;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.quantity.VolumeUnit;
import java.math.BigDecimal;

@SchemaDescription("A volume.")
public record VolumeQuantity(
        @Property(value = "The number.", required = true, example = "240") BigDecimal value,
        @Property(value = "The unit of the number.", required = true, example = "\"gal\"") VolumeUnit unit)
        implements Quantity<VolumeUnit> {
}
