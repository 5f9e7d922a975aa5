package dev.brinebook.answer.cycle;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.SaltPerVolumeQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.VolumeUnit;
import dev.brinebook.regeneration.Brine;
import dev.brinebook.regeneration.CycleDesign;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.resin.Salt;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.List;

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
        @Property("Salt that a volume of water dissolves.") SaltPerVolumeQuantity saltInWater,
        @Property("Salt that a volume of saturated brine holds.") SaltPerVolumeQuantity saltInBrine,
        @Property("Salt that one litre of water dissolves, in kilograms whatever the units: take saltInWater, which says its unit.")
        MassQuantity saltPerVolumeOfWater,
        @Property("Salt that one litre of saturated brine holds, in kilograms whatever the units: take saltInBrine.")
        MassQuantity saltPerVolumeOfBrine,
        @Property(value = "Why the refill is set by water and not by brine.", example = "\"Each US gallon of water dissolves"
                + " 2.99 lb of salt; a US gallon of brine holds only 2.65 lb.\"") Message note) {

    /** The refill step of a cycle with this salt and brine tank. */
    public static RefillSetting of(CycleStep refill, Salt salt, double brineTankCelsius, AnswerUnits units) {
        double inWater = CycleDesign.saltGramsPerLitreWater(salt, brineTankCelsius) / 1000;
        double inBrine = Brine.saltKilogramsPerLitreBrine(salt, brineTankCelsius);
        return new RefillSetting(units.volume(refill.lineWaterLitres()), units.flow(refill.flowLitresPerMinute()),
                Rounding.answer(refill.minutes()), Rounding.answer(refill.nearestTenthMinutes()),
                salt(refill, refill.nearestTenthMinutes(), salt, brineTankCelsius, units), refill.wholeMinutes(),
                salt(refill, refill.wholeMinutes(), salt, brineTankCelsius, units), units.saltPerVolume(inWater),
                units.saltPerVolume(inBrine), AnswerUnits.METRIC.mass(inWater), AnswerUnits.METRIC.mass(inBrine),
                note(units, inWater, inBrine));
    }

    private static MassQuantity salt(CycleStep refill, double minutes, Salt salt, double brineTankCelsius,
            AnswerUnits units) {
        return units.mass(CycleDesign.saltGramsOfRefill(salt, minutes * refill.flowLitresPerMinute(), brineTankCelsius)
                / 1000);
    }

    private static Message note(AnswerUnits units, double inWater, double inBrine) {
        double litres = units.volume(1).unit().toBase(1);
        Message water = Text.of(units.mass(litres * inWater));
        Message brine = Text.of(units.mass(litres * inBrine));
        long tooMuchPercent = Math.round(100 * (inWater / inBrine - 1));
        return units.volume(1).unit() == VolumeUnit.US_GALLON
                ? Message.of("Each US gallon of water dissolves {0} of salt; a US gallon of brine holds only {1}, so a refill"
                        + " set by brine puts {2} % too much salt.", water, brine, tooMuchPercent)
                : Message.of("Each litre of water dissolves {0} of salt; a litre of brine holds only {1}, so a refill set by"
                        + " brine puts {2} % too much salt.", water, brine, tooMuchPercent);
    }

    /** Says why the numbers of the refill at {@code pointer} are what they are. */
    public static void explain(String pointer, Salt salt, Explanation explanation) {
        explanation.because(pointer + "/water", Message.of("salt over the salt that a litre of water dissolves at the"
                + " temperature of the brine tank"), Brine.sourceKey(salt));
        explanation.because(pointer + "/flow", Message.of("as the valve has it, or the usual refill"), "CP-CYCLE");
        explanation.because(pointer + "/minutes", Message.of("water over the flow of the refill"), "CP-CYCLE");
        explanation.because(pointer + "/tenthMinutes", Message.of("minutes to the nearest tenth"), "CP-CYCLE");
        explanation.because(pointer + "/wholeMinutes", Message.of("minutes, rounded up"), "CP-CYCLE");
        for (String rounded : List.of("saltInTenthMinutes", "saltInWholeMinutes")) {
            explanation.because(pointer + "/" + rounded, Message.of("those minutes times the flow, times the salt that a litre"
                    + " of water dissolves"), Brine.sourceKey(salt));
        }
        for (String inWater : List.of("saltInWater", "saltPerVolumeOfWater")) {
            explanation.because(pointer + "/" + inWater, Message.of("solubility at the temperature of the brine tank,"
                    + " times the density of water"), Brine.sourceKey(salt));
        }
        for (String inBrine : List.of("saltInBrine", "saltPerVolumeOfBrine")) {
            explanation.because(pointer + "/" + inBrine, Message.of("strength of saturated brine at the temperature of"
                    + " the brine tank, times its density"), Brine.sourceKey(salt));
        }
    }
}
