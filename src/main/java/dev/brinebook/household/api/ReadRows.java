package dev.brinebook.household.api;

import dev.brinebook.household.MeterReading;
import dev.brinebook.household.RowNote;
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

    /** How a row is called where it stands. */
    String name() {
        return place.isEmpty() ? "line" : "reading";
    }
}
