// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import java.time.DayOfWeek;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * A time clock that regenerates on chosen weekdays, whatever was used.
 *
 * @param weekdays weekdays on whose date it runs, early in the morning; at least one
 * @param overrideDays longest time between two, or {@link Policy#NO_OVERRIDE}
 */
public record ClockOnWeekdays(Set<DayOfWeek> weekdays, int overrideDays) implements Policy {

    private static final DayOfWeek[] DAYS = DayOfWeek.values();

    /** Keeps its own copy, from Monday to Sunday. */
    public ClockOnWeekdays {
        if (weekdays.isEmpty()) {
            throw new IllegalArgumentException("weekdays must name at least one");
        }
        weekdays = Collections.unmodifiableSet(EnumSet.copyOf(weekdays));
        Policy.checkedOverride(overrideDays);
    }

    /** The same without an override. */
    public ClockOnWeekdays(Set<DayOfWeek> weekdays) {
        this(weekdays, NO_OVERRIDE);
    }

    @Override
    public boolean byClock() {
        return true;
    }

    @Override
    public int clockNightsAfter(DayOfWeek date) {
        int nights = DAYS.length;
        for (DayOfWeek weekday : weekdays) {
            int ahead = Math.floorMod(weekday.ordinal() - date.ordinal() - 1, DAYS.length) + 1;
            nights = Math.min(nights, ahead);
        }
        return nights;
    }

    @Override
    public double meanClockNights() {
        return (double) DAYS.length / weekdays.size();
    }

    @Override
    public double meterVolumeLitres() {
        return 0;
    }

    @Override
    public boolean callsTonight(double litresSinceLast, int nightsSinceLast, DayOfWeek morrow, WeekdayHistory history) {
        return weekdays.contains(morrow);
    }

    @Override
    public Policy withOverride(int nights) {
        return new ClockOnWeekdays(weekdays, nights);
    }

    @Override
    public Policy withMeter(double litres) {
        return this;
    }

    @Override
    public Reason reason() {
        return Reason.CLOCK;
    }
}
