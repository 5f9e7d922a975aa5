// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.household.RowNote;
import dev.brinebook.text.Message;

@SchemaDescription("A row of the readings that needed a repair or was skipped.")
public record MeterRow(
        @Basis(formula = "formula.household.positionRowInput", source = "REQUEST")
        @Property(value = "Position: the line in the file, with the header as line 1, or the "
                + "position in the list of readings, from 1.", min = 1, example = "27") Integer row,
        @Property("Stable code of the problem.") RowNote.Code code,
        @Property("Action taken: repaired, skipped, or kept with the use before it unknown.") RowNote.Action action,
        @Property(value = "The problem as a sentence.", example = "\"The register started again from 0.\"") Message message) {

    static MeterRow of(RowNote note, AnswerUnits units) {
        return new MeterRow(note.row(), note.code(), note.code().action(), units.saying(note.code()));
    }
}
