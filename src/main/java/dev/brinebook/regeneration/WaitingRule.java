// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import java.time.DayOfWeek;
import java.util.Arrays;

/**
 * When a night-started controller regenerates and when its bed is exhausted, both in litres since the last regeneration: a
 * regeneration restores the whole bed, so nothing else matters.
 *
 * @param callLitres the count from which it calls, infinite for a clock
 * @param bedLitres what the bed really softens, infinite where the water loads nothing
 * @param roundingLitres less than this is rounding
 * @param longestNights nights after which it regenerates in any case, Monday's cycle first; 0 for never
 * @param byClock whether the nights of the clock end a cycle rather than its override, likewise
 */
record WaitingRule(double callLitres, double bedLitres, double roundingLitres, int[] longestNights, boolean[] byClock) {

    /** The longest cycle that is followed, some eleven years: less than a tenth of a regeneration a year is of no interest. */
    static final int MOST_NIGHTS = 4_000;

    private static final int WEEKDAYS = 7;

    /** The rule of a policy that waits for the night; its reserve must not depend on the days before. */
    static WaitingRule of(Policy policy, double hardnessMilligramsPerLitre, double capacityGrams) {
        double bed = bedLitres(hardnessMilligramsPerLitre, capacityGrams);
        if (!policy.byClock()) {
            return delayed(policy.meterVolumeLitres(), policy.callLitres(), bed, policy.overrideDays());
        }
        int[] longest = new int[WEEKDAYS];
        boolean[] byClock = new boolean[WEEKDAYS];
        for (int start = 0; start < WEEKDAYS; start++) {
            int clock = policy.clockNightsAfter(DayOfWeek.of(start + 1));
            int override = policy.overrideDays();
            byClock[start] = override == Policy.NO_OVERRIDE || clock <= override;
            longest[start] = byClock[start] ? clock : override;
        }
        return new WaitingRule(Double.POSITIVE_INFINITY, bed, 0, longest, byClock);
    }

    /** What a bed softens; infinite where the water loads nothing. */
    static double bedLitres(double hardnessMilligramsPerLitre, double capacityGrams) {
        return hardnessMilligramsPerLitre > 0 ? 1000 * capacityGrams / hardnessMilligramsPerLitre : Double.POSITIVE_INFINITY;
    }

    /** What a bed softens after a regeneration. */
    static double bedLitres(double hardnessMilligramsPerLitre, Regeneration regeneration) {
        return bedLitres(hardnessMilligramsPerLitre, regeneration.capacityGrams());
    }

    /** Whether the reserve of a delayed meter is as large as what it counts. */
    static boolean callsEveryNight(double meterLitres, double callLitres) {
        return !(callLitres > Policy.ROUNDING_SHARE * meterLitres);
    }

    /** The rule of a delayed meter; a reserve as large as the meter volume calls every night, used or not. */
    static WaitingRule delayed(double meterLitres, double callLitres, double bedLitres, int overrideDays) {
        double rounding = Policy.ROUNDING_SHARE * meterLitres;
        boolean everyNight = callsEveryNight(meterLitres, callLitres);
        int[] longest = new int[WEEKDAYS];
        Arrays.fill(longest, everyNight ? 1 : overrideDays);
        boolean[] own = new boolean[WEEKDAYS];
        Arrays.fill(own, everyNight);
        return new WaitingRule(everyNight ? Double.POSITIVE_INFINITY : callLitres, bedLitres, rounding, longest, own);
    }

    /** The same on days that use {@code factor} times as much, in litres of days that use once as much. */
    WaitingRule onDays(double factor) {
        return new WaitingRule(callLitres / factor, bedLitres / factor, roundingLitres / factor, longestNights, byClock);
    }

    /** Whether it never looks at the litres. */
    boolean timed() {
        return callLitres == Double.POSITIVE_INFINITY;
    }

    /** Whether a clock alone ends every cycle after the same number of nights. */
    boolean isClockEveryDays() {
        return timed() && sameEveryWeekday() && byClock[0] && longestNights[0] > 0;
    }

    /** Whether it calls before the bed is exhausted: a cycle then has one hard day at most, its last. */
    boolean lasting() {
        return !timed() && callLitres <= bedLitres;
    }

    /** Whether all cycles are alike but for the weekday's use. */
    boolean sameEveryWeekday() {
        for (int start = 1; start < WEEKDAYS; start++) {
            if (longestNights[start] != longestNights[0]) {
                return false;
            }
        }
        return true;
    }

    /** Longest time between two regenerations, or 0 where there is none. */
    int longest() {
        int longest = 0;
        for (int nights : longestNights) {
            longest = Math.max(longest, nights);
        }
        return longest;
    }
}
