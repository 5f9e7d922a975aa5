// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.randomness;

import java.util.Comparator;
import java.util.stream.IntStream;

/** Places of values in their order. */
public final class Ranks {

    private Ranks() {
    }

    /** The rank of each value, the least having 1; equal values share the mean of their ranks. */
    public static double[] of(double[] values) {
        int[] order = IntStream.range(0, values.length).boxed().sorted(Comparator.comparingDouble(i -> values[i]))
                .mapToInt(Integer::intValue).toArray();
        double[] ranks = new double[values.length];
        int from = 0;
        while (from < order.length) {
            int to = from;
            while (to + 1 < order.length && values[order[to + 1]] == values[order[from]]) {
                to++;
            }
            double shared = (from + to) / 2.0 + 1;
            for (int i = from; i <= to; i++) {
                ranks[order[i]] = shared;
            }
            from = to + 1;
        }
        return ranks;
    }
}
