// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.cycle;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleFinding;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.List;

@SchemaDescription("A problem with the cycle on this hardware, or a step with unusual minutes.")
public record CycleFindingLine(
        @Property(value = "Stable code.", example = "\"backwashTooWeak\"") CycleFinding code,
        @Property(value = "The problem and its reason, in a sentence.",
                example = "\"The backwash does not lift the bed enough.\"")
        Message message,
        @Property(value = "The step with unusual minutes.", optional = "when it is not about minutes",
                example = "\"fastRinse\"") CycleStep.Kind step,
        @Basis(formula = "formula.regeneration.minutesStepUsualMinutes", source = "CP-CYCLE")
        @Property(value = "Its unrounded minutes.", optional = "when it is not about minutes", example = "3.2",
                unit = "minutes") BigDecimal minutes,
        @Basis(formula = "formula.regeneration.minutesStepUsualMinutes", source = "CP-CYCLE")
        @Property(value = "Lower end of the usual minutes.", optional = "when it is not about minutes", example = "4",
                unit = "minutes") BigDecimal guideMinMinutes,
        @Basis(formula = "formula.regeneration.minutesStepUsualMinutes", source = "CP-CYCLE")
        @Property(value = "Upper end of the usual minutes.", optional = "when it is not about minutes", example = "10",
                unit = "minutes") BigDecimal guideMaxMinutes) {

    static CycleFindingLine of(CycleFinding finding, Cycle cycle, AnswerUnits units) {
        if (finding.step().isEmpty()) {
            Message sentence = units.saying(finding);
            return new CycleFindingLine(finding, finding == CycleFinding.BACKWASH_TOO_WEAK
                    ? Message.sentences(List.of(sentence, cycle.backwashFlow().toRaise().cure())) : sentence, null, null, null, null);
        }
        CycleStep step = cycle.step(finding.step().get());
        CycleStep.Guide guide = step.kind().guide().orElseThrow();
        return new CycleFindingLine(finding, units.saying(finding), step.kind(), Rounding.answer(step.minutes()),
                Rounding.answer(guide.minMinutes()), Rounding.answer(guide.maxMinutes()));
    }
}
