// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.household;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.household.Meter;
import dev.brinebook.household.Meter.Kind;
import dev.brinebook.quantity.VolumeUnit;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.time.Duration;
import java.time.ZoneId;
import java.util.Optional;
import java.util.OptionalDouble;

@SchemaDescription("Properties of a water meter that its readings do not show.")
public record MeterRequest(
        @Property(value = "The unit of the readings.", required = true, example = "\"gal\"") VolumeUnit unit,
        @Property(value = "Time zone of the meter, by its IANA name. Times without offset are local "
                + "times there, and days begin at its midnight.", maxItems = 60, defaultCode = MeterRequest.UTC,
                example = "\"America/Chicago\"") String timeZone,
        @Property(value = "Value at which the register rolls over to 0, in its unit, such as 100000 for five digits.",
                min = 0, aboveMin = true, max = Meter.MAX_READING, example = "100000",
                fallback = "the next power of ten, 1,000 or more, if the register drops from above 90 % of it")
        BigDecimal rolloverAt,
        @Property(value = "Length of the interval of a volume.", min = 1, max = Meter.MAX_INTERVAL_MINUTES, unit = "minutes",
                example = "60", fallback = "the most frequent time between readings") Integer intervalMinutes)
        implements Checked {

    public static final String UTC = "UTC";

    @Override
    public void check(Violations at) {
        if (timeZone != null && !ZoneId.getAvailableZoneIds().contains(timeZone)) {
            at.add("timeZone", Code.UNKNOWN_VALUE, Message.of("problem.household.mustNameIanaTime"));
        }
    }

    /** What a meter of this kind has no use for. */
    public void check(Kind kind, Violations at) {
        if (kind == Kind.REGISTER && intervalMinutes != null) {
            at.add("intervalMinutes", Code.INCONSISTENT, Message.of("problem.household.omitUnlessKindVolume"));
        }
        if (kind == Kind.VOLUME && rolloverAt != null) {
            at.add("rolloverAt", Code.INCONSISTENT, Message.of("problem.household.omitUnlessKindRegister"));
        }
    }

    /** The meter; {@code pointer} is where the request has it. */
    public Meter toDomain(Kind kind, String pointer, Explanation explanation) {
        explanation.assume(timeZone == null ? Resolved.ofCode(pointer + "/timeZone", UTC).byDefault("OWN-ASSUMPTION")
                : Resolved.ofCode(pointer + "/timeZone", timeZone));
        if (kind == Kind.REGISTER) {
            explanation.assume(rolloverAt == null
                    ? Resolved.inWords(pointer + "/rolloverAt", Message.of("assumed.household.nextPowerTenLeast"))
                    .byDefault("CP-METER-READING") : Resolved.of(pointer + "/rolloverAt", rolloverAt, unit.symbol()));
        }
        return new Meter(kind, ZoneId.of(timeZone == null ? UTC : timeZone), unit.definition().factor(),
                rolloverAt == null ? OptionalDouble.empty() : OptionalDouble.of(rolloverAt.doubleValue()),
                Optional.ofNullable(intervalMinutes).map(Duration::ofMinutes));
    }
}
