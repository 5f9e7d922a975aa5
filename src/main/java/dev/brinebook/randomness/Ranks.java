// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.randomness;

import java.util.Arrays;

/** Places of values in their order. */
public final class Ranks {

    private static final int DIGIT_BITS = 11;
    private static final int DIGITS = 1 << DIGIT_BITS;
    /** Lowest bit of the three leading digits: sign, exponent and 21 bits of the fraction, enough to order nearly all values. */
    private static final int LEADING = Long.SIZE - 3 * DIGIT_BITS;

    private Ranks() {
    }

    /** The rank of each value, the least having 1; equal values share the mean of their ranks. */
    public static double[] of(double[] values) {
        return of(values, order(values));
    }

    /** The same of values whose {@link #order} is known. */
    public static double[] of(double[] values, int[] order) {
        double[] ranks = new double[values.length];
        int from = 0;
        while (from < order.length) {
            int to = from;
            while (to + 1 < order.length && values[order[to + 1]] == values[order[from]]) {
                to++;
            }
            double shared = (from + to) / 2.0 + 1;
            for (int place = from; place <= to; place++) {
                ranks[order[place]] = shared;
            }
            from = to + 1;
        }
        return ranks;
    }

    /** Where the values are, from the least on. By radix: sorting values and then looking for each takes over ten times as long. */
    public static int[] order(double[] values) {
        long[] keys = new long[values.length];
        for (int i = 0; i < keys.length; i++) {
            long bits = Double.doubleToLongBits(values[i]);
            // Negative numbers have their bits the other way round, and come first.
            keys[i] = bits ^ (bits >> Long.SIZE - 1 | Long.MIN_VALUE);
        }
        int[] order = byDigits(keys, LEADING);
        return insert(keys, order) ? order : byDigits(keys, 0);
    }

    /** Puts the few in order that their leading digits do not; gives up where they are many. */
    private static boolean insert(long[] keys, int[] order) {
        int moves = 0;
        for (int place = 1; place < order.length; place++) {
            int inserted = order[place];
            int to = place;
            while (to > 0 && Long.compareUnsigned(keys[order[to - 1]], keys[inserted]) > 0) {
                order[to] = order[to - 1];
                to--;
            }
            order[to] = inserted;
            moves += place - to;
            if (moves > order.length) {
                return false;
            }
        }
        return true;
    }

    private static int[] byDigits(long[] keys, int first) {
        int[] order = new int[keys.length];
        Arrays.setAll(order, i -> i);
        int[] next = new int[keys.length];
        for (int shift = first; shift < Long.SIZE; shift += DIGIT_BITS) {
            int[] starts = new int[DIGITS + 1];
            for (long key : keys) {
                starts[digit(key, shift) + 1]++;
            }
            for (int digit = 0; digit < DIGITS; digit++) {
                starts[digit + 1] += starts[digit];
            }
            for (int i : order) {
                next[starts[digit(keys[i], shift)]++] = i;
            }
            int[] done = order;
            order = next;
            next = done;
        }
        return order;
    }

    private static int digit(long key, int shift) {
        return (int) (key >>> shift) & DIGITS - 1;
    }
}
