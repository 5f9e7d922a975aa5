// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.household.Meter;
import dev.brinebook.household.MeterHistory;
import dev.brinebook.household.RowNote;
import dev.brinebook.household.RowNote.Action;
import java.util.List;

@SchemaDescription("Period covered by the readings, and the repairs made to them.")
public record MeterCoverage(
        @Basis(formula = "formula.household.numberRowsReceived", source = "REQUEST")
        @Property(value = "Readings received.", min = 1, example = "366") Integer readings,
        @Basis(formula = "meter.numberRowsKindWhere", source = "CP-METER-READING")
        @Property(value = "Rows skipped.", min = 0, example = "2") Integer rowsSkipped,
        @Basis(formula = "meter.numberRowsKindWhere", source = "CP-METER-READING")
        @Property(value = "Rows repaired.", min = 0, example = "1") Integer rowsRepaired,
        @Basis(formula = "meter.numberRowsKindWhere", source = "CP-METER-READING")
        @Property(value = "Rows before which the use is unknown.", min = 0, example = "0") Integer rowsUseLost,
        @Basis(formula = "formula.household.datesFirstWholeDay", source = "CP-METER-READING")
        @Property(value = "Days from the first to the last whole day.", min = 1, unit = "days", example = "365") Integer days,
        @Basis(formula = "meter.datesBetweenFirstLast", source = "CP-METER-READING")
        @Property(value = "Missing days among them.", min = 0, unit = "days", example = "5") Integer missingDays,
        @Property(value = "The missing periods.", maxItems = Meter.MAX_READINGS) List<MeterGapAnswer> gaps,
        @Property(value = "Rows that were repaired, skipped or left without use, by position. At most 200.",
                maxItems = MeterCoverage.MAX_ROWS) List<MeterRow> rows,
        @Property(value = "Number of such rows not listed.", optional = "when all are listed", min = 1, example = "3")
        Integer rowsOmitted) {

    static final int MAX_ROWS = 200;

    static MeterCoverage of(int readings, List<RowNote> notes, MeterHistory history, AnswerUnits units) {
        int omitted = notes.size() - MAX_ROWS;
        return new MeterCoverage(readings, count(notes, Action.SKIPPED), count(notes, Action.REPAIRED),
                count(notes, Action.USE_LOST), (int) history.spanDays(), history.days().orElseThrow().missing().size(),
                history.gaps().stream().map(gap -> MeterGapAnswer.of(gap, units)).toList(),
                notes.stream().limit(MAX_ROWS).map(note -> MeterRow.of(note, units)).toList(), omitted > 0 ? omitted : null);
    }

    private static int count(List<RowNote> notes, Action action) {
        return (int) notes.stream().filter(note -> note.code().action() == action).count();
    }
}
