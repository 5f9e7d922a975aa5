// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import java.time.DayOfWeek;

/**
 * When a controller regenerates. Controllers know litres and nights, never the bed: a meter set too high counts on
 * capacity that is exhausted, and a clock knows nothing of use.
 *
 * <p>Every policy may carry a day override: regenerate after a number of nights since the last regeneration, because an
 * idle bed fouls and packs.
 */
public sealed interface Policy permits ClockEveryDays, ClockOnWeekdays, MeteredDelayed,
        MeteredByHistory, MeteredImmediate, TwinAlternating {

    /** No day override. */
    int NO_OVERRIDE = 0;
    /** Override where use is occasional. Source: [CP-CYCLE] 7 to 14 days. */
    int DEFAULT_OVERRIDE_DAYS = 14;
    int MAX_INTERVAL_DAYS = 365;
    double MIN_METER_LITRES = 1;
    double MAX_METER_LITRES = 10_000_000;
    /** Litres are counted by adding days up, so a meter is taken as run out within this share of its volume. */
    double ROUNDING_SHARE = 1e-9;

    /** Nights after the last regeneration when one is due in any case, or {@link #NO_OVERRIDE}. */
    int overrideDays();

    /** What the meter counts down from after a regeneration; 0 without a meter. */
    double meterVolumeLitres();

    /**
     * Whether the rule itself, leaving the override aside, regenerates in the night now beginning.
     *
     * @param litresSinceLast softened since the last regeneration
     * @param nightsSinceLast nights since the last regeneration, this one included
     * @param morrow weekday of the date on which the regeneration would run, after midnight
     * @param history use of the same weekdays before, as far as the controller has seen it
     */
    boolean callsTonight(double litresSinceLast, int nightsSinceLast, DayOfWeek morrow, WeekdayHistory history);

    /** The same policy with another day override. */
    Policy withOverride(int days);

    /** The same policy where a day uses {@code factor} times as much: what is kept back for a day goes with it. */
    default Policy scaledTo(double factor) {
        return this;
    }

    /** The same policy with a meter that counts down from another volume; a clock stays as it is. */
    Policy withMeter(double litres);

    /** What the rule itself gives as its reason. */
    Reason reason();

    /** Whether a clock starts the regenerations, whatever was used. */
    default boolean byClock() {
        return this instanceof ClockEveryDays || this instanceof ClockOnWeekdays;
    }

    /** Whether the meter starts by day, at once, when its count reaches zero. */
    default boolean startsAtOnce() {
        return this instanceof MeteredImmediate || this instanceof TwinAlternating;
    }

    /** Whether drawing {@code litres} more brings the meter's count to zero. */
    default boolean runsOutWithin(double litres, double litresSinceLast) {
        return litres >= meterVolumeLitres() - litresSinceLast - ROUNDING_SHARE * meterVolumeLitres();
    }

    /** Whether the override regenerates in the night now beginning. */
    default boolean overridesTonight(int nightsSinceLast) {
        return overrideDays() != NO_OVERRIDE && nightsSinceLast >= overrideDays();
    }

    /** {@code overrideDays} if it is none or a number of days allowed. */
    static int checkedOverride(int overrideDays) {
        return Guard.within(overrideDays, NO_OVERRIDE, MAX_INTERVAL_DAYS, "overrideDays");
    }

    /** The volume nearest to {@code litres} that a meter can count down from. */
    static double nearestMeterLitres(double litres) {
        return Math.max(MIN_METER_LITRES, Math.min(MAX_METER_LITRES, litres));
    }

    /** {@code meterVolumeLitres} if it lies in the range allowed. */
    static double checkedMeter(double meterVolumeLitres) {
        return Guard.within(meterVolumeLitres, MIN_METER_LITRES, MAX_METER_LITRES, "meterVolumeLitres");
    }
}
