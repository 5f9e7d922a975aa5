// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.guard.Guard;
import dev.brinebook.regeneration.YearlyTotals;

/**
 * What a year of regenerations costs.
 *
 * @param saltPerKilogram price of salt
 * @param waterPerCubicMetre price of water and of its discharge together, in the same currency
 */
public record RunningCost(double saltPerKilogram, double waterPerCubicMetre) {

    public RunningCost {
        Guard.notNegative(saltPerKilogram, "saltPerKilogram");
        Guard.notNegative(waterPerCubicMetre, "waterPerCubicMetre");
    }

    /** Salt and regeneration water of a year, in the currency of the prices. */
    public double ofYear(YearlyTotals year) {
        return ofRegeneration(year.saltGrams(), year.waterLitres());
    }

    /** Salt and water of one regeneration, or of any number together. */
    double ofRegeneration(double saltGrams, double waterLitres) {
        return saltGrams / 1000 * saltPerKilogram + waterLitres / 1000 * waterPerCubicMetre;
    }
}
