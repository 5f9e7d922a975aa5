// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;

/**
 * Limits on hard water from an exhausted bed: a number of days a year for the household as it is, and another
 * where it uses more and the bed gives less than planned. The second keeps a reserve from being trimmed so finely
 * that any change breaks the first. The same for every way of starting regenerations, to make these comparable.
 *
 * @param hardDaysPerYear most hard days to be expected in a year
 * @param stressedHardDaysPerYear most where use and capacity are as the next two have it
 * @param stressedUse use of a day there, over what it is
 * @param stressedCapacity capacity there, over what it is
 */
public record ServiceStandard(double hardDaysPerYear, double stressedHardDaysPerYear, double stressedUse,
        double stressedCapacity) {

    public static final double MIN_HARD_DAYS = 0.01;
    public static final double MAX_HARD_DAYS = 365;
    public static final double MAX_STRESSED_USE = 2;
    public static final double MIN_STRESSED_CAPACITY = 0.5;

    /** No source settles what a household puts up with: one day a year is hardly noticed. */
    public static final double ASSUMED_HARD_DAYS = 1;
    public static final double ASSUMED_STRESSED_HARD_DAYS = 3;
    public static final double ASSUMED_STRESSED_USE = 1.10;
    public static final double ASSUMED_STRESSED_CAPACITY = 0.95;

    /** One day a year, and three with use 10 % up and capacity 5 % down. */
    public static final ServiceStandard USUAL = new ServiceStandard(ASSUMED_HARD_DAYS, ASSUMED_STRESSED_HARD_DAYS,
            ASSUMED_STRESSED_USE, ASSUMED_STRESSED_CAPACITY);

    private static final double ROUNDING = 1e-9;

    public ServiceStandard {
        Guard.within(hardDaysPerYear, MIN_HARD_DAYS, MAX_HARD_DAYS, "hardDaysPerYear");
        Guard.within(stressedHardDaysPerYear, MIN_HARD_DAYS, MAX_HARD_DAYS, "stressedHardDaysPerYear");
        Guard.within(stressedUse, 1, MAX_STRESSED_USE, "stressedUse");
        Guard.within(stressedCapacity, MIN_STRESSED_CAPACITY, 1, "stressedCapacity");
    }

    /** Whether a policy keeps to it. */
    public boolean isMet(LongRun longRun, Policy policy, double hardnessMilligramsPerLitre, Regeneration regeneration) {
        return longRun.hardDaysPerYear(policy, hardnessMilligramsPerLitre, regeneration) <= hardDaysPerYear * (1 + ROUNDING)
                && stressedHardDays(longRun, policy, hardnessMilligramsPerLitre, regeneration)
                <= stressedHardDaysPerYear * (1 + ROUNDING);
    }

    /** Hard days of a year where more is used and the bed gives less. */
    public double stressedHardDays(LongRun longRun, Policy policy, double hardnessMilligramsPerLitre, Regeneration regeneration) {
        // Higher use is equivalent to the present use with every volume divided by the same factor.
        double capacity = regeneration.capacityGrams() * stressedCapacity / stressedUse;
        Policy smaller = policy.byClock() ? policy : policy.scaledTo(1 / stressedUse)
                .withMeter(Policy.nearestMeterLitres(policy.meterVolumeLitres() / stressedUse));
        return longRun.hardDaysPerYear(smaller, hardnessMilligramsPerLitre, new Regeneration(capacity,
                regeneration.saltGrams(), regeneration.waterLitres(), regeneration.minutes()));
    }

    /** A regeneration of a bed that gives less. */
    Regeneration stressed(Regeneration regeneration) {
        return new Regeneration(regeneration.capacityGrams() * stressedCapacity, regeneration.saltGrams(), regeneration.waterLitres(),
                regeneration.minutes());
    }

    /** Days of a year allowed, as they are or under stress. */
    double allowed(boolean stressed) {
        return (stressed ? stressedHardDaysPerYear : hardDaysPerYear) * (1 + ROUNDING);
    }
}
