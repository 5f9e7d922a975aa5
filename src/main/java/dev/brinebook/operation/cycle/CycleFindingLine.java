package dev.brinebook.operation.cycle;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleFinding;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.List;

@About("Something wrong with the cycle on this hardware, or a step whose minutes are not usual.")
public record CycleFindingLine(
        @Property(value = "Stable code.", example = "\"backwashTooWeak\"") CycleFinding code,
        @Property(value = "What is wrong or unusual and why, in a sentence.",
                example = "\"The backwash lifts the bed too little.\"")
        Message message,
        @Property(value = "The step whose minutes are not usual.", optional = "when it is not about minutes",
                example = "\"fastRinse\"") CycleStep.Kind step,
        @Property(value = "Its minutes, not rounded.", optional = "when it is not about minutes", example = "3.2",
                unit = "minutes") BigDecimal minutes,
        @Property(value = "Fewest minutes that are usual.", optional = "when it is not about minutes", example = "4",
                unit = "minutes") BigDecimal guideMinMinutes,
        @Property(value = "Most minutes that are usual.", optional = "when it is not about minutes", example = "10",
                unit = "minutes") BigDecimal guideMaxMinutes) {

    static CycleFindingLine of(CycleFinding finding, Cycle cycle, AnswerUnits units) {
        if (finding.step().isEmpty()) {
            Message sentence = units.saying(finding);
            return new CycleFindingLine(finding, finding == CycleFinding.BACKWASH_TOO_WEAK
                    ? Message.joined(" ", List.of(sentence, cycle.backwashFlow().toRaise().cure())) : sentence, null, null, null, null);
        }
        CycleStep step = cycle.step(finding.step().get());
        CycleStep.Guide guide = step.kind().guide().orElseThrow();
        return new CycleFindingLine(finding, units.saying(finding), step.kind(), Rounding.answer(step.minutes()),
                Rounding.answer(guide.minMinutes()), Rounding.answer(guide.maxMinutes()));
    }

    static void explain(Explanation explanation) {
        explanation.because("/findings/*", Message.of("the minutes of the step and those that are usual, as in the cycle"),
                "CP-CYCLE");
    }
}
