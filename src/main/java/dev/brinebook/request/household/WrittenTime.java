// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.household;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A time as it was written down.
 *
 * @param local on the clock
 * @param offset from universal time, where it was written
 */
public record WrittenTime(LocalDateTime local, Optional<ZoneOffset> offset) {

    static final int MIN_YEAR = 1900;
    static final int MAX_YEAR = 2199;

    private static final Pattern DATE = Pattern.compile("\\d{4}-\\d\\d-\\d\\d");
    private static final Pattern LOCAL = Pattern.compile("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d(:\\d\\d)?");
    private static final Pattern WITH_OFFSET = Pattern.compile(LOCAL + "(Z|[+-]\\d\\d:\\d\\d)");

    /** ISO 8601: a date, a local time or a time with offset, in whole seconds; empty for anything else. */
    public static Optional<WrittenTime> parse(String text) {
        try {
            if (DATE.matcher(text).matches()) {
                return within(new WrittenTime(LocalDate.parse(text).atStartOfDay(), Optional.empty()));
            }
            if (LOCAL.matcher(text).matches()) {
                return within(new WrittenTime(LocalDateTime.parse(text), Optional.empty()));
            }
            if (WITH_OFFSET.matcher(text).matches()) {
                OffsetDateTime time = OffsetDateTime.parse(text);
                return within(new WrittenTime(time.toLocalDateTime(), Optional.of(time.getOffset())));
            }
        } catch (DateTimeException noSuchTime) {
            return Optional.empty();
        }
        return Optional.empty();
    }

    private static Optional<WrittenTime> within(WrittenTime time) {
        int year = time.local().getYear();
        return year >= MIN_YEAR && year <= MAX_YEAR ? Optional.of(time) : Optional.empty();
    }
}
