package dev.brinebook.api.quantity;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.Quantity;
import java.math.BigDecimal;

@About("A hardness, counted as calcium carbonate.")
public record HardnessQuantity(
        @Property(value = "The number.", required = true, example = "18.5") BigDecimal value,
        @Property(value = "The unit of the number.", required = true, example = "\"gpg\"") HardnessUnit unit)
        implements Quantity<HardnessUnit> {
}
