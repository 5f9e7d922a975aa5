package dev.brinebook.guard;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.randomness.Sample;
import dev.brinebook.randomness.Uncertain;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class StopSignTest {

    @Test
    void nobodyStopsWhoWasNotAskedTo() {
        assertDoesNotThrow(StopSign::obey);
        assertEquals("done", StopSign.obeying(() -> false, () -> {
            StopSign.obey();
            return "done";
        }));
    }

    @Test
    void holdsForWhatRunsUnderItAndNoLonger() {
        assertThrows(CalculationStopped.class, () -> StopSign.obeying(() -> true, () -> {
            assertDoesNotThrow(() -> StopSign.obeying(() -> false, () -> {
                StopSign.obey();
                return "";
            }));
            assertTrue(StopSign.current().getAsBoolean(), "the outer one holds again");
            StopSign.obey();
            return "";
        }));
        assertFalse(StopSign.current().getAsBoolean());
    }

    /** Whichever threads work on a sample, no draw is made after the sign shows. */
    @Test
    void holdsForEveryThreadThatTakesPart() {
        AtomicInteger draws = new AtomicInteger();
        assertThrows(CalculationStopped.class, () -> StopSign.obeying(() -> draws.get() >= 100,
                () -> Sample.of(List.of(new Uncertain.Normal(1, 0.1)), () -> (inputs, draw) -> {
                    draws.incrementAndGet();
                    return inputs;
                }, Sample.MAX_DRAWS, 0, 1)));
        int threads = Runtime.getRuntime().availableProcessors() + 1;
        assertTrue(draws.get() < 100 + threads, draws.get() + " draws");
    }
}
