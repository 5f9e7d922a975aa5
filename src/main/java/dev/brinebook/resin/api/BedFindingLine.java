package dev.brinebook.resin.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.softener.BedFinding;
import dev.brinebook.wording.Message;

@About("Something wrong with the bed for what it is asked to do.")
public record BedFindingLine(
        @Property(value = "Stable code.", example = "\"bedTooShallow\"") BedFinding code,
        @Property(value = "What is wrong, in a sentence.", example = "\"The backwash lifts the bed too little.\"")
        Message message) {

    static BedFindingLine of(BedFinding finding, AnswerUnits units) {
        return new BedFindingLine(finding, units.saying(finding));
    }
}
