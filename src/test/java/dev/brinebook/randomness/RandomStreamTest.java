// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.randomness;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Rows;
import java.util.function.ToDoubleFunction;
import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.distribution.continuous.GammaDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class RandomStreamTest {

    private static final int DRAWS = 200_000;

    @ParameterizedTest
    @CsvFileSource(resources = "/randomness/published-philox.csv", useHeadersInDisplayName = true)
    void givesThePublishedKnownAnswers(ArgumentsAccessor row) {
        assertArrayEquals(words(row, 6, 4), RandomStream.block(words(row, 0, 4), words(row, 4, 2)));
    }

    @Test
    void readsEveryRow() {
        assertEquals(3, Rows.in("/randomness/published-philox.csv"));
    }

    /** The first block of seed 0, stream 0 is the first known answer. */
    @Test
    void countsFromTheFirstBlock() {
        RandomStream stream = new RandomStream(0, 0);
        assertEquals(0x6627e8d5, stream.nextInt());
        assertEquals(0xe169c58d, stream.nextInt());
        assertEquals(0xbc57ac4c, stream.nextInt());
        assertEquals(0x9b00dbd8, stream.nextInt());
        assertArrayEquals(RandomStream.block(new int[] {1, 0, 0, 0}, new int[] {0, 0}),
                new int[] {stream.nextInt(), stream.nextInt(), stream.nextInt(), stream.nextInt()});
    }

    /** The counter is the place and the stream, the key is the seed, lower words first. */
    @Test
    void usesAllBitsOfStreamAndSeed() {
        assertEquals(RandomStream.block(new int[] {0, 0, 2, 3}, new int[] {4, 5})[0],
                new RandomStream((5L << 32) + 4, (3L << 32) + 2).nextInt());
    }

    /** The first 53 bits of the first known answer, 6627e8d5 e169c58d, as a binary fraction. */
    @Test
    void anEvenNumberIsTheFirstBitsOfTwoWords() {
        assertEquals(0x0.6627e8d5e169cp0, new RandomStream(0, 0).nextDouble(), 0x1.0p-52);
        assertFalse(new RandomStream(0, 0).happens(new RandomStream(0, 0).nextDouble()), "the same is not below");
    }

    @Test
    void aStreamDependsOnItsNumberAndSeedAlone() {
        double first = new RandomStream(7, 17).nextDouble();
        RandomStream other = new RandomStream(7, 16);
        other.nextGamma(3);
        assertEquals(first, new RandomStream(7, 17).nextDouble());
        assertNotEquals(first, new RandomStream(7, 18).nextDouble());
        assertNotEquals(first, new RandomStream(8, 17).nextDouble());
        assertNotEquals(new RandomStream(1L << 32, 0).nextInt(), new RandomStream(1, 0).nextInt());
    }

    /** Kolmogorov and Smirnov: the largest gap stays below 1.95/sqrt(n) in 999 of 1,000 samples. Source: from memory. */
    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.8, 1, 2.7, 5, 30})
    void gammaDrawsAreGammaDistributed(double shape) {
        assertDistributed(new GammaDistribution(shape, 1), stream -> stream.nextGamma(shape));
    }

    @Test
    void normalDrawsAreNormallyDistributed() {
        assertDistributed(new NormalDistribution(), RandomStream::nextNormal);
    }

    @Test
    void evenDrawsAreEvenAndHappenAsOftenAsAsked() {
        RandomStream stream = new RandomStream(5, 5);
        double sum = 0;
        int happened = 0;
        for (int i = 0; i < DRAWS; i++) {
            double u = stream.nextDouble();
            assertTrue(u >= 0 && u < 1);
            sum += u;
            happened += stream.happens(0.021) ? 1 : 0;
        }
        assertEquals(0.5, sum / DRAWS, 3 * Math.sqrt(1.0 / 12 / DRAWS));
        assertEquals(0.021, (double) happened / DRAWS, 3 * Math.sqrt(0.021 * 0.979 / DRAWS));
    }

    @Test
    void refusesAShapeOfNothing() {
        assertThrows(IllegalArgumentException.class, () -> new RandomStream(1, 1).nextGamma(0));
        assertThrows(IllegalArgumentException.class, () -> new RandomStream(1, 1).nextGamma(Double.NaN));
    }

    private static void assertDistributed(RealDistribution expected, ToDoubleFunction<RandomStream> draw) {
        double[] drawn = new double[DRAWS];
        RandomStream stream = new RandomStream(3, 1);
        for (int i = 0; i < DRAWS; i++) {
            drawn[i] = draw.applyAsDouble(stream);
        }
        java.util.Arrays.sort(drawn);
        double gap = 0;
        for (int i = 0; i < DRAWS; i += 50) {
            gap = Math.max(gap, Math.abs(expected.cumulativeProbability(drawn[i]) - (i + 0.5) / DRAWS));
        }
        assertTrue(gap < 1.95 / Math.sqrt(DRAWS), "gap " + gap);
    }

    private static int[] words(ArgumentsAccessor row, int from, int count) {
        int[] words = new int[count];
        for (int i = 0; i < count; i++) {
            words[i] = Integer.parseUnsignedInt(row.getString(from + i), 16);
        }
        return words;
    }
}
