package dev.brinebook.regeneration.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.VolumeUnit;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.quantity.api.FlowQuantity;
import dev.brinebook.quantity.api.MassQuantity;
import dev.brinebook.quantity.api.VolumeQuantity;
import dev.brinebook.regeneration.Brine;
import dev.brinebook.regeneration.CycleDesign;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.resin.Salt;
import java.math.BigDecimal;

@About("The refill of the brine tank, by water: its minutes decide how much salt the next regeneration gets.")
public record RefillSetting(
        @Property("Water that dissolves the salt of one regeneration.") VolumeQuantity water,
        @Property("Flow of the refill.") FlowQuantity flow,
        @Property(value = "Minutes, not rounded.", example = "6.69", unit = "minutes") BigDecimal minutes,
        @Property(value = "Minutes to set where tenths can be set.", example = "6.7", unit = "minutes")
        BigDecimal tenthMinutes,
        @Property("Salt that those minutes put.") MassQuantity saltInTenthMinutes,
        @Property(value = "Minutes to set where only whole ones can be set.", min = 1, example = "7", unit = "minutes")
        Integer wholeMinutes,
        @Property("Salt that those minutes put.") MassQuantity saltInWholeMinutes,
        @Property("Salt that one gallon (one litre in metric units) of water dissolves.") MassQuantity saltPerVolumeOfWater,
        @Property("Salt that one gallon (one litre in metric units) of saturated brine holds.")
        MassQuantity saltPerVolumeOfBrine,
        @Property(value = "Why the refill is set by water and not by brine.", example = "\"Each US gallon of water dissolves"
                + " 2.99 lb of salt; a US gallon of brine holds only 2.65 lb.\"") String note) {

    /** The refill step of a cycle with this salt and brine tank. */
    public static RefillSetting of(CycleStep refill, Salt salt, double brineTankCelsius, AnswerUnits units) {
        VolumeUnit unit = units.volume(1).unit();
        double waterKilograms = unit.toBase(1) * CycleDesign.saltGramsPerLitreWater(salt, brineTankCelsius) / 1000;
        double brineKilograms = unit.toBase(1) * Brine.saltKilogramsPerLitreBrine(salt, brineTankCelsius);
        return new RefillSetting(units.volume(refill.lineWaterLitres()), units.flow(refill.flowLitresPerMinute()),
                Rounding.answer(refill.minutes()), Rounding.answer(refill.nearestTenthMinutes()),
                salt(refill, refill.nearestTenthMinutes(), salt, brineTankCelsius, units), refill.wholeMinutes(),
                salt(refill, refill.wholeMinutes(), salt, brineTankCelsius, units), units.mass(waterKilograms),
                units.mass(brineKilograms), note(units, waterKilograms, brineKilograms));
    }

    private static MassQuantity salt(CycleStep refill, double minutes, Salt salt, double brineTankCelsius,
            AnswerUnits units) {
        return units.mass(CycleDesign.saltGramsOfRefill(salt, minutes * refill.flowLitresPerMinute(), brineTankCelsius)
                / 1000);
    }

    private static String note(AnswerUnits units, double waterKilograms, double brineKilograms) {
        String volume = units.volume(1).unit() == VolumeUnit.US_GALLON ? "US gallon" : "litre";
        return "Each " + volume + " of water dissolves " + Text.of(units.mass(waterKilograms)) + " of salt; a " + volume
                + " of brine holds only " + Text.of(units.mass(brineKilograms)) + ", so a refill set by brine puts "
                + Math.round(100 * (waterKilograms / brineKilograms - 1)) + " % too much salt.";
    }

    /** Says why the numbers of the refill at {@code pointer} are what they are. */
    public static void explain(String pointer, Salt salt, Explanation explanation) {
        explanation.because(pointer + "/water", "salt over the salt that a litre of water dissolves at the temperature of"
                + " the brine tank", Brine.sourceKey(salt));
        explanation.because(pointer + "/minutes", "water over the flow of the refill", "CP-CYCLE");
    }
}
