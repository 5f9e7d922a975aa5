// SPDX-License-Identifier: Apache-2.0
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

class CancellationTokenTest {

    @Test
    void runsOnWithoutACancellation() {
        assertDoesNotThrow(CancellationToken::obey);
        assertEquals("done", CancellationToken.obeying(() -> false, () -> {
            CancellationToken.obey();
            return "done";
        }));
    }

    @Test
    void appliesToTheCalculationUnderItAlone() {
        assertThrows(CalculationCancelled.class, () -> CancellationToken.obeying(() -> true, () -> {
            assertDoesNotThrow(() -> CancellationToken.obeying(() -> false, () -> {
                CancellationToken.obey();
                return "";
            }));
            assertTrue(CancellationToken.current().getAsBoolean(), "the outer one holds again");
            CancellationToken.obey();
            return "";
        }));
        assertFalse(CancellationToken.current().getAsBoolean());
    }

    /** Whichever threads work on a sample, no draw is made after the sign shows. */
    @Test
    void appliesToEveryThreadOfACalculation() {
        AtomicInteger draws = new AtomicInteger();
        assertThrows(CalculationCancelled.class, () -> CancellationToken.obeying(() -> draws.get() >= 100,
                () -> Sample.of(List.of(new Uncertain.Normal(1, 0.1)), () -> (inputs, draw) -> {
                    draws.incrementAndGet();
                    return inputs;
                }, Sample.MAX_DRAWS, 0, 1)));
        int threads = Runtime.getRuntime().availableProcessors() + 1;
        assertTrue(draws.get() < 100 + threads, draws.get() + " draws");
    }
}
