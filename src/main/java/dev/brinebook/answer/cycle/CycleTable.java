// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.cycle;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.From;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.List;

@SchemaDescription("A regeneration step by step, with its time and water, for the installer to set.")
public record CycleTable(
        @Property(value = "The steps, in order.", eachOf = CycleStep.Kind.class) List<CycleStepLine> steps,
        @Basis(formula = "formula.regeneration.sumMinutesSteps", source = "CP-CYCLE")
        @From("steps/*/minutes")
        @Property(value = "Unrounded minutes of all steps.", example = "82.4", unit = "minutes") BigDecimal totalMinutes,
        @Basis(formula = "formula.regeneration.sumWholeMinutesSteps", source = "CP-CYCLE")
        @From("steps/*/wholeMinutes")
        @Property(value = "Minutes of all steps in whole minutes.", min = 1, example = "84", unit = "minutes")
        Integer totalWholeMinutes,
        @Basis(formula = "formula.regeneration.sumWaterSteps3", source = "CP-CYCLE")
        @From("steps/*/waterTaken")
        @Property("Water taken from the supply, including the refill, for the unrounded minutes.")
        VolumeQuantity water,
        @Basis(formula = "formula.regeneration.waterEveryStepWhole", source = "CP-CYCLE")
        @Property("The same for whole minutes.") VolumeQuantity waterInWholeMinutes,
        @Basis(formula = "formula.regeneration.sumWaterStepsSend", source = "CP-CYCLE")
        @From("steps/*/waterToDrain")
        @Property("Water and brine to the drain, for the unrounded minutes.") VolumeQuantity drain,
        @Property("Backwash flow at this site, and the bed expansion it gives.") BackwashLift backwash) {

    /** The cycle in the units of the answer. */
    public static CycleTable of(Cycle cycle, AnswerUnits units) {
        return new CycleTable(cycle.steps().stream().map(step -> CycleStepLine.of(step, units)).toList(),
                Rounding.answer(cycle.totalMinutes()), cycle.steps().stream().mapToInt(CycleStep::wholeMinutes).sum(),
                units.volume(cycle.waterLitres()), units.volume(cycle.inWholeMinutes().waterLitres()),
                units.volume(cycle.drainLitres()), BackwashLift.of(cycle, units));
    }

    /** Says what the minutes of the first two steps come from, of a cycle that was worked out and not found. */
    public static void explain(String pointer, Explanation explanation) {
        explanation.because(pointer + "/steps/0/minutes", Message.of("formula.regeneration.of8MinutesLowEnd"), "CP-CYCLE");
        explanation.because(pointer + "/steps/1/minutes", Message.of("formula.regeneration.dilutedBrineOneBed"), "UFC-3-240-13FN");
        for (String bound : List.of("guideMinMinutes", "guideMaxMinutes")) {
            explanation.because(pointer + "/steps/1/" + bound, Message.of("formula.regeneration.of3060MinutesBrine"), "DAVIS");
        }
    }
}
