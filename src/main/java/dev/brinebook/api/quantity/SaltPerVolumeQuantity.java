// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api.quantity;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.quantity.SaltPerVolumeUnit;
import java.math.BigDecimal;

@SchemaDescription("Salt per volume of water or brine.")
public record SaltPerVolumeQuantity(
        @Property(value = "The number.", required = true, example = "2.99") BigDecimal value,
        @Property(value = "The unit of the number.", required = true, example = "\"lb/gal\"") SaltPerVolumeUnit unit)
        implements Quantity<SaltPerVolumeUnit> {
}
