// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.fuzz;

import java.util.Arrays;
import java.util.Random;
import java.util.SplittableRandom;

/** Random numbers out of given bytes, two for each: whoever changes a byte changes one choice. After them, any that follow. */
final class BytesAsRandom extends Random {

    private static final long serialVersionUID = 1L;
    private static final long SPREAD = 0x9E3779B97F4A7C15L;

    private final byte[] bytes;
    private final transient SplittableRandom rest;
    private int at;

    BytesAsRandom(byte[] bytes) {
        super(0);
        this.bytes = bytes.clone();
        this.rest = new SplittableRandom(Arrays.hashCode(bytes));
    }

    @Override
    protected int next(int bits) {
        // Asked once by the constructor above this one, before there are bytes.
        if (bytes == null) {
            return 0;
        }
        if (at + 2 > bytes.length) {
            return (int) (rest.nextLong() >>> Long.SIZE - bits);
        }
        long two = bytes[at] << Byte.SIZE | bytes[at + 1] & 0xFF;
        at += 2;
        return (int) (two * SPREAD >>> Long.SIZE - bits);
    }
}
