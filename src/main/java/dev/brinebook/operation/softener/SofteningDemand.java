// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.softener;

import dev.brinebook.answer.water.SoftenedWaterAnswer;
import dev.brinebook.api.Basis;
import dev.brinebook.api.OptionalResultAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.MassQuantity;

@SchemaDescription("Load, sodium or potassium added, and salt of softening.")
public record SofteningDemand(
        @Basis(formula = "formula.softener.meanUseHardnessLeakage", source = "WQP-2009")
        @Property("Hardness load on the resin per mean day, with iron and manganese at their chemical equivalents.")
        CapacityQuantity dailyLoad,
        @Property("Sodium or potassium added to the water.") SoftenedWaterAnswer water,
        @Basis(formula = "formula.softener.capacityHardnessLoadPer", source = "WQP-2009")
        @Property(value = "Days of mean use per full capacity of the softener.", optional = "when no softener is given")
        OptionalResultAnswer daysBetweenRegenerations,
        @Basis(formula = "formula.softener.of365DaysBetweenRegenerations", source = "WQP-2009")
        @Property(value = "Salt per year in proportion to the mean load. Not simulated day by day.",
                optional = "when no softener is given") MassQuantity saltPerYear) {
}
