// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.randomness;

import dev.brinebook.guard.Guard;

/** What a share of values stays below. */
public final class Quantile {

    private Quantile() {
    }

    /**
     * The value that a share of sorted values stays below, between the two next to it.
     *
     * <pre>h = (n − 1) p,  x = x_⌊h⌋ + (h − ⌊h⌋) (x_⌊h⌋₊₁ − x_⌊h⌋)</pre>
     *
     * <p>n number of values; p share; x_0 the least.
     * Validity: one value at least; p from 0 to 1. Values may be infinite, and so may the answer.
     * Source: [HYNDMAN-FAN] definition 7.
     * Deviation: none.
     */
    public static double ofSorted(double[] sorted, double share) {
        double place = (sorted.length - 1) * Guard.within(share, 0, 1, "share");
        int below = (int) place;
        if (place == below || sorted[below] == sorted[below + 1]) {
            return sorted[below];
        }
        return sorted[below] + (place - below) * (sorted[below + 1] - sorted[below]);
    }
}
