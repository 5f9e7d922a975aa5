// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.softener.RunningCost;

/** Expected use of an alternative in a year by its load, interpolated between loads calculated beforehand. */
final class UseByLoad {

    private static final int STEPS = 8;
    private static final double LEAST = 0.4;
    private static final double MOST = 2.5;
    private static final double LOGARITHM_OF_RANGE = StrictMath.log(MOST / LEAST);
    /** No household exceeds this multiple; a factor near zero of the capacity would ask for it. */
    private static final double MOST_BEYOND = 1e4;

    private final double visits;
    private final YearlyUse nothing;
    private final YearlyUse[][] uses = new YearlyUse[STEPS + 1][];

    /**
     * A load as its place between those calculated.
     *
     * @param below the calculated load below it
     * @param share of the way to the next
     * @param beyond factor beyond the calculated loads, where salt and water are proportional to the load
     */
    record Load(int below, double share, double beyond) {

        static Load of(double load) {
            double within = Math.max(LEAST, Math.min(MOST, load));
            double place = STEPS * StrictMath.log(within / LEAST) / LOGARITHM_OF_RANGE;
            int below = (int) Math.min(STEPS - 1.0, place);
            return new Load(below, place - below, Math.min(MOST_BEYOND, load / within));
        }

        private double of(double low, double high) {
            return beyond * (low + share * (high - low));
        }
    }

    UseByLoad(Comparison comparison, AlternativePlan way) {
        visits = way.visitsPerYear();
        nothing = new YearlyUse(0, 0, 0, visits);
        for (int i = 0; i <= STEPS; i++) {
            AlternativePlan.Circumstances there = new AlternativePlan.Circumstances(load(i), 1, 1);
            uses[i] = way.possible(comparison.duty(), there).stream().map(one -> new YearlyUse(one.year().regenerations(),
                    one.year().saltGrams() / 1000, one.year().waterLitres(), visits)).toArray(YearlyUse[]::new);
        }
    }

    private static double load(int step) {
        return LEAST * StrictMath.pow(MOST / LEAST, (double) step / STEPS);
    }

    /** The cheapest of the possible settings, at the simulated load. */
    YearlyUse use(Load load, RunningCost cost) {
        YearlyUse low = cheapest(uses[load.below()], cost);
        YearlyUse high = cheapest(uses[load.below() + 1], cost);
        return new YearlyUse(load.of(low.regenerationsPerYear(), high.regenerationsPerYear()),
                load.of(low.saltKilograms(), high.saltKilograms()), load.of(low.waterLitres(), high.waterLitres()), visits);
    }

    private YearlyUse cheapest(YearlyUse[] possible, RunningCost cost) {
        YearlyUse best = nothing;
        double least = Double.POSITIVE_INFINITY;
        for (YearlyUse use : possible) {
            double yearly = use.saltKilograms() * cost.saltPerKilogram()
                    + use.waterLitres() / 1000 * cost.waterPerCubicMetre();
            if (yearly < least) {
                least = yearly;
                best = use;
            }
        }
        return best;
    }
}
