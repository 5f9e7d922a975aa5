// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import java.time.DayOfWeek;
import java.util.OptionalDouble;

/**
 * A meter that waits for the night: it regenerates when no more than the reserve is left by its own count.
 *
 * <p>A reserve as large as the meter volume is a setting one can meet: it regenerates every night, used or not.
 *
 * @param meterVolumeLitres what it counts down from
 * @param reserveLitres kept for the day after the count is read, 0 for none
 * @param overrideDays longest time between two, or {@link Policy#NO_OVERRIDE}
 */
public record MeteredDelayed(double meterVolumeLitres, double reserveLitres, int overrideDays) implements Policy {

    /** Refuses a meter out of range and a negative reserve. */
    public MeteredDelayed {
        Policy.checkedMeter(meterVolumeLitres);
        Guard.within(reserveLitres, 0, MAX_METER_LITRES, "reserveLitres");
        Policy.checkedOverride(overrideDays);
    }

    @Override
    public double callLitres() {
        return meterVolumeLitres - reserveLitres;
    }

    @Override
    public OptionalDouble fixedReserveLitres() {
        return OptionalDouble.of(reserveLitres);
    }

    @Override
    public Policy withReserve(double litres) {
        return new MeteredDelayed(meterVolumeLitres, litres, overrideDays);
    }

    @Override
    public boolean callsTonight(double litresSinceLast, int nightsSinceLast, DayOfWeek morrow, WeekdayHistory history) {
        return meterVolumeLitres - litresSinceLast <= reserveLitres + ROUNDING_SHARE * meterVolumeLitres;
    }

    @Override
    public Policy withOverride(int days) {
        return new MeteredDelayed(meterVolumeLitres, reserveLitres, days);
    }

    @Override
    public Policy withMeter(double litres) {
        return new MeteredDelayed(litres, reserveLitres, overrideDays);
    }

    @Override
    public Policy scaledTo(double factor) {
        return new MeteredDelayed(meterVolumeLitres, Math.min(MAX_METER_LITRES, factor * reserveLitres), overrideDays);
    }

    @Override
    public Reason reason() {
        return Reason.METER;
    }
}
