// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.guard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LastResultCacheTest {

    @Test
    void calculatesOnlyNewQuestions() {
        List<Integer> calculated = new ArrayList<>();
        LastResultCache<Integer, Integer> square = new LastResultCache<>(number -> {
            calculated.add(number);
            return number * number;
        });
        assertEquals(List.of(9, 9, 16, 9), List.of(square.of(3), square.of(3), square.of(4), square.of(3)));
        assertEquals(List.of(3, 4, 3), calculated);
    }

    @Test
    void keepsNothingOfWhatFailed() {
        LastResultCache<Integer, Integer> share = new LastResultCache<>(number -> 12 / number);
        assertEquals(4, share.of(3));
        assertThrows(ArithmeticException.class, () -> share.of(0));
        assertEquals(4, share.of(3));
    }

    @Test
    void answersEachThreadItsOwnQuestion() {
        LastResultCache<Integer, Integer> square = new LastResultCache<>(number -> number * number);
        IntStream.range(0, 100_000).parallel().forEach(i -> assertEquals(i % 7 * (i % 7), square.of(i % 7)));
    }
}
