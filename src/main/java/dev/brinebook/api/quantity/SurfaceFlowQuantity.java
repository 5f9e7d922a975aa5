package dev.brinebook.api.quantity;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.quantity.SurfaceFlowUnit;
import java.math.BigDecimal;

@About("Flow per cross-section of the tank.")
public record SurfaceFlowQuantity(
        @Property(value = "The number.", required = true, example = "7") BigDecimal value,
        @Property(value = "The unit of the number.", required = true, example = "\"gpm/ft2\"") SurfaceFlowUnit unit)
        implements Quantity<SurfaceFlowUnit> {
}
