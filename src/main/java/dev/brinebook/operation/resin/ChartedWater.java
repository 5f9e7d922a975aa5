package dev.brinebook.operation.resin;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.quantity.AtomicWeights;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.resin.FeedWater;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;

@About("The ions of the water, as the column takes them.")
public record ChartedWater(
        @Property("Hardness of calcium and magnesium; iron and manganese are not counted here.") HardnessQuantity hardness,
        @Property(value = "Part of it that is calcium, by equivalents.", optional = "when there is no hardness", min = 0,
                max = 100, unit = "%", example = "66.6667") BigDecimal calciumPercent,
        @Property("Sodium, as tested or as taken.") ConcentrationQuantity sodium,
        @Property("Potassium, as tested; none where it was not.") ConcentrationQuantity potassium) {

    static ChartedWater of(FeedWater feed, AnswerUnits units, Explanation explanation) {
        explanation.because("/water/hardness", Message.of("calcium and magnesium of the water test, by equivalents"),
                "CIAAW");
        explanation.because("/water/calciumPercent", Message.of("calcium as tested, else two thirds of the hardness"), "CIAAW");
        explanation.because("/water/potassium", Message.of("as tested, else none"), "CIAAW");
        explanation.because("/water/sodium", Message.of("22.99 mg in a milliequivalent: as tested, else what the dissolved"
                + " solids hold beside the hardness as sodium chloride, else 1 meq/L"), "CIAAW");
        double hardness = feed.hardnessEquivalentsPerLitre();
        return new ChartedWater(units.hardness(feed.hardnessMgPerL()),
                hardness > 0 ? Rounding.answer(100 * feed.calciumEquivalentsPerLitre() / hardness) : null,
                units.concentration(1000 * AtomicWeights.SODIUM * feed.sodiumEquivalentsPerLitre()),
                units.concentration(1000 * AtomicWeights.POTASSIUM * feed.potassiumEquivalentsPerLitre()));
    }
}
