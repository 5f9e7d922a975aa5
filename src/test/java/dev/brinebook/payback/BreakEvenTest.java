// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.guard.NoResultReason;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against polynomials whose zeros are read off. */
class BreakEvenTest {

    /** Half and three times are zeros: as a ratio, 1 is 2 from the first and 3 from the second. */
    @ParameterizedTest(name = "nearest to {0}: {1}")
    @CsvSource({"1, 0.5", "0.1, 0.5", "1.2, 0.5", "1.3, 3", "2, 3", "15, 3"})
    void ofSeveralTheNearestCounts(double told, double expected) {
        assertEquals(expected, nearest(x -> (x - 0.5) * (x - 3), told), 1e-9);
        assertEquals(expected, nearest(x -> (0.5 - x) * (x - 3), told), 1e-9);
    }

    @Test
    void theEndsOfTheRangeBelongToIt() {
        assertEquals(BreakEven.LEAST_FACTOR, nearest(x -> x - BreakEven.LEAST_FACTOR, 1));
        assertEquals(BreakEven.MOST_FACTOR, nearest(x -> x - BreakEven.MOST_FACTOR, 1));
        assertEquals(BreakEven.LEAST_FACTOR, nearest(x -> (x - BreakEven.LEAST_FACTOR) * (x - BreakEven.MOST_FACTOR), 0.9));
        assertEquals(BreakEven.MOST_FACTOR, nearest(x -> (x - BreakEven.LEAST_FACTOR) * (x - BreakEven.MOST_FACTOR), 1.1));
        assertEquals(19.99, nearest(x -> x - 19.99, 1), 1e-9);
        assertEquals(NoResultReason.NEVER_BREAKS_EVEN, BreakEven.nearest(x -> x - 20.01, BreakEven.LEAST_FACTOR,
                BreakEven.MOST_FACTOR, 1, 1e-12).at().reason());
    }

    /** A step of one at the square root of 2 leaves worth on both sides; a slope of one has its zero there. */
    @ParameterizedTest(name = "{0} and {1} beside the step")
    @CsvSource({"-0.5, 0.5, true, 0.5", "-0.25, 0.75, true, 0.75", "0, 0, false, 0"})
    void saysWhereTheWorthJumpsOverZero(double below, double above, boolean jumps, double within) {
        BreakEven.Place place = BreakEven.nearest(x -> x - Math.sqrt(2) + (x < Math.sqrt(2) ? below : above),
                BreakEven.LEAST_FACTOR, BreakEven.MOST_FACTOR, 1, 1e-6);
        assertEquals(Math.sqrt(2), place.at().value(), 2e-6);
        assertEquals(jumps, place.jumps());
        assertEquals(within, place.within(), 2e-6);
    }

    private static double nearest(DoubleUnaryOperator value, double told) {
        return BreakEven.nearest(value, BreakEven.LEAST_FACTOR, BreakEven.MOST_FACTOR, told, 1e-12).at().value();
    }
}
