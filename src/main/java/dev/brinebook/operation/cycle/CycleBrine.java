// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.cycle;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.From;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.api.quantity.TemperatureQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.Brine;
import dev.brinebook.regeneration.BrineMixing;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleDesign;
import dev.brinebook.regeneration.Injector;
import dev.brinebook.resin.Brining;
import dev.brinebook.resin.Salt;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

@SchemaDescription("The brine: the amount drawn from the tank and its flow through the bed.")
public record CycleBrine(
        @Property(value = "The salt.", example = "\"sodiumChloride\"") Salt salt,
        @Basis
        @Property("Salt dose.") SaltDoseQuantity saltDose,
        @Basis(formula = "formula.common.saltDoseResinVolume", source = "WQP-2009")
        @From({"saltDose", "/bed/resinVolume"})
        @Property("Salt per regeneration.") MassQuantity saltPerRegeneration,
        @Basis
        @Property("Temperature of the brine tank.") TemperatureQuantity tankTemperature,
        @Property(value = "Strength of the saturated brine in the tank, by weight.", min = 0, max = 100, example = "26.4",
                unit = "%") BigDecimal saturatedPercent,
        @Property("Saturated brine drawn from the tank.") VolumeQuantity saturatedVolume,
        @Property(value = "Strength after the injector, by weight.", min = 0, max = 100, example = "10", unit = "%")
        BigDecimal dilutedPercent,
        @From({"saltPerRegeneration", "dilutedPercent"})
        @Property("Volume of diluted brine after the injector.") VolumeQuantity dilutedVolume,
        @Property("Flow of saturated brine that the injector draws from the tank.") FlowQuantity suction,
        @Property("Flow of water that the injector adds.") VolumeQuantity motiveWater,
        @Basis(formula = "formula.regeneration.saturatedBrineSuctionEquals", source = "CP-CYCLE")
        @From({"saturatedVolume", "suction"})
        @Property(value = "Minutes of brine draw: contact time of the brine with the resin.", example = "36",
                unit = "minutes") BigDecimal contactMinutes,
        @Basis(formula = "formula.regeneration.oneBedVolumeBrine", source = "UFC-3-240-13FN")
        @Property(value = "Minutes of the slow rinse.", example = "24", unit = "minutes")
        BigDecimal slowRinseMinutes,
        @Basis(formula = "formula.regeneration.brineFlowResinVolume", source = "CP-CYCLE")
        @Property(value = "Flow of brine and slow rinse, in bed volumes an hour. 2 to 5 are usual.", min = 0,
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

    static void explain(CycleDesign design, Cycle.BrineDraw brine, Explanation explanation) {
        Salt salt = design.salt();
        explanation.because("/brine/saturatedPercent", Message.of("formula.regeneration.saturationTemperatureBrineTank"),
                Brine.sourceKey(salt));
        explanation.because("/brine/saturatedVolume", Message.of("formula.regeneration.saltSaltLitreSaturated"),
                densitySource(salt));
        if (isStrengthKnown(design)) {
            explainKnownStrength(design, brine, explanation);
        } else {
            explainAssumedStrength(salt, explanation);
        }
        explanation.assume(usual("minUsualBrineStrength", Injector.ASSUMED_MIN_DILUTED_SALT_SHARE));
        explanation.assume(usual("maxUsualBrineStrength", Injector.ASSUMED_MAX_DILUTED_SALT_SHARE));
    }

    private static Resolved usual(String name, double saltShare) {
        return Resolved.of(name, 100 * saltShare, "%").byDefault("OWN-ASSUMPTION").noting(Message.of("assumed.regeneration.byWeight"));
    }

    private static void explainKnownStrength(CycleDesign design, Cycle.BrineDraw brine, Explanation explanation) {
        Salt salt = design.salt();
        explanation.assume(Resolved.of("brineStrength", 100 * brine.dilutedSaltShare(), "%").estimated(Brine.sourceKey(salt))
                .noting(Message.of("assumed.regeneration.injectorFlows")));
        explanation.because("/brine/dilutedPercent", Message.of("formula.regeneration.saltBrineTankWeight"), Brine.sourceKey(salt));
        explanation.because("/brine/dilutedVolume", Message.of("formula.regeneration.brineFlowMinutesBrine"),
                densitySource(salt));
        if (design.flows().brineLitresPerMinute().getAsDouble() <= design.flows().mostLitresPerMinute()) {
            explanation.given("/brine/suction");
        } else {
            explanation.because("/brine/suction", Message.of("formula.regeneration.proportionBrineFlowDrain"), "CP-CYCLE");
        }
        if (design.flows().injector().mixing() == BrineMixing.BY_VOLUME) {
            explanation.because("/brine/motiveWater", Message.of("formula.regeneration.brineFlowSuctionMinutes"), "CP-CYCLE");
        } else {
            explainMotiveWater(salt, explanation);
        }
    }

    private static void explainMotiveWater(Salt salt, Explanation explanation) {
        explanation.because("/brine/motiveWater", Message.of("formula.regeneration.weightDilutedBrineWeight"),
                Brine.sourceKey(salt));
    }

    private static void explainAssumedStrength(Salt salt, Explanation explanation) {
        explanation.assume(Resolved.of("brineStrength", 100 * Brining.DILUTED_SALT_SHARE, "%").byDefault("CP-CYCLE")
                .noting(Message.of("assumed.regeneration.byWeight")));
        explanation.because("/brine/dilutedPercent", Message.of("formula.regeneration.about10"), "CP-CYCLE");
        explanation.because("/brine/dilutedVolume", Message.of("formula.regeneration.salt10WeightDensity"),
                densitySource(salt));
        explanation.because("/brine/suction", Message.of("formula.regeneration.saturatedBrineMinutesBrine"), "CP-CYCLE");
        explainMotiveWater(salt, explanation);
    }

    private static boolean isStrengthKnown(CycleDesign design) {
        return design.flows().brineSuctionLitresPerMinute().isPresent()
                && design.flows().brineLitresPerMinute().isPresent();
    }

    private static String densitySource(Salt salt) {
        return salt == Salt.SODIUM_CHLORIDE ? "PORADNIK" : "CRC-KCL";
    }
}
