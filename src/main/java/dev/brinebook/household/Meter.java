// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import java.time.Duration;
import java.time.ZoneId;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A water meter: what its readings do not show by themselves.
 *
 * @param kind what a reading counts
 * @param zone where the clock on the wall is, for readings without offset and for where days begin
 * @param litresPerUnit litres in one unit of a reading
 * @param rolloverAt the value at which a register starts again from 0, in its unit; absent when it is not known
 * @param interval how long a volume takes; absent when it is to be found from the readings
 */
public record Meter(Kind kind, ZoneId zone, double litresPerUnit, OptionalDouble rolloverAt,
        Optional<Duration> interval) {

    public static final double MAX_READING = 1e9;
    /** Three years of readings every hour, or a month of readings every minute and a half. */
    public static final int MAX_READINGS = 30_000;
    public static final int MAX_INTERVAL_MINUTES = 1_440;

    /** What a reading counts. */
    public enum Kind {
        /** All that ever passed: the use is the difference of two readings. */
        REGISTER,
        /** What passed in the interval that begins at the time of the reading. */
        VOLUME
    }

    public Meter {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(zone, "zone");
        Guard.positive(litresPerUnit, "litresPerUnit");
        rolloverAt.ifPresent(at -> Guard.positive(at, "rolloverAt"));
        interval.ifPresent(length -> Guard.positive(length.toSeconds(), "interval"));
    }

    /**
     * Whether a household can use this volume in this time.
     * <pre>V &lt;= Q t   and   V &lt;= D max(1, t / 1 day)</pre>
     * V: litres; t: time; Q: {@link Demand#MAX_FLOW_LITRES_PER_MINUTE}; D: {@link Demand#MAX_MEASURED_DAY_LITRES}. Far
     * above any household: it finds slips of the pen, not high use.
     */
    static boolean plausible(double litres, Duration time) {
        double minutes = time.toSeconds() / 60.0;
        double days = minutes / Duration.ofDays(1).toMinutes();
        return litres <= Demand.MAX_FLOW_LITRES_PER_MINUTE * minutes
                && litres <= Demand.MAX_MEASURED_DAY_LITRES * Math.max(1, days);
    }
}
