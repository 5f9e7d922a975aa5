// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api.quantity;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.ConcentrationUnit;
import dev.brinebook.quantity.Quantity;
import java.math.BigDecimal;

@SchemaDescription("A concentration of a dissolved substance.")
public record ConcentrationQuantity(
        @Property(value = "The number.", required = true, example = "0.4") BigDecimal value,
        @Property(value = "The unit of the number.", required = true, example = "\"mg/L\"") ConcentrationUnit unit)
        implements Quantity<ConcentrationUnit> {
}
