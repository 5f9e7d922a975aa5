package dev.brinebook.answer.water;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.quantity.MassUnit;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.water.AddedSalt;
import dev.brinebook.water.SoftenedWater;
import dev.brinebook.wording.Message;

@About("What softening adds to the water.")
public record SoftenedWaterAnswer(
        @Property("Sodium added; 0 with potassium chloride.") ConcentrationQuantity addedSodium,
        @Property("Potassium added; 0 with sodium chloride.") ConcentrationQuantity addedPotassium,
        @Property(value = "Sodium of the raw water and added together.", optional = "when the raw sodium is unknown")
        ConcentrationQuantity totalSodium,
        @Property("Sodium added to a glass of 250 mL.") MassQuantity addedSodiumPerGlass) {

    /** The water in the units of the answer, with its basis told below {@code pointer}. */
    public static SoftenedWaterAnswer of(SoftenedWater water, AnswerUnits units, String pointer, Explanation explanation) {
        explanation.because(pointer + "/addedSodium", Message.of("0.4594 mg of sodium for each mg/L of hardness removed,"
                + " with iron and manganese at their chemical equivalents"), "CIAAW");
        explanation.because(pointer + "/addedPotassium", Message.of("0.7813 mg of potassium for each mg/L of hardness"
                + " removed, when that is the salt"), "CIAAW");
        if (water.rawSodiumMgPerL().isPresent()) {
            explanation.because(pointer + "/totalSodium", Message.of("sodium of the raw water plus the sodium added"), "CIAAW");
        }
        explanation.because(pointer + "/addedSodiumPerGlass", Message.of("the sodium added times a quarter of a litre"),
                "CIAAW");
        return new SoftenedWaterAnswer(units.concentration(water.addedSodiumMgPerL()),
                units.concentration(water.addedPotassiumMgPerL()),
                water.rawSodiumMgPerL().isPresent() ? units.concentration(water.totalSodiumMgPerL()) : null,
                new MassQuantity(Rounding.answer(water.addedSodiumMgPerL() * AddedSalt.GLASS_LITRES / 1000), MassUnit.GRAM));
    }
}
