// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.randomness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class QuantileTest {

    private static final double NEVER = Double.POSITIVE_INFINITY;

    /** By hand: h is 3 p for the four values 1, 2, 4 and 8, such as 2.25, a quarter of the way from 4 to 8. */
    @ParameterizedTest
    @CsvSource({"0, 1", "0.25, 1.75", "0.5, 3", "0.75, 5", "1, 8"})
    void liesBetweenTheValuesNextToIt(double share, double expected) {
        assertEquals(expected, Quantile.ofSorted(new double[] {1, 2, 4, 8}, share), 1e-15);
    }

    @Test
    void isInfiniteOnlyWhereAValueNextToItIs() {
        double[] sorted = {1, 2, NEVER, NEVER};
        assertEquals(1.5, Quantile.ofSorted(sorted, 0.5 / 3), 1e-15);
        assertEquals(NEVER, Quantile.ofSorted(sorted, 0.5));
        assertEquals(NEVER, Quantile.ofSorted(sorted, 0.9));
        assertEquals(7, Quantile.ofSorted(new double[] {7}, 0.3));
    }

    @Test
    void refusesAShareOutOfRange() {
        assertThrows(IllegalArgumentException.class, () -> Quantile.ofSorted(new double[] {1}, -0.1));
        assertThrows(IllegalArgumentException.class, () -> Quantile.ofSorted(new double[] {1}, Double.NaN));
    }
}
