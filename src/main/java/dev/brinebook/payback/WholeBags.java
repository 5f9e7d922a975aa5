package dev.brinebook.payback;

import dev.brinebook.guard.Guard;

/** Salt as it is bought: in whole bags, several a trip. */
public final class WholeBags {

    private WholeBags() {
    }

    /**
     * Bags bought in each year, so that at the end of every year at least what was used has been bought.
     *
     * <pre>n_t = B ⌈t m / (b B)⌉ − (n_1 + … + n_t₋₁)</pre>
     *
     * <p>n_t bags in year t; m salt a year, kg; b salt in a bag, kg; B bags a trip.
     * Source: what whole bags are, by definition.
     *
     * @param saltKilogramsPerYear salt used, 0 or above
     * @param bagKilograms salt in a bag
     * @param bagsPerTrip bags bought at a time, at least one
     */
    public static long[] boughtPerYear(double saltKilogramsPerYear, double bagKilograms, int bagsPerTrip, int years) {
        Guard.notNegative(saltKilogramsPerYear, "saltKilogramsPerYear");
        Guard.positive(bagKilograms, "bagKilograms");
        Guard.within(bagsPerTrip, 1, 1_000, "bagsPerTrip");
        long[] bought = new long[Guard.within(years, 1, CashFlows.MAX_YEARS, "years")];
        long before = 0;
        for (int year = 1; year <= years; year++) {
            // A trip is not made for the last binary digit of a bag.
            double trips = year * saltKilogramsPerYear / (bagKilograms * bagsPerTrip);
            long all = bagsPerTrip * (long) Math.ceil(trips - 1e-9);
            bought[year - 1] = all - before;
            before = all;
        }
        return bought;
    }
}
