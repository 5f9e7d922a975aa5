// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/** Values that are calculated when they are asked for, in pieces of which few are needed. Not thread-safe. */
final class KnownValues {

    private static final int PIECE = 32;
    private double[][] pieces = new double[0][];

    double at(int index, IntToDoubleFunction value) {
        int piece = index / PIECE;
        if (piece >= pieces.length) {
            pieces = Arrays.copyOf(pieces, piece + 1);
        }
        if (pieces[piece] == null) {
            pieces[piece] = new double[PIECE];
            Arrays.fill(pieces[piece], Double.NaN);
        }
        double known = pieces[piece][index % PIECE];
        return Double.isNaN(known) ? pieces[piece][index % PIECE] = value.applyAsDouble(index) : known;
    }
}
