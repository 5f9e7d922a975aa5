// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.household;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.household.Meter;
import dev.brinebook.household.MeterReading;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

@SchemaDescription("One reading of a meter.")
public record MeterReadingRequest(
        @Property(value = "Time of the reading in ISO 8601: a date (its midnight), a local time, or a "
                + "time with UTC offset. For a volume, the start of its interval.", required = true, maxItems = 35,
                example = "\"2026-01-01T07:00\"") String at,
        @Property(value = "Register reading, or volume used in the interval, in the unit of the meter.",
                required = true, min = 0, max = Meter.MAX_READING, example = "15230.5") BigDecimal value) implements Checked {

    @Override
    public void check(Violations violations) {
        if (at != null && WrittenTime.parse(at).isEmpty()) {
            violations.add("at", Code.UNKNOWN_VALUE, Message.of("problem.household.mustIso8601Date"));
        }
    }

    /** The reading, which is the one in this place, the first being 1. */
    public MeterReading toDomain(int row) {
        WrittenTime time = WrittenTime.parse(at).orElseThrow();
        return new MeterReading(row, time.local(), time.offset(), value.doubleValue());
    }
}
