// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.answer.regeneration.Saving;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.model.Model;
import dev.brinebook.payback.YearlyUse;
import dev.brinebook.quantity.Rounding;
import java.math.BigDecimal;

@SchemaDescription("Consumption saved per year after converting. Negative if it uses more.")
public record YearlyDifference(
        @Property(value = "Regenerations.", optional = "when the use of a year is given without them",
                unit = "regenerations a year", example = "26.84")
        BigDecimal regenerations,
        @Property("Salt.") MassQuantity salt,
        @Property("Regeneration water.") VolumeQuantity water,
        @Property(value = "Paid service visits.", unit = "visits a year", example = "0") BigDecimal serviceVisits) {

    /** {@code before} less {@code after}; regenerations only where {@code counted}. */
    public static YearlyDifference of(YearlyUse before, YearlyUse after, boolean counted, AnswerUnits units, Model model) {
        return new YearlyDifference(
                counted ? Rounding.answer(Saving.of(before.regenerationsPerYear(), after.regenerationsPerYear(), model)) : null,
                units.mass(Saving.of(before.saltKilograms(), after.saltKilograms(), model)),
                units.volume(Saving.of(before.waterLitres(), after.waterLitres(), model)),
                Rounding.answer(before.serviceVisits() - after.serviceVisits()));
    }
}
