// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api.quantity;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.quantity.SaltDoseUnit;
import java.math.BigDecimal;

@SchemaDescription("Salt per volume of resin and regeneration.")
public record SaltDoseQuantity(
        @Property(value = "The number.", required = true, example = "8") BigDecimal value,
        @Property(value = "The unit of the number.", required = true, example = "\"lb/ft3\"") SaltDoseUnit unit)
        implements Quantity<SaltDoseUnit> {
}
