package dev.brinebook.answer.cycle;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.List;

@About("A regeneration step by step, with its time and water: the sheet that an installer sets.")
public record CycleTable(
        @Property("The steps, in their order.") List<CycleStepLine> steps,
        @Property(value = "Minutes of all steps, not rounded.", example = "82.4", unit = "minutes") BigDecimal totalMinutes,
        @Property(value = "Minutes of all steps in whole minutes.", min = 1, example = "84", unit = "minutes")
        Integer totalWholeMinutes,
        @Property("Water taken from the line, the refill included, in the minutes that are not rounded.")
        VolumeQuantity water,
        @Property("The same in whole minutes.") VolumeQuantity waterInWholeMinutes,
        @Property("Water and brine sent to the drain, in the minutes that are not rounded.") VolumeQuantity drain,
        @Property("The flow that the backwash gets on this site, and its lift.") BackwashLift backwash) {

    /** The cycle in the units of the answer. */
    public static CycleTable of(Cycle cycle, AnswerUnits units) {
        return new CycleTable(cycle.steps().stream().map(step -> CycleStepLine.of(step, units)).toList(),
                Rounding.answer(cycle.totalMinutes()), cycle.steps().stream().mapToInt(CycleStep::wholeMinutes).sum(),
                units.volume(cycle.waterLitres()), units.volume(cycle.inWholeMinutes().waterLitres()),
                units.volume(cycle.drainLitres()), BackwashLift.of(cycle, units));
    }

    /** Says why the numbers of the table are what they are, for a cycle that was worked out and not found. */
    public static void explain(String pointer, Explanation explanation) {
        explanation.because(pointer + "/steps/0/minutes", Message.of("8 minutes, the low end of 8 to 10"), "CP-CYCLE");
        explanation.because(pointer + "/steps/1/minutes", Message.of("diluted brine and one bed volume of slow rinse over"
                + " the brine flow"), "UFC-3-240-13FN");
        explanation.because(pointer + "/steps/*/minutes", Message.of("a second backwash as the first; fast rinse of three"
                + " bed volumes over its flow; refill: water that dissolves the salt over its flow"), "CP-CYCLE");
        explanation.because(pointer + "/steps/*/wholeMinutes", Message.of("minutes, rounded up"), "CP-CYCLE");
        explanation.because(pointer + "/steps/*/tenthMinutes", Message.of("minutes to the nearest tenth"), "CP-CYCLE");
        explanation.because(pointer + "/steps/*/flow", Message.of("as the valve has it; where that is not given, the drain line"
                + " flow control that lifts the bed by half, 2.5 bed volumes an hour of brine and slow rinse, and the usual"
                + " refill; no more than drain and supply allow"), "CP-CYCLE");
        BackwashLift.explain(pointer + "/backwash", explanation);
        for (String bound : List.of("guideMinMinutes", "guideMaxMinutes")) {
            explanation.because(pointer + "/steps/1/" + bound, Message.of("30 to 60 minutes of brine and slow rinse"),
                    "DAVIS");
            explanation.because(pointer + "/steps/*/" + bound, Message.of("8 to 10 minutes of backwash, 4 to 10 of fast"
                    + " rinse"), "CP-CYCLE");
        }
        explainWater(pointer, explanation);
    }

    private static void explainWater(String pointer, Explanation explanation) {
        explanation.because(pointer + "/steps/*/waterTaken", Message.of("flow times minutes; while brine is drawn, what the"
                + " injector adds to it by weight"), "CP-CYCLE");
        explanation.because(pointer + "/steps/*/waterToDrain", Message.of("flow times minutes, with the brine drawn from the"
                + " tank; of the refill nothing"), "CP-CYCLE");
        explanation.because(pointer + "/totalMinutes", Message.of("sum of the minutes of the steps"), "CP-CYCLE");
        explanation.because(pointer + "/totalWholeMinutes", Message.of("sum of the whole minutes of the steps"), "CP-CYCLE");
        explanation.because(pointer + "/water", Message.of("sum of the water of the steps; 3.3 to 8.7 bed volumes are"
                + " usual"), "CP-CYCLE");
        explanation.because(pointer + "/waterInWholeMinutes", Message.of("water of every step in whole minutes"),
                "CP-CYCLE");
        explanation.because(pointer + "/drain", Message.of("sum of what the steps send to the drain"), "CP-CYCLE");
    }
}
