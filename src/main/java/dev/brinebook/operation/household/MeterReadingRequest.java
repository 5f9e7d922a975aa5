package dev.brinebook.operation.household;

import dev.brinebook.api.About;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.household.Meter;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;

@About("One reading of a meter.")
public record MeterReadingRequest(
        @Property(value = "When, as ISO 8601 has it: a date, which is its midnight, a local time, or a time with its offset"
                + " from universal time. For a volume, when its interval began.", required = true, maxItems = 35,
                example = "\"2026-01-01T07:00\"") String at,
        @Property(value = "What the register showed, or what passed in the interval, in the unit of the meter.",
                required = true, min = 0, max = Meter.MAX_READING, example = "15230.5") BigDecimal value) implements Checked {

    @Override
    public void check(Violations violations) {
        if (at != null && WrittenTime.parse(at).isEmpty()) {
            violations.add("at", Code.UNKNOWN_VALUE, Message.of("must be an ISO 8601 date or time from 1900 to 2199 in"
                    + " whole seconds, such as 2026-03-01, 2026-03-01T14:00 or 2026-03-01T14:00+01:00"));
        }
    }
}
