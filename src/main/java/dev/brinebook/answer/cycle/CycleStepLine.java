package dev.brinebook.answer.cycle;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.TellsKind;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.regeneration.CycleStep.Guide;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.Optional;

@About("One step of a regeneration, as it is set.")
public record CycleStepLine(
        @Property(value = "The step.", example = "\"backwash\"") @TellsKind(others = "timed") CycleStep.Kind step,
        @Property(value = "Minutes, not rounded.", example = "7.5", unit = "minutes") BigDecimal minutes,
        @Property(value = "Minutes to set on a controller that takes whole ones: rounded up, so that the step does not fall"
                + " short. For the refill that is too much salt, so set tenths where they can be set.", min = 1,
                example = "8", unit = "minutes") Integer wholeMinutes,
        @Property(value = "Minutes to the nearest tenth.", kinds = "refill", example = "6.7", unit = "minutes")
        BigDecimal tenthMinutes,
        @Property("Flow through the bed, or into the brine tank.") FlowQuantity flow,
        @Property("Water taken from the line in the minutes that are not rounded.") VolumeQuantity waterTaken,
        @Property("Water and brine sent to the drain. The refill sends none: it leaves with the next brine.")
        VolumeQuantity waterToDrain,
        @Property(value = "Fewest minutes that are usual. Salt sets those of a refill.", exceptKinds = "refill",
                example = "8", unit = "minutes") BigDecimal guideMinMinutes,
        @Property(value = "Most minutes that are usual.", exceptKinds = "refill", example = "10", unit = "minutes")
        BigDecimal guideMaxMinutes,
        @Property(value = "Whether the minutes, not rounded, are usual.", exceptKinds = "refill", example = "true")
        Boolean withinGuide,
        @Property(value = "What the step does.", example = "\"loosens the bed and carries dirt and fines to the drain\"")
        Message purpose) {

    /** The step in the units of the answer. */
    public static CycleStepLine of(CycleStep step, AnswerUnits units) {
        Optional<Guide> guide = step.kind().guide();
        return new CycleStepLine(step.kind(), Rounding.answer(step.minutes()), step.wholeMinutes(),
                step.kind() == CycleStep.Kind.REFILL ? Rounding.answer(step.nearestTenthMinutes()) : null,
                units.flow(step.flowLitresPerMinute()), units.volume(step.lineWaterLitres()),
                units.volume(step.drainLitres()), guide.map(g -> Rounding.answer(g.minMinutes())).orElse(null),
                guide.map(g -> Rounding.answer(g.maxMinutes())).orElse(null),
                guide.map(g -> step.isWithinGuide()).orElse(null), step.kind().purpose());
    }
}
