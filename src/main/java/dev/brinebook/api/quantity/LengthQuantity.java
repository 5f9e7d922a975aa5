// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api.quantity;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.LengthUnit;
import dev.brinebook.quantity.Quantity;
import java.math.BigDecimal;

@SchemaDescription("A length.")
public record LengthQuantity(
        @Property(value = "The number.", required = true, example = "10") BigDecimal value,
        @Property(value = "The unit of the number.", required = true, example = "\"in\"") LengthUnit unit)
        implements Quantity<LengthUnit> {
}
