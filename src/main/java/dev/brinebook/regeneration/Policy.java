// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import java.time.DayOfWeek;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;

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
        return false;
    }

    /** Days between the regenerations of a clock that counts days. */
    default OptionalInt everyDays() {
        return OptionalInt.empty();
    }

    /** Weekdays of a clock that regenerates on chosen ones; none otherwise. */
    default Set<DayOfWeek> weekdays() {
        return Set.of();
    }

    /** Nights from a regeneration on the date of a weekday to the next that a clock starts, leaving the override aside; 0 without one. */
    default int clockNightsAfter(DayOfWeek date) {
        return 0;
    }

    /** Mean nights between the regenerations that a clock starts, leaving the override aside; 0 without one. */
    default double meanClockNights() {
        return 0;
    }

    /** Litres since the last regeneration at which the meter calls; a reserve that follows the weekday counts with its first one. */
    default double callLitres() {
        return meterVolumeLitres();
    }

    /** What is kept back each day alike, of a meter that waits for the night with a volume in reserve. */
    default OptionalDouble fixedReserveLitres() {
        return OptionalDouble.empty();
    }

    /** The same policy with another volume in reserve; one without such a volume stays as it is. */
    default Policy withReserve(double litres) {
        return this;
    }

    /** Whether it decides by the use of the same weekday before. */
    default boolean followsWeekdays() {
        return false;
    }

    /** Whether the meter starts by day, at once, when its count reaches zero. */
    default boolean startsAtOnce() {
        return false;
    }

    /** Whether another bed softens while one regenerates. */
    default boolean softensMeanwhile() {
        return false;
    }

    /** Whether drawing {@code litres} more brings the meter's count to zero. */
    default boolean runsOutWithin(double litres, double litresSinceLast) {
        return runsOut(meterVolumeLitres(), litres, litresSinceLast);
    }

    /** The same of a meter by its volume. */
    static boolean runsOut(double meterLitres, double litres, double litresSinceLast) {
        return litres >= meterLitres - litresSinceLast - ROUNDING_SHARE * meterLitres;
    }

    /** Whether the override regenerates in the night now beginning. */
    default boolean overridesTonight(int nightsSinceLast) {
        return overrides(overrideDays(), nightsSinceLast);
    }

    /** The same of an override by its days. */
    static boolean overrides(int overrideDays, int nightsSinceLast) {
        return overrideDays != NO_OVERRIDE && nightsSinceLast >= overrideDays;
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
