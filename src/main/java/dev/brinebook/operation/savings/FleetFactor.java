// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.savings.FleetSavings;
import java.math.BigDecimal;

@SchemaDescription("The promises against what was seen. Multiply the next promise by the factor.")
public record FleetFactor(
        @Property(value = "Mean promise of the homes pooled.", min = 0, unit = "%", example = "30") BigDecimal promisedPercent,
        @Property(value = "Mean saving seen, divided by that.", example = "0.84") BigDecimal factor,
        @Property(value = "Low end of its interval.", example = "0.79") BigDecimal factorLow,
        @Property(value = "High end of its interval.", example = "0.88") BigDecimal factorHigh) {

    static FleetFactor of(FleetSavings fleet, double promised) {
        return new FleetFactor(SavedSalt.percent(promised), Rounding.answer(fleet.share() / promised),
                Rounding.answer(fleet.low() / promised), Rounding.answer(fleet.high() / promised));
    }
}
