// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.randomness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.randomness.Uncertain.Known;
import dev.brinebook.randomness.Uncertain.Lognormal;
import dev.brinebook.randomness.Uncertain.Normal;
import dev.brinebook.randomness.Uncertain.Range;
import dev.brinebook.randomness.Uncertain.Triangular;
import java.util.Arrays;
import org.hipparchus.distribution.RealDistribution;
import org.hipparchus.distribution.continuous.LogNormalDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TriangularDistribution;
import org.hipparchus.distribution.continuous.UniformRealDistribution;
import org.junit.jupiter.api.Test;

class UncertainTest {

    /** Hipparchus has the same distributions by their cumulative probabilities. */
    @Test
    void isTheInverseOfTheLibrarysDistributions() {
        double sigma = Math.sqrt(Math.log(1 + 0.4 * 0.4));
        assertInverse(new UniformRealDistribution(2, 5), new Range(2, 5));
        assertInverse(new TriangularDistribution(2, 3, 7), new Triangular(2, 3, 7));
        assertInverse(new TriangularDistribution(2, 2, 7), new Triangular(2, 2, 7));
        assertInverse(new NormalDistribution(4, 1.5), new Normal(4, 1.5));
        assertInverse(new LogNormalDistribution(Math.log(3), sigma), new Lognormal(3, 0.4));
        assertEquals(7, new Known(7).quantile(0.3));
        assertEquals(3, new Lognormal(3, 0.4).median(), 1e-12);
        assertEquals(5, new Triangular(5, 5, 5).quantile(0.9));
    }

    @Test
    void refusesWhatMakesNoSense() {
        assertThrows(IllegalArgumentException.class, () -> new Range(2, 1));
        assertThrows(IllegalArgumentException.class, () -> new Triangular(2, 8, 7));
        assertThrows(IllegalArgumentException.class, () -> new Range(-1e308, 1e308), "wider than any finite number");
        assertThrows(IllegalArgumentException.class, () -> new Triangular(-1e308, 0, 1e308));
        assertThrows(IllegalArgumentException.class, () -> new Normal(1, -1));
        assertThrows(IllegalArgumentException.class, () -> new Lognormal(0, 1));
        assertThrows(IllegalArgumentException.class, () -> new Known(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new Range(1, 2).quantile(0));
        assertThrows(IllegalArgumentException.class, () -> new Normal(1, 2).quantile(1));
    }

    /** McKay, Beckman and Conover 1979: every part of every range once. */
    @Test
    void aLatinHypercubeDrawsFromEveryPartOnce() {
        LatinHypercube cube = LatinHypercube.of(5, 1_000, 42);
        for (int dimension = 0; dimension < 5; dimension++) {
            int column = dimension;
            double[] sorted = Arrays.stream(range(1_000)).map(i -> cube.probability(column, (int) i)).sorted().toArray();
            for (int i = 0; i < 1_000; i++) {
                assertTrue(sorted[i] > i / 1_000.0 - 1e-12 && sorted[i] <= (i + 1) / 1_000.0, dimension + ", " + i);
            }
        }
        assertEquals(cube.probability(3, 17), LatinHypercube.of(5, 1_000, 42).probability(3, 17));
        assertNotEquals(cube.probability(3, 17), LatinHypercube.of(5, 1_000, 43).probability(3, 17));
        assertEquals(1_000, cube.draws());
        assertEquals(0, LatinHypercube.of(0, 5, 1).draws());
    }

    /** Columns do not depend on each other: their correlation over 1,000 draws stays within three standard errors of 0. */
    @Test
    void itsColumnsAreIndependent() {
        LatinHypercube cube = LatinHypercube.of(4, 1_000, 7);
        for (int one = 0; one < 4; one++) {
            for (int other = 0; other < one; other++) {
                double sum = 0;
                for (int i = 0; i < 1_000; i++) {
                    sum += (cube.probability(one, i) - 0.5) * (cube.probability(other, i) - 0.5);
                }
                assertEquals(0, sum * 12 / 1_000, 3 / Math.sqrt(1_000));
            }
        }
    }

    /** Every order of three draws as often: chi square with 5 degrees of freedom stays below 20.515, NIST handbook 1.3.6.7.4. */
    @Test
    void drawsItsPartsInEveryOrder() {
        int[] times = new int[9];
        for (int seed = 0; seed < 6_000; seed++) {
            LatinHypercube cube = LatinHypercube.of(1, 3, seed);
            times[3 * (int) (3 * cube.probability(0, 0)) + (int) (3 * cube.probability(0, 1))]++;
        }
        double chiSquare = Arrays.stream(times).filter(n -> n > 0).mapToDouble(n -> (n - 1_000.0) * (n - 1_000) / 1_000).sum();
        assertEquals(6, Arrays.stream(times).filter(n -> n > 0).count());
        assertTrue(chiSquare < 20.515, "chi square " + chiSquare);
    }

    private static double[] range(int size) {
        double[] range = new double[size];
        Arrays.setAll(range, i -> i);
        return range;
    }

    private static void assertInverse(RealDistribution distribution, Uncertain uncertain) {
        for (double p : new double[] {0.001, 0.05, 0.2, 0.5, 0.77, 0.95, 0.999}) {
            assertEquals(p, distribution.cumulativeProbability(uncertain.quantile(p)), 1e-9, uncertain.toString());
        }
    }
}
