// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.household.RowNote.Code;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** Puts readings in the order of time, past what clocks and people do to them. */
final class ReadingTimes {

    private ReadingTimes() {
    }

    /**
     * The readings in order, one for each moment, with corrections recorded in {@code notes}.
     *
     * <p>A time that the clock showed twice is the earlier one, unless the row before is not earlier than that. A time that
     * the clock never showed is no reading. Rows that run from the newest to the oldest are turned round first, so that
     * the row before is the earlier one in either.
     *
     * <p>Source: [IANA-TZ] for the clock changes.
     */
    static List<TimedReading> inOrder(List<MeterReading> readings, ZoneId zone, List<RowNote> notes) {
        List<MeterReading> rows = new ArrayList<>(readings);
        if (newestFirst(rows)) {
            Collections.reverse(rows);
            notes.add(new RowNote(rows.get(rows.size() - 1).row(), Code.NEWEST_FIRST));
        }
        List<TimedReading> timed = new ArrayList<>();
        Instant latest = Instant.MIN;
        for (MeterReading row : rows) {
            Instant moment = moment(row, zone, latest, notes);
            if (moment == null) {
                notes.add(new RowNote(row.row(), Code.NONEXISTENT_TIME));
                continue;
            }
            if (moment.isBefore(latest)) {
                notes.add(new RowNote(row.row(), Code.OUT_OF_ORDER));
            } else {
                latest = moment;
            }
            timed.add(new TimedReading(row.row(), moment, row.value()));
        }
        timed.sort(Comparator.comparing(TimedReading::moment));
        return withoutRepetition(timed, notes);
    }

    private static boolean newestFirst(List<MeterReading> rows) {
        int falls = 0;
        for (int i = 1; i < rows.size(); i++) {
            falls += Integer.signum(rows.get(i - 1).at().compareTo(rows.get(i).at()));
        }
        return falls > 0;
    }

    /** The moment of a row, null when there was none. */
    private static Instant moment(MeterReading row, ZoneId zone, Instant latest, List<RowNote> notes) {
        LocalDateTime at = row.at();
        if (row.offset().isPresent()) {
            return at.toInstant(row.offset().get());
        }
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(at);
        if (offsets.isEmpty()) {
            return null;
        }
        Instant earlier = at.toInstant(offsets.get(0));
        if (offsets.size() == 1) {
            return earlier;
        }
        boolean taken = !latest.isBefore(earlier);
        notes.add(new RowNote(row.row(), taken ? Code.AMBIGUOUS_TIME_LATER : Code.AMBIGUOUS_TIME_EARLIER));
        return taken ? at.toInstant(offsets.get(1)) : earlier;
    }

    private static List<TimedReading> withoutRepetition(List<TimedReading> sorted, List<RowNote> notes) {
        List<TimedReading> kept = new ArrayList<>();
        int start = 0;
        while (start < sorted.size()) {
            TimedReading first = sorted.get(start);
            int end = start + 1;
            boolean agree = true;
            while (end < sorted.size() && sorted.get(end).moment().equals(first.moment())) {
                agree &= sorted.get(end).value() == first.value();
                end++;
            }
            for (int i = agree ? start + 1 : start; i < end && end > start + 1; i++) {
                notes.add(new RowNote(sorted.get(i).row(), agree ? Code.DUPLICATE : Code.CONFLICT));
            }
            if (agree) {
                kept.add(first);
            }
            start = end;
        }
        return kept;
    }
}
