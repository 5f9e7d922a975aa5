package dev.brinebook.operation.cycle;

import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.api.quantity.TemperatureQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.Brine;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleDesign;
import dev.brinebook.regeneration.Injector;
import dev.brinebook.resin.Salt;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;

@About("The brine: what is drawn from the tank and how it goes through the bed.")
public record CycleBrine(
        @Property(value = "The salt.", example = "\"sodiumChloride\"") Salt salt,
        @Property("Salt dose.") SaltDoseQuantity saltDose,
        @Property("Salt of one regeneration.") MassQuantity saltPerRegeneration,
        @Property("Temperature of the brine tank.") TemperatureQuantity tankTemperature,
        @Property(value = "Strength of the saturated brine in the tank, by weight.", min = 0, max = 100, example = "26.4",
                unit = "%") BigDecimal saturatedPercent,
        @Property("Saturated brine that is drawn from the tank.") VolumeQuantity saturatedVolume,
        @Property(value = "Strength behind the injector, by weight.", min = 0, max = 100, example = "10", unit = "%")
        BigDecimal dilutedPercent,
        @Property("What the injector makes of it.") VolumeQuantity dilutedVolume,
        @Property("Saturated brine that the injector draws from the tank.") FlowQuantity suction,
        @Property("Water that the injector adds to it.") VolumeQuantity motiveWater,
        @Property(value = "Minutes that the brine is drawn, in which it is in contact with the resin.", example = "36",
                unit = "minutes") BigDecimal contactMinutes,
        @Property(value = "Minutes of the slow rinse after it.", example = "24", unit = "minutes")
        BigDecimal slowRinseMinutes,
        @Property(value = "Bed volumes an hour at which brine and slow rinse pass the bed; 2 to 5 are usual.", min = 0,
                example = "2.5") BigDecimal bedVolumesPerHour) {

    static CycleBrine of(CycleDesign design, Cycle cycle, AnswerUnits units) {
        Cycle.BrineDraw brine = cycle.brine();
        double saturated = Brine.saturatedSaltShare(design.salt(), design.brineTankTemperatureCelsius());
        return new CycleBrine(design.salt(), units.saltDose(brine.saltGrams() / design.bed().resinLitres()),
                units.mass(brine.saltGrams() / 1000), units.temperature(design.brineTankTemperatureCelsius()),
                Rounding.answer(100 * saturated), units.volume(brine.saturatedLitres()),
                Rounding.answer(100 * brine.dilutedSaltShare()), units.volume(brine.dilutedLitres()),
                units.flow(brine.saturatedLitres() / brine.drawMinutes()), units.volume(brine.motiveLitres()),
                Rounding.answer(brine.drawMinutes()), Rounding.answer(brine.slowRinseMinutes()),
                Rounding.answer(brine.bedVolumesPerHour()));
    }

    static void explain(CycleDesign design, Explanation explanation) {
        Salt salt = design.salt();
        explanation.given("/brine/saltDose", "/brine/tankTemperature");
        explanation.because("/brine/saltPerRegeneration", Message.of("dose times resin volume"), "WQP-2009");
        explanation.because("/brine/saturatedPercent", Message.of("saturation at the temperature of the brine tank"),
                Brine.sourceKey(salt));
        explanation.because("/brine/saturatedVolume", Message.of("salt over the salt that a litre of saturated brine holds"),
                densitySource(salt));
        if (isStrengthKnown(design)) {
            explainKnownStrength(design, explanation);
        } else {
            explainAssumedStrength(salt, explanation);
        }
        explanation.because("/brine/contactMinutes", Message.of("saturated brine over its suction, which is diluted brine over"
                + " the brine flow; with the slow rinse 60 minutes"), "CP-CYCLE");
        explanation.because("/brine/slowRinseMinutes", Message.of("one bed volume over the brine flow"), "UFC-3-240-13FN");
        explanation.because("/brine/bedVolumesPerHour", Message.of("brine flow over resin volume"), "CP-CYCLE");
        explanation.assume("usualBrineStrength", Message.of("{0} to {1} % by weight",
                Text.number(100 * Injector.ASSUMED_MIN_DILUTED_SALT_SHARE),
                Text.number(100 * Injector.ASSUMED_MAX_DILUTED_SALT_SHARE)), Origin.DEFAULT);
    }

    private static void explainKnownStrength(CycleDesign design, Explanation explanation) {
        Salt salt = design.salt();
        explanation.assume("brine.dilutedPercent", Message.of("from the flows of the injector"), Origin.DERIVED);
        explanation.because("/brine/dilutedPercent", Message.of("salt in the brine drawn over the weight of that brine and of"
                + " the water that draws it"), Brine.sourceKey(salt));
        explanation.because("/brine/dilutedVolume", Message.of("brine flow times the minutes of the draw"),
                densitySource(salt));
        if (design.flows().brineLitresPerMinute().getAsDouble() <= design.flows().mostLitresPerMinute()) {
            explanation.given("/brine/suction");
        } else {
            explanation.because("/brine/suction", Message.of("in proportion to the brine flow, of which drain or supply allow less than"
                    + " the injector passes"), "CP-CYCLE");
        }
        explanation.because("/brine/motiveWater", Message.of("brine flow less suction, times the minutes of the draw"),
                "CP-CYCLE");
    }

    private static void explainAssumedStrength(Salt salt, Explanation explanation) {
        explanation.assume("brine.dilutedPercent", Message.of("10 % by weight"), Origin.DEFAULT);
        explanation.because("/brine/dilutedPercent", Message.of("about 10 %"), "CP-CYCLE");
        explanation.because("/brine/dilutedVolume", Message.of("salt over 10 % by weight, over the density of that brine"),
                densitySource(salt));
        explanation.because("/brine/suction", Message.of("saturated brine over the minutes of its draw"), "CP-CYCLE");
        explanation.because("/brine/motiveWater", Message.of("weight of the diluted less that of the saturated brine"),
                Brine.sourceKey(salt));
    }

    private static boolean isStrengthKnown(CycleDesign design) {
        return design.flows().brineSuctionLitresPerMinute().isPresent()
                && design.flows().brineLitresPerMinute().isPresent();
    }

    private static String densitySource(Salt salt) {
        return salt == Salt.SODIUM_CHLORIDE ? "PORADNIK" : "CRC-KCL";
    }
}
