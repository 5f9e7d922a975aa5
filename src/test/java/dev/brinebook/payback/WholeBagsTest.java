// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Rows;
import java.util.Arrays;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class WholeBagsTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/payback/worked-whole-bags.csv", useHeadersInDisplayName = true)
    void agreesWithBagsCountedByHand(double salt, double bag, int bagsPerTrip, int years, String expected) {
        assertArrayEquals(Stream.of(expected.split(" ")).mapToLong(Long::parseLong).toArray(),
                WholeBags.boughtPerYear(salt, bag, bagsPerTrip, years));
    }

    @Test
    void readsEveryRow() {
        assertEquals(7, Rows.in("/payback/worked-whole-bags.csv"));
    }

    @Test
    void coversTheUseAndIsNeverMoreThanATripAhead() {
        for (int seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            double salt = 400 * random.nextDouble();
            double bag = 5 + 20 * random.nextDouble();
            int perTrip = 1 + random.nextInt(8);
            long bags = 0;
            int year = 0;
            for (long bought : WholeBags.boughtPerYear(salt, bag, perTrip, 1 + random.nextInt(40))) {
                String at = "seed " + seed + ", year " + ++year;
                bags += bought;
                double ahead = bags * bag - year * salt;
                assertTrue(bought >= 0 && bought % perTrip == 0, at);
                assertTrue(ahead >= -1e-6 && ahead < bag * perTrip, at + ", ahead " + ahead);
            }
        }
    }

    @Test
    void staysCountableAtTheLargestUse() {
        long[] bought = WholeBags.boughtPerYear(1e9, 0.1, 1_000, 40);
        assertEquals(40e10, Arrays.stream(bought).sum(), 1_000);
    }

    @Test
    void refusesWhatLiesOutsideItsRange() {
        assertThrows(IllegalArgumentException.class, () -> WholeBags.boughtPerYear(-1, 25, 1, 10));
        assertThrows(IllegalArgumentException.class, () -> WholeBags.boughtPerYear(Double.NaN, 25, 1, 10));
        assertThrows(IllegalArgumentException.class, () -> WholeBags.boughtPerYear(1.1 * YearlyUse.MAX_PER_YEAR, 25, 1, 10));
        assertThrows(IllegalArgumentException.class, () -> WholeBags.boughtPerYear(100, 0, 1, 10));
        assertThrows(IllegalArgumentException.class, () -> WholeBags.boughtPerYear(100, 1e-300, 1, 10));
        assertThrows(IllegalArgumentException.class, () -> WholeBags.boughtPerYear(100, 25, 0, 10));
        assertThrows(IllegalArgumentException.class, () -> WholeBags.boughtPerYear(100, 25, 1_001, 10));
        assertThrows(IllegalArgumentException.class, () -> WholeBags.boughtPerYear(100, 25, 1, 0));
        assertThrows(IllegalArgumentException.class, () -> WholeBags.boughtPerYear(100, 25, 1, 41));
    }
}
