// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api.quantity;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.PressureUnit;
import dev.brinebook.quantity.Quantity;
import java.math.BigDecimal;

@SchemaDescription("A pressure.")
public record PressureQuantity(
        @Property(value = "The number.", required = true, example = "15") BigDecimal value,
        @Property(value = "The unit of the number.", required = true, example = "\"psi\"") PressureUnit unit)
        implements Quantity<PressureUnit> {
}
