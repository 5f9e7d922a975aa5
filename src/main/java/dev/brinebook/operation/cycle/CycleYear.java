// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.cycle;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.softener.DosedSoftener;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

@SchemaDescription("Totals of all regenerations per year.")
public record CycleYear(
        @Property(value = "Regenerations, as given.", min = 0, example = "80") BigDecimal regenerations,
        @Property("Salt per year.") MassQuantity salt,
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

    static void explain(Explanation explanation) {
        explanation.given("/year/regenerations");
        explanation.because("/year/salt", Message.of("formula.regeneration.regenerationsSaltPerRegeneration"), "WQP-2009");
        explanation.because("/year/water", Message.of("formula.regeneration.regenerationsWaterPerRegeneration"), "CP-CYCLE");
    }
}
