// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import java.time.DayOfWeek;

/**
 * A meter that regenerates the moment its count reaches zero, by day as by night; hard water passes while it runs.
 *
 * @param meterVolumeLitres what it counts down from
 * @param overrideDays longest time between two, or {@link Policy#NO_OVERRIDE}; the override waits for the night
 */
public record MeteredImmediate(double meterVolumeLitres, int overrideDays) implements Policy {

    /** Refuses a meter out of range. */
    public MeteredImmediate {
        Policy.checkedMeter(meterVolumeLitres);
        Policy.checkedOverride(overrideDays);
    }

    @Override
    public boolean startsAtOnce() {
        return true;
    }

    @Override
    public boolean callsTonight(double litresSinceLast, int nightsSinceLast, DayOfWeek morrow, WeekdayHistory history) {
        return false;
    }

    @Override
    public Policy withOverride(int days) {
        return new MeteredImmediate(meterVolumeLitres, days);
    }

    @Override
    public Policy withMeter(double litres) {
        return new MeteredImmediate(litres, overrideDays);
    }

    @Override
    public Reason reason() {
        return Reason.METER;
    }
}
