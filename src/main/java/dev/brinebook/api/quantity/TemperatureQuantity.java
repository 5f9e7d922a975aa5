package dev.brinebook.api.quantity;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.quantity.TemperatureUnit;
import java.math.BigDecimal;

@About("A temperature.")
public record TemperatureQuantity(
        @Property(value = "The number.", required = true, example = "54") BigDecimal value,
        @Property(value = "The unit of the number.", required = true, example = "\"F\"") TemperatureUnit unit)
        implements Quantity<TemperatureUnit> {
}
