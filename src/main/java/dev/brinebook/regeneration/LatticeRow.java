// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

/** Values of a distribution from a first lattice point on. */
record LatticeRow(int first, double[] values) {

    /** Sum over the row times others, up to a lattice point; in four parts that the processor adds up side by side. */
    double dot(double[] others, int size) {
        return dot(values, 0, others, first, Math.max(0, Math.min(values.length, size - first)));
    }

    /** Sum of a number of products, from a place of one array and of another on. */
    static double dot(double[] one, int from, double[] other, int start, int count) {
        double a = 0;
        double b = 0;
        double c = 0;
        double d = 0;
        int i = 0;
        for (int fours = count - 3; i < fours; i += 4) {
            a += one[from + i] * other[start + i];
            b += one[from + i + 1] * other[start + i + 1];
            c += one[from + i + 2] * other[start + i + 2];
            d += one[from + i + 3] * other[start + i + 3];
        }
        for (; i < count; i++) {
            a += one[from + i] * other[start + i];
        }
        return a + b + (c + d);
    }

    int end() {
        return first + values.length;
    }
}
