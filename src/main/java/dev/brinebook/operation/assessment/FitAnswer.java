package dev.brinebook.operation.assessment;

import dev.brinebook.answer.resin.CapacityBasis;
import dev.brinebook.answer.resin.EfficiencyLineAnswer;
import dev.brinebook.answer.softener.FlowCheckAnswer;
import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
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
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

@About("Whether the softener that stands there fits, at the dose it gets.")
public record FitAnswer(
        @Property(value = "Whether it fits.", example = "true") Boolean fits,
        @Property("Why it does not fit, as stable codes; empty when it does.") List<Fit.Shortcoming> shortcomings,
        @Property(value = "The same in words.", example = "[]") List<Message> reasons,
        @Property("Resin in it.") VolumeQuantity resinVolume,
        @Property("Depth of the bed.") LengthQuantity bedDepth,
        @Property(value = "Room above the bed as a share of its depth.", min = 0, example = "0.64") BigDecimal freeboardShare,
        @Property("Salt dose that it gets.") SaltDoseQuantity saltDose,
        @Property("Salt of one regeneration.") MassQuantity saltPerRegeneration,
        @Property("Water of one regeneration.") VolumeQuantity waterPerRegeneration,
        @Property("Capacity that a regeneration restores.") CapacityQuantity capacity,
        @Property(value = "Hardness of the softened water at the start of a run.",
                optional = "when capacity is counted by the table, which does not tell it") HardnessQuantity startLeakage,
        @Property(value = "Hardness of all the softened water of a run, mixed.",
                optional = "when capacity is counted by the table, which does not tell it") HardnessQuantity meanLeakage,
        @Property(value = "Mean days between regenerations to be expected, as it is set.", optional = "when it never regenerates",
                example = "4.1", unit = "days") BigDecimal daysBetweenRegenerations,
        @Property(value = "Days of mean use that a full charge lasts.", optional = "when nothing is used", example = "5.2",
                unit = "days") BigDecimal fullChargeDays,
        @Property("The lasting flow against what the bed takes.") FlowCheckAnswer continuousFlow,
        @Property("The short peaks against what the bed takes.") FlowCheckAnswer peakFlow,
        @Property("Hardness removed per salt when all of the capacity is used.") SaltEfficiencyQuantity saltEfficiency,
        @Property("Regeneration water per capacity restored.") WaterPerCapacityQuantity waterPerCapacity,
        @Property("How that stands to the published lines.") List<EfficiencyLineAnswer> efficiencyLines) {

    /** The fit in the units of the answer, with its basis told below {@code pointer}. */
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
        explanation.because(pointer + "/bedDepth", Message.of("resin volume over the cross-section of the tank"), "CP-TANKS");
        explanation.because(pointer + "/freeboardShare", Message.of("height of the tank less depth of the bed, over that"
                + " depth"), "CP-HYDRAULICS");
        explanation.because(pointer + "/saltPerRegeneration", Message.of("dose times resin volume"), "WQP-2009");
        explanation.because(pointer + "/daysBetweenRegenerations", Message.of("365 over the expected regenerations of a year"), "FELLER");
        explanation.because(pointer + "/fullChargeDays", Message.of("capacity over daily load"), "WQP-2009");
        FlowCheckAnswer.explain(pointer, units, explanation);
        explanation.because(pointer + "/saltEfficiency", Message.of("capacity over salt of a regeneration"), "WQP-2009");
        explanation.because(pointer + "/waterPerRegeneration", Message.of("flow times minutes of every step"), "CP-CYCLE");
        explanation.because(pointer + "/waterPerCapacity", Message.of("water of a regeneration over capacity"), "CP-CYCLE");
        if (byColumn) {
            explanation.because(pointer + "/startLeakage", Message.of("hardness that the stages let through at the start of a"
                    + " run"), "HELFFERICH");
            explanation.because(pointer + "/meanLeakage", Message.of("hardness that the stages let through between two"
                    + " regenerations, over the water of that run; no efficiency is applied to it"), "HELFFERICH");
            CapacityBasis.explainScheme(pointer + "/meanLeakage", explanation);
        }
    }
}
