package dev.brinebook.api.quantity;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.quantity.FlowUnit;
import dev.brinebook.quantity.Quantity;
import java.math.BigDecimal;

@About("A flow.")
public record FlowQuantity(
        @Property(value = "The number.", required = true, example = "7") BigDecimal value,
        @Property(value = "The unit of the number.", required = true, example = "\"gpm\"") FlowUnit unit)
        implements Quantity<FlowUnit> {
}
