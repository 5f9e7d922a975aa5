// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.answer.resin.CapacityBasis;
import dev.brinebook.answer.resin.EfficiencyLineAnswer;
import dev.brinebook.answer.softener.FlowCheckAnswer;
import dev.brinebook.api.Explanation;
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
import dev.brinebook.quantity.Rounding;
import dev.brinebook.resin.ColumnResult;
import dev.brinebook.softener.DosedSoftener;
import dev.brinebook.softener.Fit;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

@SchemaDescription("Whether the existing softener is large enough, at its present salt dose.")
public record FitAnswer(
        @Property(value = "Whether the softener is large enough.", example = "true") Boolean fits,
        @Property("Reasons why it does not fit, as stable codes. Empty when it fits.") List<Fit.Shortcoming> shortcomings,
        @Property(value = "The same in words.", example = "[]") List<Message> reasons,
        @Property("Resin volume.") VolumeQuantity resinVolume,
        @Property("Depth of the bed.") LengthQuantity bedDepth,
        @Property(value = "Freeboard, as a share of the bed depth.", min = 0, example = "0.64") BigDecimal freeboardShare,
        @Property("Present salt dose.") SaltDoseQuantity saltDose,
        @Property("Salt per regeneration.") MassQuantity saltPerRegeneration,
        @Property("Water per regeneration.") VolumeQuantity waterPerRegeneration,
        @Property("Capacity restored per regeneration.") CapacityQuantity capacity,
        @Property(value = "Hardness leakage at the start of a service run.",
                optional = "when the capacity method is table, which does not give it") HardnessQuantity startLeakage,
        @Property(value = "Mean hardness of the softened water of a service run.",
                optional = "when the capacity method is table, which does not give it") HardnessQuantity meanLeakage,
        @Property(value = "Expected mean days between regenerations, as set.", optional = "when it never regenerates",
                example = "4.1", unit = "days") BigDecimal daysBetweenRegenerations,
        @Property(value = "Days of mean use per full capacity.", optional = "when no water is used", example = "5.2",
                unit = "days") BigDecimal fullChargeDays,
        @Property("Continuous flow compared with the limit of the bed.") FlowCheckAnswer continuousFlow,
        @Property("Peak flow compared with the limit of the bed.") FlowCheckAnswer peakFlow,
        @Property("Salt efficiency when all of the capacity is used.") SaltEfficiencyQuantity saltEfficiency,
        @Property("Regeneration water per capacity restored.") WaterPerCapacityQuantity waterPerCapacity,
        @Property("Comparison with the published efficiency limits.") List<EfficiencyLineAnswer> efficiencyLines) {

    /** The fit in the units of the answer, with its basis recorded below {@code pointer}. */
    public static FitAnswer of(Fit fit, AnswerUnits units, String pointer, Explanation explanation) {
        DosedSoftener dosed = fit.dosed();
        Optional<ColumnResult.Settled> cycle = dosed.softener().capacity().cycle(dosed.softener().salt(),
                dosed.saltDoseGramsPerLitre());
        explain(dosed, cycle.isPresent(), units, pointer, explanation);
        return new FitAnswer(fit.fits(), fit.shortcomings(),
                fit.shortcomings().stream().map(units::saying).toList(),
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

    private static void explain(DosedSoftener dosed, boolean byColumn, AnswerUnits units, String pointer,
            Explanation explanation) {
        CapacityBasis.explain(pointer + "/capacity", dosed.softener().capacity(), units, explanation);
        CapacityBasis.explainFoundDose(pointer + "/saltDose", explanation);
        explanation.given(pointer + "/resinVolume");
        explanation.because(pointer + "/bedDepth", Message.of("formula.softener.resinVolumeCrossSection"), "CP-TANKS");
        explanation.because(pointer + "/freeboardShare", Message.of("formula.softener.tankHeightBedDepth"), "CP-HYDRAULICS");
        explanation.because(pointer + "/saltPerRegeneration", Message.of("formula.common.saltDoseResinVolume"), "WQP-2009");
        explanation.because(pointer + "/daysBetweenRegenerations", Message.of("formula.common.of365ExpectedRegenerationsYear"), "FELLER");
        explanation.because(pointer + "/fullChargeDays", Message.of("formula.softener.capacityHardnessLoadPer"), "WQP-2009");
        FlowCheckAnswer.explain(pointer, units, explanation);
        explanation.because(pointer + "/saltEfficiency", Message.of("formula.common.capacitySaltPerRegeneration"), "WQP-2009");
        explanation.because(pointer + "/waterPerRegeneration", Message.of("formula.common.sumFlowMinutesOver"), "CP-CYCLE");
        explanation.because(pointer + "/waterPerCapacity", Message.of("formula.common.waterPerRegenerationCapacity"), "CP-CYCLE");
        if (byColumn) {
            explanation.because(pointer + "/startLeakage", Message.of("formula.softener.hardnessStagesLetThroughStart"), "HELFFERICH");
            explanation.because(pointer + "/meanLeakage", Message.of("formula.softener.hardnessStagesLetThrough"), "HELFFERICH");
            CapacityBasis.explainScheme(pointer + "/meanLeakage", explanation);
        }
    }
}
