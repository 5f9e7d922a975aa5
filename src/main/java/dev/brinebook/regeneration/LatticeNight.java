// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import java.util.Arrays;

/**
 * The use of one class of weekdays at whole lattice points, as sums over a lattice need it.
 *
 * @param mean litres
 * @param shares chance of fewer than k lattice points, from k = 0
 * @param downwards the same from the largest k down
 * @param above chance of more than k lattice points, from k = -1
 * @param excess mean litres above k lattice points, from k = -1
 */
record LatticeNight(double mean, double[] shares, double[] downwards, double[] above, double[] excess) {

    /** Each class of a table. */
    static LatticeNight[] of(RenewalRows table) {
        return Arrays.stream(table.classes()).map(day -> of(day, table.step())).toArray(LatticeNight[]::new);
    }

    private static LatticeNight of(LatticeDay day, double step) {
        if (day.mean() == 0) {
            return new LatticeNight(0, new double[] {1}, new double[] {1}, new double[0], new double[0]);
        }
        int size = day.chances().length + 1;
        double[] below = new double[size];
        double[] over = new double[size];
        day.below((size - 1) * step, below, size);
        day.excess((size - 1) * step, over, size);
        double[] shares = new double[size];
        double[] above = new double[size + 1];
        double[] excess = new double[size + 1];
        above[0] = 1;
        excess[0] = day.mean() + step;
        for (int k = 0; k < size; k++) {
            shares[k] = below[size - 1 - k];
            above[k + 1] = 1 - shares[k];
            excess[k + 1] = over[size - 1 - k];
        }
        return new LatticeNight(day.mean(), shares, below, above, excess);
    }

    /** Mean litres up to this number of lattice points. */
    double litresBelow(int points) {
        return mean - (points + 1 < excess.length ? excess[points + 1] : 0);
    }

    /** Number of lattice points that no day exceeds. */
    static int width(LatticeNight[] days) {
        return Arrays.stream(days).mapToInt(LatticeNight::width).max().orElseThrow();
    }

    int width() {
        return shares.length;
    }

    /** Chance of a use below this number of lattice points. */
    double below(int points) {
        return points < shares.length ? shares[points] : 1;
    }
}
