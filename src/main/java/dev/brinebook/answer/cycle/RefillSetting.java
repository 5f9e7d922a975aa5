// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.cycle;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.From;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.SaltPerVolumeQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.Brine;
import dev.brinebook.regeneration.CycleDesign;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.resin.Salt;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.List;

@SchemaDescription("The brine refill, by water. Its minutes set the salt of the next regeneration.")
public record RefillSetting(
        @From("saltInWater")
        @Property("Water that dissolves the salt of one regeneration.") VolumeQuantity water,
        @Basis(formula = "formula.regeneration.givenValveOrUsual", source = "CP-CYCLE")
        @Property("Flow of the refill.") FlowQuantity flow,
        @Basis(formula = "formula.regeneration.waterRefillFlow", source = "CP-CYCLE")
        @From({"water", "flow"})
        @Property(value = "Unrounded minutes.", example = "6.69", unit = "minutes") BigDecimal minutes,
        @Basis(formula = "formula.regeneration.minutesNearestTenth", source = "CP-CYCLE")
        @From("minutes")
        @Property(value = "Minutes to set, if the controller takes tenths.", example = "6.7", unit = "minutes")
        BigDecimal tenthMinutes,
        @From({"tenthMinutes", "flow", "saltInWater"})
        @Property("Salt dissolved with these minutes.") MassQuantity saltInTenthMinutes,
        @Basis(formula = "formula.regeneration.minutesRoundedUp", source = "CP-CYCLE")
        @From("minutes")
        @Property(value = "Minutes to set, if the controller takes whole minutes only.", min = 1, example = "7", unit = "minutes")
        Integer wholeMinutes,
        @From({"wholeMinutes", "flow", "saltInWater"})
        @Property("Salt dissolved with these minutes.") MassQuantity saltInWholeMinutes,
        @Property("Salt dissolved per volume of water.") SaltPerVolumeQuantity saltInWater,
        @Property("Salt contained per volume of saturated brine.") SaltPerVolumeQuantity saltInBrine,
        @Property("Salt dissolved per litre of water, always in kilograms. Prefer saltInWater, which states its unit.")
        MassQuantity saltPerVolumeOfWater,
        @Property("Salt contained in one litre of saturated brine, always in kilograms. Prefer saltInBrine, which states its unit.")
        MassQuantity saltPerVolumeOfBrine,
        @Property(value = "Reason why the refill is set by water and not by brine.", example = "\"Each US gallon of water dissolves"
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
        return Message.of("refillSetting.eachUsGallonWater", water, brine, tooMuchPercent).inMetricUnits(units == AnswerUnits.METRIC);
    }

    /** Says what the numbers of the refill at {@code pointer} that depend on the salt come from. */
    public static void explain(String pointer, Salt salt, Explanation explanation) {
        explanation.because(pointer + "/water", Message.of("formula.regeneration.saltSaltLitreWater"), Brine.sourceKey(salt));
        for (String rounded : List.of("saltInTenthMinutes", "saltInWholeMinutes")) {
            explanation.because(pointer + "/" + rounded, Message.of("formula.regeneration.thoseMinutesFlowSalt"), Brine.sourceKey(salt));
        }
        for (String inWater : List.of("saltInWater", "saltPerVolumeOfWater")) {
            explanation.because(pointer + "/" + inWater, Message.of("formula.regeneration.solubilityTemperatureBrineTank"),
                    Brine.sourceKey(salt));
        }
        for (String inBrine : List.of("saltInBrine", "saltPerVolumeOfBrine")) {
            explanation.because(pointer + "/" + inBrine, Message.of("formula.regeneration.strengthSaturatedBrineTemperature"),
                    Brine.sourceKey(salt));
        }
    }
}
