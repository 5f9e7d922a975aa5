package dev.brinebook.softener.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.quantity.api.CapacityQuantity;
import dev.brinebook.quantity.api.HardnessQuantity;
import dev.brinebook.quantity.api.LengthQuantity;
import dev.brinebook.quantity.api.MassQuantity;
import dev.brinebook.quantity.api.SaltDoseQuantity;
import dev.brinebook.quantity.api.SaltEfficiencyQuantity;
import dev.brinebook.quantity.api.VolumeQuantity;
import dev.brinebook.quantity.api.WaterPerCapacityQuantity;
import dev.brinebook.resin.ColumnResult;
import dev.brinebook.softener.DosedSoftener;
import dev.brinebook.softener.Fit;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

@About("Whether the softener that stands there fits, at the dose it gets.")
public record FitAnswer(
        @Property(value = "Whether it fits.", example = "true") Boolean fits,
        @Property("Why it does not fit, as stable codes; empty when it does.") List<Fit.Shortcoming> shortcomings,
        @Property(value = "The same in words.", example = "[]") List<String> reasons,
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
        @Property(value = "Days of mean use that the capacity lasts.", optional = "when nothing is used", example = "5.2",
                unit = "days") BigDecimal daysBetweenRegenerations,
        @Property("The lasting flow against what the bed takes.") FlowCheckAnswer continuousFlow,
        @Property("The short peaks against what the bed takes.") FlowCheckAnswer peakFlow,
        @Property("Hardness removed per salt when all of the capacity is used.") SaltEfficiencyQuantity saltEfficiency,
        @Property("Regeneration water per capacity restored.") WaterPerCapacityQuantity waterPerCapacity,
        @Property("How that stands to the published lines.") List<EfficiencyLineAnswer> efficiencyLines) {

    /** The fit in the units of the answer, with its basis told below {@code pointer}. */
    public static FitAnswer of(Fit fit, AnswerUnits units, String pointer, Explanation explanation) {
        DosedSoftener dosed = fit.dosed();
        CapacityBasis.explain(pointer + "/capacity", dosed.softener().capacity(), "", explanation);
        explanation.because(pointer + "/daysBetweenRegenerations", "capacity over daily load", "WQP-2009");
        explanation.because(pointer + "/continuousFlow", "the least of 8 gpm per square foot of tank, 5 gpm per cubic foot"
                + " of resin and the flow that loses 15 psi in the bed", "LIN");
        explanation.because(pointer + "/continuousFlow/pressureDrop", "Ergun's equation for the clean bed at the water's"
                + " temperature", "ERGUN-1952");
        explanation.because(pointer + "/peakFlow", "the lesser of 10 gpm per cubic foot of resin and the flow that loses 15"
                + " psi in the bed", "CP-HYDRAULICS");
        explanation.because(pointer + "/saltEfficiency", "capacity over salt of a regeneration", "WQP-2009");
        explanation.because(pointer + "/waterPerRegeneration", "flow times minutes of every step", "CP-CYCLE");
        Optional<ColumnResult.Settled> cycle = dosed.softener().capacity().cycle(dosed.softener().salt(),
                dosed.saltDoseGramsPerLitre());
        if (cycle.isPresent()) {
            explanation.because(pointer + "/meanLeakage", "hardness that the stages let through between two regenerations, over"
                    + " the water of that run; no efficiency is applied to it", "HELFFERICH");
        }
        return new FitAnswer(fit.fits(), fit.shortcomings(),
                fit.shortcomings().stream().map(Fit.Shortcoming::sentence).toList(),
                units.resinVolume(dosed.softener().bed().resinLitres()), units.length(dosed.softener().bed().depthMetres()),
                Rounding.answer(dosed.softener().bed().freeboardShare(dosed.softener().tankHeightMetres())),
                units.saltDose(dosed.saltDoseGramsPerLitre()), units.mass(dosed.saltGrams() / 1000),
                units.volume(dosed.cycle().waterLitres()), units.capacity(dosed.capacityGrams()),
                cycle.map(one -> units.hardness(one.startLeakageMgPerL())).orElse(null),
                cycle.map(one -> units.hardness(one.meanLeakageMgPerL())).orElse(null),
                fit.intervalDays().exists() ? Rounding.answer(fit.intervalDays().value()) : null,
                FlowCheckAnswer.of(fit.continuous(), units), FlowCheckAnswer.of(fit.peak(), units),
                units.saltEfficiency(dosed.saltEfficiencyGramsPerGram()),
                units.waterPerCapacity(dosed.cycle().waterLitresPerKilogram(dosed.capacityGrams())),
                EfficiencyLineAnswer.of(fit.lines(), units, pointer + "/efficiencyLines", explanation));
    }
}
