// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.guard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GuardTest {

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void refusesNaNAndInfinity(double value) {
        assertThrows(IllegalArgumentException.class, () -> Guard.finite(value, "x"));
        assertThrows(IllegalArgumentException.class, () -> Guard.positive(value, "x"));
        assertThrows(IllegalArgumentException.class, () -> Guard.notNegative(value, "x"));
        assertThrows(IllegalArgumentException.class, () -> Guard.within(value, 0, 1, "x"));
    }

    @Test
    void keepsTheBounds() {
        assertEquals(0, Guard.notNegative(0, "x"));
        assertEquals(1, Guard.within(1.0, 0.0, 1.0, "x"));
        assertEquals(3, Guard.within(3, 1, 3, "x"));
        assertEquals(1, Guard.within(1, 1, 3, "x"));
        assertThrows(IllegalArgumentException.class, () -> Guard.positive(0, "x"));
        assertThrows(IllegalArgumentException.class, () -> Guard.within(4, 1, 3, "x"));
    }

    @Test
    void returnsAcceptedValues() {
        assertEquals(0.5, Guard.finite(0.5, "x"));
        assertEquals(0.5, Guard.positive(0.5, "x"));
        assertEquals(0.5, Guard.notNegative(0.5, "x"));
    }

    /** A thousandth of a millionth of the bound, and none where the bound is 0. */
    @ParameterizedTest
    @CsvSource({"-50.00000004, -50, 200, true", "-50.00000006, -50, 200, false", "200.0000001, -50, 200, true",
        "200.0000003, -50, 200, false", "0, 0, 1, true", "-1e-300, 0, 1, false", "0, -1, 0, true", "1e-300, -1, 0, false",
        "NaN, 0, 1, false"})
    void forgivesTheLastBitsOfABound(double value, double min, double max, boolean within) {
        assertEquals(within, Guard.isWithin(value, min, max));
    }

    @Test
    void namesArgumentBoundAndValue() {
        var refusal = assertThrows(IllegalArgumentException.class, () -> Guard.within(21, 3.0, 20.0, "doseGrams"));
        assertEquals("doseGrams must be from 3.0 to 20.0, was 21.0", refusal.getMessage());
    }

    @Test
    void aFigureIsANumberOrAReason() {
        OptionalResult number = OptionalResult.of(2).map(x -> x + 1);
        assertTrue(number.exists());
        assertEquals(3, number.value());
        assertThrows(IllegalStateException.class, number::reason);
        OptionalResult none = OptionalResult.none(NoResultReason.NOTHING_SAVED).map(x -> x + 1);
        assertFalse(none.exists());
        assertEquals(NoResultReason.NOTHING_SAVED, none.reason());
        assertThrows(IllegalStateException.class, none::value);
        assertTrue(none.asOptional().isEmpty());
        assertEquals(3, number.asOptional().orElseThrow());
        assertEquals("3.0", number.toString());
        assertEquals("none: NOTHING_SAVED", none.toString());
        assertThrows(IllegalArgumentException.class, () -> OptionalResult.of(Double.NaN));
    }
}
