package dev.brinebook.operation.resin;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.regeneration.BackwashFlow;
import dev.brinebook.softener.BedFinding;
import dev.brinebook.wording.Message;
import java.util.List;

@About("Something wrong with the bed for what it is asked to do.")
public record BedFindingLine(
        @Property(value = "Stable code.", example = "\"bedTooShallow\"") BedFinding code,
        @Property(value = "What is wrong, in a sentence.", example = "\"The backwash lifts the bed too little.\"")
        Message message) {

    static BedFindingLine of(BedFinding finding, BackwashFlow flow, AnswerUnits units) {
        Message sentence = units.saying(finding);
        return new BedFindingLine(finding, finding == BedFinding.BACKWASH_TOO_WEAK
                ? Message.joined(" ", List.of(sentence, flow.toRaise().cure())) : sentence);
    }
}
