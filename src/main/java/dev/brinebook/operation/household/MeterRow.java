package dev.brinebook.operation.household;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.household.RowNote;
import dev.brinebook.wording.Message;

@About("A row of the readings that could not be taken as it was.")
public record MeterRow(
        @Property(value = "Where it stands: the line of a file, the header being line 1, or the place in the list of readings,"
                + " the first being 1.", min = 1, example = "27") Integer row,
        @Property("Stable code of what was wrong.") RowNote.Code code,
        @Property("What was done: repaired, skipped, or taken with the use before it lost.") RowNote.Action action,
        @Property(value = "The same as a sentence.", example = "\"the register started again from 0\"") Message message) {

    static MeterRow of(RowNote note, AnswerUnits units) {
        return new MeterRow(note.row(), note.code(), note.code().action(), units.saying(note.code()));
    }
}
