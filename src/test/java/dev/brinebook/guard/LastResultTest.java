package dev.brinebook.guard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class LastResultTest {

    @Test
    void calculatesOnlyWhatWasNotAskedLast() {
        List<Integer> calculated = new ArrayList<>();
        LastResult<Integer, Integer> square = new LastResult<>(number -> {
            calculated.add(number);
            return number * number;
        });
        assertEquals(List.of(9, 9, 16, 9), List.of(square.of(3), square.of(3), square.of(4), square.of(3)));
        assertEquals(List.of(3, 4, 3), calculated);
    }

    @Test
    void keepsNothingOfWhatFailed() {
        LastResult<Integer, Integer> share = new LastResult<>(number -> 12 / number);
        assertEquals(4, share.of(3));
        assertThrows(ArithmeticException.class, () -> share.of(0));
        assertEquals(4, share.of(3));
    }

    @Test
    void answersEachThreadWhatItAsked() {
        LastResult<Integer, Integer> square = new LastResult<>(number -> number * number);
        IntStream.range(0, 100_000).parallel().forEach(i -> assertEquals(i % 7 * (i % 7), square.of(i % 7)));
    }
}
