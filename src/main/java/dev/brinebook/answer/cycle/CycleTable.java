// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.cycle;

import dev.brinebook.api.Explanation;
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
        @Property("The steps, in order.") List<CycleStepLine> steps,
        @Property(value = "Unrounded minutes of all steps.", example = "82.4", unit = "minutes") BigDecimal totalMinutes,
        @Property(value = "Minutes of all steps in whole minutes.", min = 1, example = "84", unit = "minutes")
        Integer totalWholeMinutes,
        @Property("Water taken from the supply, including the refill, for the unrounded minutes.")
        VolumeQuantity water,
        @Property("The same for whole minutes.") VolumeQuantity waterInWholeMinutes,
        @Property("Water and brine to the drain, for the unrounded minutes.") VolumeQuantity drain,
        @Property("Backwash flow at this site, and the bed expansion it gives.") BackwashLift backwash) {

    /** The cycle in the units of the answer. */
    public static CycleTable of(Cycle cycle, AnswerUnits units) {
        return new CycleTable(cycle.steps().stream().map(step -> CycleStepLine.of(step, units)).toList(),
                Rounding.answer(cycle.totalMinutes()), cycle.steps().stream().mapToInt(CycleStep::wholeMinutes).sum(),
                units.volume(cycle.waterLitres()), units.volume(cycle.inWholeMinutes().waterLitres()),
                units.volume(cycle.drainLitres()), BackwashLift.of(cycle, units));
    }

    /** Says why the numbers of the table are what they are, for a cycle that was worked out and not found. */
    public static void explain(String pointer, Explanation explanation) {
        explanation.because(pointer + "/steps/0/minutes", Message.of("formula.regeneration.of8MinutesLowEnd"), "CP-CYCLE");
        explanation.because(pointer + "/steps/1/minutes", Message.of("formula.regeneration.dilutedBrineOneBed"), "UFC-3-240-13FN");
        explanation.because(pointer + "/steps/*/minutes", Message.of("formula.regeneration.secondBackwashLikeFirst"), "CP-CYCLE");
        explanation.because(pointer + "/steps/*/wholeMinutes", Message.of("formula.regeneration.minutesRoundedUp"), "CP-CYCLE");
        explanation.because(pointer + "/steps/*/tenthMinutes", Message.of("formula.regeneration.minutesNearestTenth"), "CP-CYCLE");
        explanation.because(pointer + "/steps/*/flow", Message.of("formula.regeneration.givenValveOrDrain"), "CP-CYCLE");
        BackwashLift.explain(pointer + "/backwash", explanation);
        for (String bound : List.of("guideMinMinutes", "guideMaxMinutes")) {
            explanation.because(pointer + "/steps/1/" + bound, Message.of("formula.regeneration.of3060MinutesBrine"),
                    "DAVIS");
            explanation.because(pointer + "/steps/*/" + bound, Message.of("formula.regeneration.of810MinutesBackwash"), "CP-CYCLE");
        }
        explainWater(pointer, explanation);
    }

    private static void explainWater(String pointer, Explanation explanation) {
        explanation.because(pointer + "/steps/*/waterTaken", Message.of("formula.regeneration.flowMinutesOrDuring"), "CP-CYCLE");
        explanation.because(pointer + "/steps/*/waterToDrain", Message.of("formula.regeneration.flowMinutesIncludingBrine"), "CP-CYCLE");
        explanation.because(pointer + "/totalMinutes", Message.of("formula.regeneration.sumMinutesSteps"), "CP-CYCLE");
        explanation.because(pointer + "/totalWholeMinutes", Message.of("formula.regeneration.sumWholeMinutesSteps"), "CP-CYCLE");
        explanation.because(pointer + "/water", Message.of("formula.regeneration.sumWaterSteps3"), "CP-CYCLE");
        explanation.because(pointer + "/waterInWholeMinutes", Message.of("formula.regeneration.waterEveryStepWhole"),
                "CP-CYCLE");
        explanation.because(pointer + "/drain", Message.of("formula.regeneration.sumWaterStepsSend"), "CP-CYCLE");
    }
}
