// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.household.MeterReading;
import dev.brinebook.household.RowNote;
import dev.brinebook.text.Message;
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

    /** A row by its position, and its error. */
    Message message(RowNote note, AnswerUnits units) {
        return place.isEmpty() ? Message.of("readRows.line", note.row(), units.saying(note.code()))
                : Message.of("readRows.reading", note.row(), units.saying(note.code()));
    }
}
