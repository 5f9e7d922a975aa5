// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.cycle;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Discriminator;
import dev.brinebook.api.From;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.regeneration.CycleStep.Guide;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.Optional;

@SchemaDescription("One step of a regeneration.")
public record CycleStepLine(
        @Property(value = "The step.", example = "\"backwash\"") @Discriminator(others = "timed") CycleStep.Kind step,
        @Basis(formula = "formula.regeneration.secondBackwashLikeFirst", source = "CP-CYCLE")
        @Property(value = "Unrounded minutes.", example = "7.5", unit = "minutes") BigDecimal minutes,
        @Basis(formula = "formula.regeneration.minutesRoundedUp", source = "CP-CYCLE")
        @From("minutes")
        @Property(value = "Minutes to set on a controller that takes whole minutes. Rounded up, so that the step is not too "
                + "short. For the refill this gives too much salt, so set tenths if the controller allows.", min = 1,
                example = "8", unit = "minutes") Integer wholeMinutes,
        @Basis(formula = "formula.regeneration.minutesNearestTenth", source = "CP-CYCLE")
        @From("minutes")
        @Property(value = "Minutes to the nearest tenth.", kinds = "refill", example = "6.7", unit = "minutes")
        BigDecimal tenthMinutes,
        @Basis(formula = "formula.regeneration.givenValveOrDrain", source = "CP-CYCLE")
        @Property("Flow through the bed, or into the brine tank.") FlowQuantity flow,
        @Basis(formula = "formula.regeneration.flowMinutesOrDuring", source = "CP-CYCLE")
        @From({"flow", "minutes"})
        @Property("Water taken from the supply, for the unrounded minutes.") VolumeQuantity waterTaken,
        @Basis(formula = "formula.regeneration.flowMinutesIncludingBrine", source = "CP-CYCLE")
        @From({"flow", "minutes"})
        @Property("Water and brine to the drain. None for the refill, which is drained with the next brine draw.")
        VolumeQuantity waterToDrain,
        @Basis(formula = "formula.regeneration.of810MinutesBackwash", source = "CP-CYCLE")
        @Property(value = "Lower end of the usual minutes. For the refill, the salt sets them.", exceptKinds = "refill",
                example = "8", unit = "minutes") BigDecimal guideMinMinutes,
        @Basis(formula = "formula.regeneration.of810MinutesBackwash", source = "CP-CYCLE")
        @Property(value = "Upper end of the usual minutes.", exceptKinds = "refill", example = "10", unit = "minutes")
        BigDecimal guideMaxMinutes,
        @Property(value = "Whether the unrounded minutes are in the usual range.", exceptKinds = "refill", example = "true")
        Boolean withinGuide,
        @Property(value = "Purpose of the step.", example = "\"loosens the bed and carries dirt and fines to the drain\"")
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
