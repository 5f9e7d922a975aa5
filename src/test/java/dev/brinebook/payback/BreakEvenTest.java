package dev.brinebook.payback;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.brinebook.guard.NoAnswer;
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
        assertEquals(NoAnswer.NEVER_BREAKS_EVEN, BreakEven.nearest(x -> x - 20.01, BreakEven.LEAST_FACTOR,
                BreakEven.MOST_FACTOR, 1, 1e-12).at().reason());
    }

    private static double nearest(DoubleUnaryOperator value, double told) {
        return BreakEven.nearest(value, BreakEven.LEAST_FACTOR, BreakEven.MOST_FACTOR, told, 1e-12).at().value();
    }
}
