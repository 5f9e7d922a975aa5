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
        @Property(value = "Mean saving seen, divided by that.", unit = "times the promise", example = "0.84") BigDecimal factor,
        @Property(value = "Low end of its interval.", unit = "times the promise", example = "0.79") BigDecimal factorLow,
        @Property(value = "High end of its interval.", unit = "times the promise", example = "0.88") BigDecimal factorHigh,
        @Property(value = "Factor on usePerPerson, dailyUse or weeklyUse of the next households with which estimatePayback and assess "
                + "predict what was seen, where a meter replaces a clock.", min = 0,
                optional = "unless every home had a clock before and a meter after", unit = "times the use", example = "1.08")
        BigDecimal useFactor) {

    /**
     * {@code response} is that of the salt to the use, both as logarithms, 0 where it is not that of
     * a meter in place of a clock.
     */
    static FleetFactor of(FleetSavings fleet, double promised, double response) {
        return new FleetFactor(SavedSalt.percent(promised), Rounding.answer(fleet.share() / promised),
                Rounding.answer(fleet.low() / promised), Rounding.answer(fleet.high() / promised), response > 0
                ? Rounding.answer(fleet.useFactor(promised, response)) : null);
    }
}
