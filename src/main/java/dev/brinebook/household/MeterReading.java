// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Objects;
import java.util.Optional;

/**
 * One reading as it was written down.
 *
 * @param row its place: the line of a file, or the position in a list, the first being 1
 * @param at time on the clock, in whole seconds; a date alone is its midnight
 * @param offset from universal time, where it was written down
 * @param value in the unit of the meter
 */
public record MeterReading(int row, LocalDateTime at, Optional<ZoneOffset> offset, double value) {

    public MeterReading {
        Objects.requireNonNull(at, "at");
        Objects.requireNonNull(offset, "offset");
        Guard.within(at.getYear(), Days.MIN_YEAR, Days.MAX_YEAR, "year");
        Guard.within(at.getNano(), 0, 0, "nanoseconds");
        Guard.within(value, 0, Meter.MAX_READING, "value");
    }
}
