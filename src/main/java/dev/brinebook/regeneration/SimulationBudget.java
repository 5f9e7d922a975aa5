// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.household.Days;

/**
 * How many years may be tried for one answer, so that it comes within about a second: what takes time is each day that is run
 * through and each regeneration. Measured by {@code YearBenchmark}.
 */
public final class SimulationBudget {

    /** Days and regenerations that a processor runs through in somewhat less than a second. */
    private static final double MOST_STEPS = 25e6;
    /** Simulating the use of one day takes as long as this many simulation steps. */
    private static final double STEPS_TO_DRAW_A_DAY = 4;

    private SimulationBudget() {
    }

    /**
     * Most years that may be tried.
     *
     * @param drawn how often the days of each year are simulated
     * @param runs how many softeners are run through them in all
     * @param regenerationsPerYear of all runs together
     */
    public static int mostYears(int drawn, int runs, double regenerationsPerYear) {
        return (int) (MOST_STEPS / (Days.PER_YEAR * (STEPS_TO_DRAW_A_DAY * drawn + runs) + regenerationsPerYear));
    }
}
