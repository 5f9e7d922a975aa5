// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.randomness;

import java.util.Arrays;

/** Places of values in their order. */
public final class Ranks {

    private Ranks() {
    }

    /** The rank of each value, the least having 1; equal values share the mean of their ranks. */
    public static double[] of(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double[] shared = new double[sorted.length];
        int from = 0;
        while (from < sorted.length) {
            int to = from;
            while (to + 1 < sorted.length && sorted[to + 1] == sorted[from]) {
                to++;
            }
            Arrays.fill(shared, from, to + 1, (from + to) / 2.0 + 1);
            from = to + 1;
        }
        double[] ranks = new double[values.length];
        for (int i = 0; i < ranks.length; i++) {
            ranks[i] = shared[Arrays.binarySearch(sorted, values[i])];
        }
        return ranks;
    }
}
