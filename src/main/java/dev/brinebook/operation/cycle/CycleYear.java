// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.cycle;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.softener.DosedSoftener;
import java.math.BigDecimal;

@SchemaDescription("Totals of all regenerations per year.")
public record CycleYear(
        @Basis
        @Property(value = "Regenerations, as given.", min = 0, example = "80") BigDecimal regenerations,
        @Basis(formula = "formula.regeneration.regenerationsSaltPerRegeneration", source = "WQP-2009")
        @Property("Salt per year.") MassQuantity salt,
        @Basis(formula = "formula.regeneration.regenerationsWaterPerRegeneration", source = "CP-CYCLE")
        @Property("Water per year.") VolumeQuantity water) {

    /** The year, or null when the request does not ask for it. */
    static CycleYear of(BigDecimal regenerations, DosedSoftener dosed, AnswerUnits units) {
        if (regenerations == null) {
            return null;
        }
        double count = regenerations.doubleValue();
        return new CycleYear(Rounding.answer(count), units.mass(count * dosed.saltGrams() / 1000),
                units.volume(count * dosed.cycle().waterLitres()));
    }
}
