// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import java.time.DayOfWeek;
import java.util.OptionalInt;

/**
 * A time clock that regenerates after a fixed number of nights, whatever was used.
 *
 * @param days nights between two regenerations
 * @param overrideDays longest time between two, or {@link Policy#NO_OVERRIDE}; only one shorter than {@code days} acts
 */
public record ClockEveryDays(int days, int overrideDays) implements Policy {

    /** Refuses an interval out of range. */
    public ClockEveryDays {
        Guard.within(days, 1, MAX_INTERVAL_DAYS, "days");
        Policy.checkedOverride(overrideDays);
    }

    /** The same without an override. */
    public ClockEveryDays(int days) {
        this(days, NO_OVERRIDE);
    }

    @Override
    public boolean byClock() {
        return true;
    }

    @Override
    public OptionalInt everyDays() {
        return OptionalInt.of(days);
    }

    @Override
    public int clockNightsAfter(DayOfWeek date) {
        return days;
    }

    @Override
    public double meanClockNights() {
        return days;
    }

    @Override
    public double meterVolumeLitres() {
        return 0;
    }

    @Override
    public boolean callsTonight(double litresSinceLast, int nightsSinceLast, DayOfWeek morrow, WeekdayHistory history) {
        return nightsSinceLast >= days;
    }

    @Override
    public Policy withOverride(int nights) {
        return new ClockEveryDays(days, nights);
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
