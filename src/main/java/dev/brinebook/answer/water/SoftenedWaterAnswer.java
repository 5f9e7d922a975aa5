// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.water;

import dev.brinebook.api.Basis;
import dev.brinebook.api.From;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.quantity.MassUnit;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.water.AddedSalt;
import dev.brinebook.water.SoftenedWater;

@SchemaDescription("Sodium or potassium added by softening.")
public record SoftenedWaterAnswer(
        @Basis(formula = "formula.water.of04594MgSodium", source = "CIAAW")
        @From("/hardness/real")
        @Property("Sodium added by softening. 0 with potassium chloride.") ConcentrationQuantity addedSodium,
        @Basis(formula = "formula.water.of07813MgPotassium", source = "CIAAW")
        @From("/hardness/real")
        @Property("Potassium added by softening. 0 with sodium chloride.") ConcentrationQuantity addedPotassium,
        @Basis(formula = "formula.water.sodiumRawWaterSodium", source = "CIAAW")
        @From("addedSodium")
        @Property(value = "Total sodium: that of the raw water plus the sodium added.", optional = "when the raw sodium is unknown")
        ConcentrationQuantity totalSodium,
        @Basis(formula = "formula.water.sodiumAddedQuarterLitre", source = "CIAAW")
        @From("addedSodium")
        @Property("Sodium added to a glass of 250 mL.") MassQuantity addedSodiumPerGlass) {

    /** The water in the units of the answer. */
    public static SoftenedWaterAnswer of(SoftenedWater water, AnswerUnits units) {
        return new SoftenedWaterAnswer(units.concentration(water.addedSodiumMgPerL()),
                units.concentration(water.addedPotassiumMgPerL()),
                water.rawSodiumMgPerL().isPresent() ? units.concentration(water.totalSodiumMgPerL()) : null,
                new MassQuantity(Rounding.answer(water.addedSodiumMgPerL() * AddedSalt.GLASS_LITRES / 1000), MassUnit.GRAM));
    }
}
