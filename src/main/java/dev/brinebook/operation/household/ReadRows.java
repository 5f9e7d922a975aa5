package dev.brinebook.operation.household;

import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.household.MeterReading;
import dev.brinebook.household.RowNote;
import dev.brinebook.wording.Message;
import java.util.List;

/**
 * Readings as they came.
 *
 * @param place JSON pointer to them, empty when the body is a file
 * @param readings those that can be read
 * @param unread rows that cannot
 */
record ReadRows(String place, List<MeterReading> readings, List<RowNote> unread) {

    int count() {
        return readings.size() + unread.size();
    }

    /** A row by its place, and what is wrong with it. */
    Message told(RowNote note, AnswerUnits units) {
        return place.isEmpty() ? Message.of("line {0}: {1}", note.row(), units.saying(note.code()))
                : Message.of("reading {0}: {1}", note.row(), units.saying(note.code()));
    }
}
