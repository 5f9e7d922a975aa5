// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.quantity.AtomicWeights;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.resin.FeedWater;
import java.math.BigDecimal;

@SchemaDescription("Ions of the water, as used by the column.")
public record ChartedWater(
        @Basis(formula = "formula.resin.calciumMagnesiumWaterTest", source = "CIAAW")
        @Property("Hardness from calcium and magnesium, without iron and manganese.") HardnessQuantity hardness,
        @Basis(formula = "formula.resin.calciumWaterTestOr", source = "CIAAW")
        @Property(value = "Share of calcium in the hardness, by equivalents.", optional = "when there is no hardness", min = 0,
                max = 100, unit = "%", example = "66.6667") BigDecimal calciumPercent,
        @Basis(formula = "formula.resin.of2299MgPer", source = "CIAAW")
        @Property("Sodium, as tested or as assumed.") ConcentrationQuantity sodium,
        @Basis(formula = "formula.resin.waterTestOrNone", source = "CIAAW")
        @Property("Potassium, as tested. 0 if it was not tested.") ConcentrationQuantity potassium) {

    static ChartedWater of(FeedWater feed, AnswerUnits units) {
        double hardness = feed.hardnessEquivalentsPerLitre();
        return new ChartedWater(units.hardness(feed.hardnessMgPerL()),
                hardness > 0 ? Rounding.answer(100 * feed.calciumEquivalentsPerLitre() / hardness) : null,
                units.concentration(1000 * AtomicWeights.SODIUM * feed.sodiumEquivalentsPerLitre()),
                units.concentration(1000 * AtomicWeights.POTASSIUM * feed.potassiumEquivalentsPerLitre()));
    }
}
