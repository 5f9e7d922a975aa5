// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import java.time.DayOfWeek;

/**
 * Two beds, one in service and one in reserve: when the meter of the one in service reaches zero the other takes over, and
 * the first is regenerated while it runs. Nothing is kept back and no hard water passes, unless a bed is exhausted before the
 * other is ready.
 *
 * @param meterVolumeLitres what the meter of each bed counts down from
 * @param overrideDays longest time that a bed is in service, or {@link Policy#NO_OVERRIDE}; the override waits for the night
 */
public record TwinAlternating(double meterVolumeLitres, int overrideDays) implements Policy {

    /** Refuses a meter out of range. */
    public TwinAlternating {
        Policy.checkedMeter(meterVolumeLitres);
        Policy.checkedOverride(overrideDays);
    }

    @Override
    public boolean startsAtOnce() {
        return true;
    }

    @Override
    public boolean softensMeanwhile() {
        return true;
    }

    @Override
    public boolean callsTonight(double litresSinceLast, int nightsSinceLast, DayOfWeek morrow, WeekdayHistory history) {
        return false;
    }

    @Override
    public Policy withOverride(int days) {
        return new TwinAlternating(meterVolumeLitres, days);
    }

    @Override
    public Policy withMeter(double litres) {
        return new TwinAlternating(litres, overrideDays);
    }

    @Override
    public Reason reason() {
        return Reason.METER;
    }
}
