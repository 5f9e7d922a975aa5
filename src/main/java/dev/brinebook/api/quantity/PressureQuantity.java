package dev.brinebook.api.quantity;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.quantity.PressureUnit;
import dev.brinebook.quantity.Quantity;
import java.math.BigDecimal;

@About("A pressure.")
public record PressureQuantity(
        @Property(value = "The number.", required = true, example = "15") BigDecimal value,
        @Property(value = "The unit of the number.", required = true, example = "\"psi\"") PressureUnit unit)
        implements Quantity<PressureUnit> {
}
