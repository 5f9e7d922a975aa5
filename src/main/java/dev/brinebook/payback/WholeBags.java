// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.guard.Guard;

/** Salt as it is bought: in whole bags, several a trip. */
public final class WholeBags {

    /** Less than any bag on sale; keeps the number of bags countable. */
    public static final double MIN_BAG_KILOGRAMS = 0.1;
    public static final double MAX_BAG_KILOGRAMS = 10_000;
    public static final int MAX_BAGS_PER_TRIP = 1_000;

    /** Part of a trip for which none is made: what rounding may leave of a trip that is just enough. */
    private static final double ROUNDING_TRIPS = 1e-9;

    private WholeBags() {
    }

    /**
     * Bags bought in each year, so that by the end of every year at least the salt used has been bought.
     *
     * <pre>n_t = B ⌈t m / (b B)⌉ − (n_1 + … + n_t₋₁)</pre>
     *
     * <p>n_t bags in year t; m salt a year, kg; b salt in a bag, kg; B bags a trip.
     * Validity: salt from 0 to {@value YearlyUse#MAX_PER_YEAR}, bags of {@value #MIN_BAG_KILOGRAMS} to
     * {@value #MAX_BAG_KILOGRAMS} kg.
     * Source: what whole bags are, by definition.
     * Deviation: salt left at the end, less than a trip, has no value here.
     *
     * @param saltKilogramsPerYear salt used, 0 or above
     * @param bagKilograms salt in a bag
     * @param bagsPerTrip bags bought at a time, at least one
     */
    public static long[] boughtPerYear(double saltKilogramsPerYear, double bagKilograms, int bagsPerTrip, int years) {
        Guard.within(saltKilogramsPerYear, 0, YearlyUse.MAX_PER_YEAR, "saltKilogramsPerYear");
        Guard.within(bagKilograms, MIN_BAG_KILOGRAMS, MAX_BAG_KILOGRAMS, "bagKilograms");
        Guard.within(bagsPerTrip, 1, MAX_BAGS_PER_TRIP, "bagsPerTrip");
        long[] bought = new long[Guard.within(years, 1, CashFlows.MAX_YEARS, "years")];
        long before = 0;
        for (int year = 1; year <= years; year++) {
            double trips = year * saltKilogramsPerYear / (bagKilograms * bagsPerTrip);
            long all = bagsPerTrip * (long) Math.ceil(trips - ROUNDING_TRIPS);
            bought[year - 1] = all - before;
            before = all;
        }
        return bought;
    }
}
