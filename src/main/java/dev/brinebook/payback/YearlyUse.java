// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.guard.Guard;

/**
 * What a softener uses in one year, whether counted by a simulation or expected from yearly averages.
 *
 * @param regenerationsPerYear expected number, so a fraction is possible
 * @param saltKilograms per year
 * @param waterLitres sent to drain per year by regenerating
 * @param serviceVisits paid visits per year
 */
public record YearlyUse(double regenerationsPerYear, double saltKilograms, double waterLitres, double serviceVisits) {

    /** Far above any house; keeps sums of money finite. */
    public static final double MAX_PER_YEAR = 1e12;

    public YearlyUse {
        Guard.within(regenerationsPerYear, 0, MAX_PER_YEAR, "regenerationsPerYear");
        Guard.within(saltKilograms, 0, MAX_PER_YEAR, "saltKilograms");
        Guard.within(waterLitres, 0, MAX_PER_YEAR, "waterLitres");
        Guard.within(serviceVisits, 0, MAX_PER_YEAR, "serviceVisits");
    }
}
