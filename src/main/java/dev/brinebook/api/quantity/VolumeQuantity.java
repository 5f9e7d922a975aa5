package dev.brinebook.api.quantity;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.quantity.VolumeUnit;
import java.math.BigDecimal;

@About("A volume.")
public record VolumeQuantity(
        @Property(value = "The number.", required = true, example = "240") BigDecimal value,
        @Property(value = "The unit of the number.", required = true, example = "\"gal\"") VolumeUnit unit)
        implements Quantity<VolumeUnit> {
}
