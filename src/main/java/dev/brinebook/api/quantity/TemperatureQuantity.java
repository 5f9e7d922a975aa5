// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api.quantity;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.quantity.TemperatureUnit;
import java.math.BigDecimal;

@SchemaDescription("A temperature.")
public record TemperatureQuantity(
        @Property(value = "The number.", required = true, example = "54") BigDecimal value,
        @Property(value = "The unit of the number.", required = true, example = "\"F\"") TemperatureUnit unit)
        implements Quantity<TemperatureUnit> {
}
