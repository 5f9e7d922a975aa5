// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.regeneration.BackwashFlow;
import dev.brinebook.softener.BedFinding;
import dev.brinebook.text.Message;
import java.util.List;

@SchemaDescription("A problem of the bed with the flows required.")
public record BedFindingLine(
        @Property(value = "Stable code.", example = "\"bedTooShallow\"") BedFinding code,
        @Property(value = "The problem, in a sentence.", example = "\"The backwash does not lift the bed enough.\"")
        Message message) {

    static BedFindingLine of(BedFinding finding, BackwashFlow flow, AnswerUnits units) {
        Message sentence = units.saying(finding);
        return new BedFindingLine(finding, finding == BedFinding.BACKWASH_TOO_WEAK
                ? Message.sentences(List.of(sentence, flow.toRaise().cure())) : sentence);
    }
}
