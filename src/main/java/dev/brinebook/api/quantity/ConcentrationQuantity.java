package dev.brinebook.api.quantity;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.quantity.ConcentrationUnit;
import dev.brinebook.quantity.Quantity;
import java.math.BigDecimal;

@About("A concentration of a dissolved substance.")
public record ConcentrationQuantity(
        @Property(value = "The number.", required = true, example = "0.4") BigDecimal value,
        @Property(value = "The unit of the number.", required = true, example = "\"mg/L\"") ConcentrationUnit unit)
        implements Quantity<ConcentrationUnit> {
}
