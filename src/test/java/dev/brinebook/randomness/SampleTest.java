// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.randomness;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.randomness.Uncertain.Known;
import dev.brinebook.randomness.Uncertain.Normal;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;

class SampleTest {

    private static final List<Normal> NORMAL = List.of(new Normal(3, 0.5), new Normal(-1, 2), new Normal(10, 0.1));

    /** A sum of normal numbers is normal: mean 2·3 − 1 + 0.5·10 = 10, variance 4·0.25 + 4 + 0.25·0.01 = 5.0025. */
    @Test
    void aLinearCaseHasTheMeanAndVarianceOfTheory() {
        Sample sample = Sample.of(NORMAL, () -> (x, draw) -> new double[] {2 * x[0] + x[1] + 0.5 * x[2]}, 10_000, 0, 5);
        Sample.Mean mean = sample.mean(0);
        assertEquals(10, mean.value(), 3 * mean.standardError());
        assertTrue(mean.standardError() < Math.sqrt(5.0025 / 10_000), "a hypercube is never worse than plain draws here");
        double squares = 0;
        for (double result : sample.result(0)) {
            squares += (result - 10) * (result - 10);
        }
        // The variance of a normal sample's variance is 2 σ⁴ / n.
        assertEquals(5.0025, squares / 10_000, 3 * 5.0025 * Math.sqrt(2 / 10_000.0));
    }

    @Test
    void isTheSameOnAnyNumberOfThreads() throws Exception {
        double[] alone = onThreads(1);
        assertArrayEquals(alone, onThreads(2));
        assertArrayEquals(alone, onThreads(8));
    }

    private static double[] onThreads(int threads) throws Exception {
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            return pool.submit(() -> Sample.of(NORMAL, () -> (x, draw) -> new double[] {
                x[0] * x[1] + new RandomStream(9, draw).nextGamma(2)}, 4_000, 0, 11).result(0)).get();
        } finally {
            pool.shutdown();
        }
    }

    @Test
    void stopsWhenTheMeanIsKnownWellEnough() {
        Sample rough = Sample.of(NORMAL, () -> (x, draw) -> new double[] {x[1]}, 10_000, 1, 5);
        assertEquals(1_000, rough.draws());
        double justEnough = rough.mean(0).standardError();
        assertEquals(1_000, Sample.of(NORMAL, () -> (x, draw) -> new double[] {x[1]}, 10_000, justEnough, 5).draws());
        Sample fine = Sample.of(NORMAL, () -> (x, draw) -> new double[] {x[0] * x[1] * x[1]}, 10_000, 1e-6, 5);
        assertEquals(10_000, fine.draws());
        assertTrue(fine.mean(0).standardError() > 1e-6);
        assertEquals(0, Sample.of(List.of(new Known(2)), () -> (x, draw) -> x.clone(), 1_000, 0, 5).mean(0).standardError());
        assertThrows(IllegalArgumentException.class, () -> Sample.of(NORMAL, () -> (x, draw) -> x.clone(), 100, 0, 5));
    }

    @Test
    void returnsInputsByDraw() {
        Sample sample = Sample.of(NORMAL, () -> (x, draw) -> new double[] {draw, x[2]}, 1_000, 0, 5);
        assertArrayEquals(sample.input(2), sample.result(1));
        assertEquals(999, sample.result(0)[999]);
    }

    /** By hand: four hypercubes of the numbers 0 to 999 have the means 124.5, 374.5, 624.5 and 874.5. */
    @Test
    void estimatesTheErrorFromTheSpreadOfHypercubes() {
        Sample.Mean mean = Sample.of(NORMAL, () -> (x, draw) -> new double[] {draw}, 1_000, 0, 5).mean(0);
        assertEquals(499.5, mean.value(), 1e-12);
        assertEquals(Math.sqrt((2 * 375 * 375 + 2 * 125 * 125) / 3.0 / 4), mean.standardError(), 1e-9);
    }

    @Test
    void makesAllDrawsOnRequest() {
        assertEquals(2_000, Sample.of(List.of(new Known(2)), () -> (x, draw) -> x.clone(), 2_000, 0, 5).draws());
    }

    /** A household draws its days from the streams of the seed itself. */
    @Test
    void drawsNothingFromTheStreamsOfTheDays() {
        double ofTheDays = NORMAL.get(0).quantile(LatinHypercube.of(3, Sample.DRAWS_PER_CUBE, 5).probability(0, 0));
        Sample sample = Sample.of(NORMAL, () -> (x, draw) -> x.clone(), 1_000, 0, 5);
        assertTrue(Arrays.stream(sample.input(0)).noneMatch(value -> value == ofTheDays));
    }

    /** Spearman's own definition, by hand: ranks 1 2 3 4 5 against 2 1 4 3 5 give 0.8; ties share their mean rank. */
    @Test
    void correlatesRanks() {
        assertEquals(0.8, RankCorrelation.of(new double[] {1, 2, 3, 4, 50}, new double[] {20, 10, 40, 30, 500}), 1e-12);
        assertEquals(1, RankCorrelation.of(new double[] {1, 2, 3}, new double[] {1, 8, 27}), 1e-12);
        assertEquals(-1, RankCorrelation.of(new double[] {1, 2, 3}, new double[] {0, -8, -27}), 1e-12);
        // Ranks 1.5 1.5 3 against 1 2 3: Σ 1.5 over √(1.5 · 2).
        assertEquals(1.5 / Math.sqrt(3), RankCorrelation.of(new double[] {7, 7, 9}, new double[] {1, 2, 3}), 1e-12);
        assertEquals(0, RankCorrelation.of(new double[] {7, 7, 7}, new double[] {1, 2, 3}));
        assertEquals(-1, RankCorrelation.of(new double[] {1, 2}, new double[] {5, 3}), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> RankCorrelation.of(new double[1], new double[1]));
    }

    /** As Arrays.sort has them, but zeros of either sign are equal. */
    @Test
    void ordersNumbersOfAnySignAndSize() {
        double[] values = {3, -2, Double.POSITIVE_INFINITY, 0, -1e300, 1e-320, -0.0, Double.MIN_VALUE,
            Double.NEGATIVE_INFINITY, -2, 3.0000000000000004};
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        assertArrayEquals(sorted, Arrays.stream(Ranks.order(values)).mapToDouble(place -> values[place]).toArray());
        assertArrayEquals(new double[] {9, 3.5, 11, 5.5, 2, 8, 5.5, 7, 1, 3.5, 10}, Ranks.of(values));
        RandomStream stream = new RandomStream(8, 1);
        double[] many = DoubleStream.generate(stream::nextNormal).limit(5_000).toArray();
        for (double scale : new double[] {1, 1e-4, 1e-9}) {
            double[] near = Arrays.stream(many).map(normal -> 1 + scale * normal).toArray();
            double[] expected = near.clone();
            Arrays.sort(expected);
            assertArrayEquals(expected, Arrays.stream(Ranks.order(near)).mapToDouble(place -> near[place]).toArray(), "scale " + scale);
        }
    }
}
