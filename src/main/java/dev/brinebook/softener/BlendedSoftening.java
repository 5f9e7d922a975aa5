// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import dev.brinebook.household.Days;

/**
 * How long the capacity of a softener lasts on a mean day, and the salt of a year that goes with it: in proportion to the
 * load, as a softener that regenerates when its capacity is exhausted. No days are tried: those scatter.
 *
 * @param capacityGrams capacity that a regeneration restores, as CaCO3
 * @param saltGrams salt of a regeneration
 * @param dailyLoadGrams hardness that a mean day loads on the resin, as CaCO3
 */
public record BlendedSoftening(double capacityGrams, double saltGrams, double dailyLoadGrams) {

    /** A softener that lasts longer is treated as one that never regenerates: a century. */
    public static final double LONGEST_DAYS = 36_525;

    public BlendedSoftening {
        Guard.positive(capacityGrams, "capacityGrams");
        Guard.positive(saltGrams, "saltGrams");
        Guard.notNegative(dailyLoadGrams, "dailyLoadGrams");
    }

    /** Days of mean use that the capacity lasts; none when (hardly) anything is used. */
    public OptionalResult days() {
        double days = capacityGrams / dailyLoadGrams;
        return days <= LONGEST_DAYS ? OptionalResult.of(days) : OptionalResult.none(NoResultReason.NEVER_REGENERATES);
    }

    /** Salt of a year. */
    public double saltGramsPerYear() {
        return Days.PER_YEAR * dailyLoadGrams / capacityGrams * saltGrams;
    }
}
