// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import dev.brinebook.household.Days;

/**
 * Days on which water is used while the bed is exhausted: how many to expect in a year, and how far years differ.
 *
 * @param perYear mean of a year, as homes change
 * @param perYearIfItStays the same as long as the home's level of use stays as it is known
 * @param percentile5 one year in twenty has no more
 * @param median half of the years have no more
 * @param percentile95 nineteen years in twenty have no more
 * @param yearsWithoutShare share of the years that have none
 */
public record HardDays(double perYear, double perYearIfItStays, int percentile5, int median, int percentile95, double yearsWithoutShare) {

    public HardDays {
        Guard.notNegative(perYear, "perYear");
    }

    private static final double NEGLIGIBLE = 1e-15;

    /** None in any year. */
    static final HardDays NONE = new HardDays(0, 0, 0, 0, 0, 1);

    /** By the chance of each number of days, from none on. */
    static HardDays of(double perYear, double perYearIfItStays, double[] chances) {
        double sum = 0;
        for (double chance : chances) {
            sum += chance;
        }
        return new HardDays(perYear, perYearIfItStays, quantile(chances, 0.05 * sum), quantile(chances, 0.5 * sum),
                quantile(chances, 0.95 * sum), Math.max(0, Math.min(1, chances[0] / sum)));
    }

    /** Poisson chances of 0 to 365 days. */
    static double[] independent(double expected) {
        double mean = Math.min(expected, Days.PER_YEAR);
        double[] chances = new double[Days.PER_YEAR + 1];
        chances[0] = StrictMath.exp(-mean);
        for (int count = 1; count < chances.length; count++) {
            chances[count] = chances[count - 1] * mean / count;
        }
        return chances;
    }

    /**
     * Binomial chances of 0 to 365 days, each the last of one of {@code cycles} cycles of a year.
     *
     * @param expected mean of a year, at most as many as there are cycles
     */
    static double[] ofCycles(double expected, double cycles) {
        double[] chances = new double[Days.PER_YEAR + 1];
        int most = (int) Math.min(Days.PER_YEAR, Math.max(Math.ceil(expected), Math.rint(cycles)));
        double each = most == 0 ? 0 : Math.min(1, expected / most);
        int mode = Math.min(most, (int) ((most + 1) * each));
        chances[mode] = 1;
        double odds = each / (1 - each);
        for (int days = mode; days > 0 && chances[days] > NEGLIGIBLE; days--) {
            chances[days - 1] = chances[days] * days / ((most - days + 1) * odds);
        }
        for (int days = mode; days < most && chances[days] > NEGLIGIBLE; days++) {
            chances[days + 1] = chances[days] * (most - days) * odds / (days + 1);
        }
        return chances;
    }

    private static int quantile(double[] chances, double wanted) {
        double sum = 0;
        for (int days = 0; days < chances.length; days++) {
            sum += chances[days];
            if (sum >= wanted) {
                return days;
            }
        }
        return chances.length - 1;
    }
}
