// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import java.time.DayOfWeek;
import java.util.Objects;

/**
 * A delayed meter whose reserve follows what the household used on the same weekday before: the largest or the mean of the
 * last four.
 *
 * @param meterVolumeLitres what it counts down from
 * @param of what it makes of the four days
 * @param firstReserveLitres kept back until it has seen four days of the weekday that follows
 * @param overrideDays longest time between two, or {@link Policy#NO_OVERRIDE}
 */
public record MeteredByHistory(double meterVolumeLitres, Of of, double firstReserveLitres, int overrideDays)
        implements Policy {

    /** What the reserve is taken from the last four days of a weekday. */
    public enum Of {
        LARGEST, MEAN
    }

    /** Refuses a meter out of range and a negative reserve. */
    public MeteredByHistory {
        Policy.checkedMeter(meterVolumeLitres);
        Objects.requireNonNull(of, "of");
        Guard.within(firstReserveLitres, 0, MAX_METER_LITRES, "firstReserveLitres");
        Policy.checkedOverride(overrideDays);
    }

    @Override
    public double callLitres() {
        return meterVolumeLitres - firstReserveLitres;
    }

    @Override
    public boolean followsWeekdays() {
        return true;
    }

    @Override
    public boolean callsTonight(double litresSinceLast, int nightsSinceLast, DayOfWeek morrow, WeekdayHistory history) {
        double reserve = !history.knows(morrow) ? firstReserveLitres
                : of == Of.LARGEST ? history.largestLitres(morrow) : history.meanLitres(morrow);
        return meterVolumeLitres - litresSinceLast <= reserve + ROUNDING_SHARE * meterVolumeLitres;
    }

    @Override
    public Policy withOverride(int days) {
        return new MeteredByHistory(meterVolumeLitres, of, firstReserveLitres, days);
    }

    @Override
    public Policy withMeter(double litres) {
        return new MeteredByHistory(litres, of, firstReserveLitres, overrideDays);
    }

    @Override
    public Policy scaledTo(double factor) {
        return new MeteredByHistory(meterVolumeLitres, of, Math.min(MAX_METER_LITRES, factor * firstReserveLitres), overrideDays);
    }

    @Override
    public Reason reason() {
        return Reason.METER;
    }
}
