// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.answer.resin.CapacityBasis;
import dev.brinebook.answer.resin.EfficiencyLineAnswer;
import dev.brinebook.answer.softener.FlowCheckAnswer;
import dev.brinebook.api.Basis;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.From;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.LengthQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.api.quantity.SaltEfficiencyQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.api.quantity.WaterPerCapacityQuantity;
import dev.brinebook.assessment.Assessment;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.resin.ColumnResult;
import dev.brinebook.resin.EfficiencyLine;
import dev.brinebook.softener.DosedSoftener;
import dev.brinebook.softener.Fit;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

@SchemaDescription("Whether the existing softener is large enough, and its results at its present salt dose.")
public record FitAnswer(
        @Property(value = "Whether the softener is large enough. Settings that let hard water through do not count.",
                example = "true") Boolean fits,
        @Property("Reasons why it does not fit, as stable codes. Empty when it fits.") List<Fit.Shortcoming> shortcomings,
        @Property(value = "The same in words.", example = "[]", eachOf = Fit.Shortcoming.class) List<Message> reasons,
        @Property(value = "Reasons that could not be checked, because the size of its tank was not given, as the same codes.",
                optional = "when all were checked", example = "[\"bedTooShallow\"]") List<Fit.Shortcoming> notChecked,
        @Basis
        @Property("Resin volume.") VolumeQuantity resinVolume,
        @Basis(formula = "formula.softener.resinVolumeCrossSection", source = "CP-TANKS")
        @From("resinVolume")
        @Property("Depth of the bed.") LengthQuantity bedDepth,
        @Basis(formula = "formula.softener.tankHeightBedDepth", source = "CP-HYDRAULICS")
        @From("bedDepth")
        @Property(value = "Freeboard, as a share of the bed depth.", min = 0, example = "0.64") BigDecimal freeboardShare,
        @Basis(formula = "formula.softener.refillWaterSaltLitre", source = "SALT-INSTITUTE")
        @Property("Present salt dose.") SaltDoseQuantity saltDose,
        @Basis(formula = "formula.common.saltDoseResinVolume", source = "WQP-2009")
        @From({"saltDose", "resinVolume"})
        @Property("Salt per regeneration.") MassQuantity saltPerRegeneration,
        @Basis(formula = "formula.common.sumFlowMinutesOver", source = "CP-CYCLE")
        @Property("Water per regeneration.") VolumeQuantity waterPerRegeneration,
        @From({"resinVolume", "saltDose"})
        @Property("Capacity restored per regeneration.") CapacityQuantity capacity,
        @Basis(formula = "formula.softener.hardnessStagesLetThroughStart", source = "HELFFERICH")
        @Property(value = "Hardness leakage at the start of a service run.",
                optional = "when the capacity method is table, which does not give it") HardnessQuantity startLeakage,
        @Basis(formula = "formula.softener.hardnessStagesLetThrough", source = "HELFFERICH")
        @Basis(formula = "formula.softener.plugFlowBrineRinse", source = "PHREEQC")
        @Property(value = "Mean hardness of the softened water of a service run.",
                optional = "when the capacity method is table, which does not give it") HardnessQuantity meanLeakage,
        @Basis(formula = "formula.common.of365ExpectedRegenerationsYear", source = "FELLER")
        @Property(value = "Expected mean days between regenerations, as set.", optional = "when it never regenerates",
                example = "4.1", unit = "days") BigDecimal daysBetweenRegenerations,
        @Basis(formula = "formula.softener.capacityHardnessLoadPer", source = "WQP-2009")
        @From({"capacity", "/demand/dailyLoad"})
        @Property(value = "Days of mean use per full capacity.", optional = "when no water is used", example = "5.2",
                unit = "days") BigDecimal fullChargeDays,
        @Property("Continuous flow compared with the limit of the bed.") FlowCheckAnswer continuousFlow,
        @Property("Peak flow compared with the limit of the bed.") FlowCheckAnswer peakFlow,
        @Basis(formula = "formula.common.capacitySaltPerRegeneration", source = "WQP-2009")
        @From({"capacity", "saltPerRegeneration"})
        @Property("Salt efficiency when all of the capacity is used.") SaltEfficiencyQuantity saltEfficiency,
        @Basis(formula = "formula.common.waterPerRegenerationCapacity", source = "CP-CYCLE")
        @From({"waterPerRegeneration", "capacity"})
        @Property("Regeneration water per capacity restored.") WaterPerCapacityQuantity waterPerCapacity,
        @Property(value = "Comparison with the published efficiency limits.", maxItems = EfficiencyLine.COUNT)
        List<EfficiencyLineAnswer> efficiencyLines) {

    /** The fit in the units of the answer, with its basis recorded below {@code pointer}. */
    static FitAnswer of(Assessment assessment, AnswerUnits units, String pointer, Explanation explanation) {
        Fit fit = assessment.fit();
        List<Fit.Shortcoming> shortcomings = assessment.shortcomings();
        List<Fit.Shortcoming> notChecked = fit.notChecked(assessment.found().datasheet());
        DosedSoftener dosed = fit.dosed();
        Optional<ColumnResult.Settled> cycle = dosed.softener().capacity().cycle(dosed.softener().salt(),
                dosed.saltDoseGramsPerLitre());
        CapacityBasis.explain(pointer + "/capacity", dosed.softener().capacity(), units, explanation);
        FlowCheckAnswer.explain(pointer, units, explanation);
        if (notChecked.contains(Fit.Shortcoming.BED_TOO_SHALLOW)) {
            FlowCheckAnswer.explainByResinAlone(pointer, explanation);
        }
        return new FitAnswer(shortcomings.isEmpty(), shortcomings, shortcomings.stream().map(units::saying).toList(),
                notChecked.isEmpty() ? null : notChecked,
                units.resinVolume(dosed.softener().bed().resinLitres()), units.length(dosed.softener().bed().depthMetres()),
                Rounding.answer(dosed.softener().bed().freeboardShare(dosed.softener().tankHeightMetres())),
                units.saltDose(dosed.saltDoseGramsPerLitre()), units.mass(dosed.saltGrams() / 1000),
                units.volume(dosed.cycle().waterLitres()), units.capacity(dosed.capacityGrams()),
                cycle.map(one -> units.hardness(one.startLeakageMgPerL())).orElse(null),
                cycle.map(one -> units.hardness(one.meanLeakageMgPerL())).orElse(null),
                fit.intervalDays().exists() ? Rounding.answer(fit.intervalDays().value()) : null,
                fit.fullChargeDays().exists() ? Rounding.answer(fit.fullChargeDays().value()) : null,
                FlowCheckAnswer.of(fit.continuous(), units), FlowCheckAnswer.of(fit.peak(), units),
                units.saltEfficiency(dosed.saltEfficiencyGramsPerGram()),
                units.waterPerCapacity(dosed.cycle().waterLitresPerKilogram(dosed.capacityGrams())),
                EfficiencyLineAnswer.of(fit.lines(), units, pointer + "/efficiencyLines", explanation));
    }
}
