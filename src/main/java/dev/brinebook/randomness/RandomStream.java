// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.randomness;

import dev.brinebook.guard.Guard;

/**
 * Pseudo-random numbers that depend on nothing but a seed, the number of a stream and the place in it: Philox 4x32 with ten
 * rounds. Year 17 of a seed is the same whether the years before it were simulated or not, on any machine, in any Java.
 *
 * <p>Not for secrets. A stream is not thread-safe; it holds its place.
 *
 * <p>Source: [PHILOX] for the generator, checked against its published test vectors; [POLAR] for the normal and
 * [MARSAGLIA-TSANG] for the gamma distribution. Logarithms and powers are those of StrictMath, whose bits are prescribed.
 */
public final class RandomStream {

    private static final int ROUNDS = 10;
    private static final int MULTIPLIER_0 = 0xD2511F53;
    private static final int MULTIPLIER_1 = 0xCD9E8D57;
    private static final int WEYL_0 = 0x9E3779B9;
    private static final int WEYL_1 = 0xBB67AE85;
    private static final long LOW = 0xFFFFFFFFL;
    private static final double TWO_TO_MINUS_53 = 0x1.0p-53;

    private final int key0;
    private final int key1;
    private final int stream0;
    private final int stream1;
    private long block;
    private int out0;
    private int out1;
    private int out2;
    private int out3;
    private int used = 4;
    private double spareNormal = Double.NaN;

    /**
     * The start of a stream.
     *
     * @param seed the seed of all streams that belong together
     * @param stream number of the stream, such as of a year
     */
    public RandomStream(long seed, long stream) {
        key0 = (int) seed;
        key1 = (int) (seed >>> 32);
        stream0 = (int) stream;
        stream1 = (int) (stream >>> 32);
    }

    /** The next 32 bits. */
    public int nextInt() {
        if (used == 4) {
            round((int) block, (int) (block >>> 32), stream0, stream1, key0, key1);
            block++;
            used = 0;
        }
        return switch (used++) {
            case 0 -> out0;
            case 1 -> out1;
            case 2 -> out2;
            default -> out3;
        };
    }

    /** The next number evenly spread over 0 (included) to 1 (left out), in steps of 2^-53. */
    public double nextDouble() {
        long high = nextInt() & LOW;
        long low = nextInt() & LOW;
        return ((high << 21) ^ (low >>> 11)) * TWO_TO_MINUS_53;
    }

    /** Whether an event of this probability happens. */
    public boolean happens(double probability) {
        return nextDouble() < probability;
    }

    /** The next number of a normal distribution of mean 0 and variance 1. Source: [POLAR]. */
    public double nextNormal() {
        if (!Double.isNaN(spareNormal)) {
            double spare = spareNormal;
            spareNormal = Double.NaN;
            return spare;
        }
        double x;
        double y;
        double square;
        do {
            x = 2 * nextDouble() - 1;
            y = 2 * nextDouble() - 1;
            square = x * x + y * y;
        } while (!(square < 1 && square > 0));
        double factor = Math.sqrt(-2 * StrictMath.log(square) / square);
        spareNormal = y * factor;
        return x * factor;
    }

    /** A gamma distribution of scale 1 as it is drawn from; made once for many numbers. */
    public static final class GammaShape {

        private final double boost;
        private final double d;
        private final double c;

        /** The distribution of this mean. */
        public GammaShape(double shape) {
            Guard.positive(shape, "shape");
            boost = shape < 1 ? shape : 0;
            d = (shape < 1 ? shape + 1 : shape) - 1 / 3.0;
            c = 1 / Math.sqrt(9 * d);
        }
    }

    /** The next number of a gamma distribution of mean {@code shape} and scale 1. */
    public double nextGamma(double shape) {
        return nextGamma(new GammaShape(shape));
    }

    /**
     * The next number of a gamma distribution.
     *
     * <p>Source: [MARSAGLIA-TSANG], with its boost by a power of an even number for shapes below 1.
     */
    public double nextGamma(GammaShape shape) {
        double d = shape.d;
        while (true) {
            double x = nextNormal();
            double root = 1 + shape.c * x;
            if (root > 0) {
                double v = root * root * root;
                double u = 1 - nextDouble();
                double square = x * x;
                if (u < 1 - 0.0331 * square * square
                        || StrictMath.log(u) < 0.5 * square + d * (1 - v + StrictMath.log(v))) {
                    return shape.boost == 0 ? d * v : d * v * power(1 - nextDouble(), 1 / shape.boost);
                }
            }
        }
    }

    /** A quarter of the time of StrictMath.pow, and some 1e-15 of the result off. */
    private static double power(double base, double exponent) {
        return StrictMath.exp(exponent * StrictMath.log(base));
    }

    /** Ten rounds of multiplying and crossing over; the key grows by a step of its own each round. */
    private void round(int counter0, int counter1, int counter2, int counter3, int firstKey, int secondKey) {
        int c0 = counter0;
        int c1 = counter1;
        int c2 = counter2;
        int c3 = counter3;
        int k0 = firstKey;
        int k1 = secondKey;
        for (int i = 0; i < ROUNDS; i++) {
            long product0 = (MULTIPLIER_0 & LOW) * (c0 & LOW);
            long product1 = (MULTIPLIER_1 & LOW) * (c2 & LOW);
            c0 = (int) (product1 >>> 32) ^ c1 ^ k0;
            c1 = (int) product1;
            c2 = (int) (product0 >>> 32) ^ c3 ^ k1;
            c3 = (int) product0;
            k0 += WEYL_0;
            k1 += WEYL_1;
        }
        out0 = c0;
        out1 = c1;
        out2 = c2;
        out3 = c3;
    }

    /** The block of a counter under a key, as the published test vectors state it. */
    static int[] block(int[] counter, int[] key) {
        RandomStream stream = new RandomStream(0, 0);
        stream.round(counter[0], counter[1], counter[2], counter[3], key[0], key[1]);
        return new int[] {stream.out0, stream.out1, stream.out2, stream.out3};
    }
}
