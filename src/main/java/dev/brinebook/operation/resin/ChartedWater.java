// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.quantity.AtomicWeights;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.resin.FeedWater;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

@SchemaDescription("Ions of the water, as used by the column.")
public record ChartedWater(
        @Property("Hardness from calcium and magnesium, without iron and manganese.") HardnessQuantity hardness,
        @Property(value = "Share of calcium in the hardness, by equivalents.", optional = "when there is no hardness", min = 0,
                max = 100, unit = "%", example = "66.6667") BigDecimal calciumPercent,
        @Property("Sodium, as tested or as assumed.") ConcentrationQuantity sodium,
        @Property("Potassium, as tested. 0 if it was not tested.") ConcentrationQuantity potassium) {

    static ChartedWater of(FeedWater feed, AnswerUnits units, Explanation explanation) {
        explanation.because("/water/hardness", Message.of("formula.resin.calciumMagnesiumWaterTest"),
                "CIAAW");
        explanation.because("/water/calciumPercent", Message.of("formula.resin.calciumWaterTestOr"), "CIAAW");
        explanation.because("/water/potassium", Message.of("formula.resin.waterTestOrNone"), "CIAAW");
        explanation.because("/water/sodium", Message.of("formula.resin.of2299MgPer"), "CIAAW");
        double hardness = feed.hardnessEquivalentsPerLitre();
        return new ChartedWater(units.hardness(feed.hardnessMgPerL()),
                hardness > 0 ? Rounding.answer(100 * feed.calciumEquivalentsPerLitre() / hardness) : null,
                units.concentration(1000 * AtomicWeights.SODIUM * feed.sodiumEquivalentsPerLitre()),
                units.concentration(1000 * AtomicWeights.POTASSIUM * feed.potassiumEquivalentsPerLitre()));
    }
}
