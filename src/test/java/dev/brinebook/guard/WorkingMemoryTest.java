// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.guard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class WorkingMemoryTest {

    private static final long BYTES = 100_000;
    private static final int MOST_KEPT = (int) (WorkingMemory.MOST_BYTES_OF_A_TYPE / BYTES);

    private record Key(int number) {
    }

    @BeforeEach
    void forget() {
        WorkingMemory.clear();
    }

    private static Object kept(int key) {
        return WorkingMemory.kept(new Key(key), Object.class, BYTES, Object::new);
    }

    @Test
    void aLaterCalculationFindsWhatAnEarlierOneLeft() {
        Object first = WorkingMemory.during(() -> kept(1));
        assertSame(first, WorkingMemory.during(() -> kept(1)));
        assertNotSame(first, WorkingMemory.during(() -> kept(2)));
    }

    @Test
    void withoutAMemoryEverythingIsMadeAnew() {
        assertNotSame(kept(1), kept(1));
    }

    @Test
    void aCalculationWithinAnotherHasTheSameMemory() {
        WorkingMemory.during(() -> {
            assertSame(kept(1), WorkingMemory.during(() -> kept(1)));
            return assertSameAgain();
        });
    }

    private static Object assertSameAgain() {
        Object one = kept(1);
        assertSame(one, kept(1));
        return one;
    }

    @Test
    void twoThatRunAtOnceShareNothing() {
        CountDownLatch both = new CountDownLatch(2);
        var other = CompletableFuture.supplyAsync(() -> WorkingMemory.during(() -> meet(both)));
        Object own = WorkingMemory.during(() -> meet(both));
        assertNotSame(own, other.join());
    }

    private static Object meet(CountDownLatch both) {
        both.countDown();
        try {
            both.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
        return kept(1);
    }

    @Test
    void aCalculationThatFailsTakesWithItWhatItMayHaveLeftHalfDone() {
        Object first = WorkingMemory.during(() -> kept(1));
        assertThrows(IllegalStateException.class, () -> WorkingMemory.during(() -> {
            throw new IllegalStateException("refused before anything is calculated");
        }));
        assertSame(first, WorkingMemory.during(() -> kept(1)));
        assertThrows(IllegalStateException.class, () -> WorkingMemory.during(() -> {
            kept(1);
            throw new IllegalStateException("ended in the midst");
        }));
        assertNotSame(first, WorkingMemory.during(() -> kept(1)));
    }

    @Test
    void keepsNoMoreThanItMay() {
        Object first = WorkingMemory.during(() -> kept(0));
        int made = WorkingMemory.during(() -> {
            for (int i = 1; i <= MOST_KEPT; i++) {
                kept(i);
            }
            return MOST_KEPT;
        });
        assertEquals(MOST_KEPT, made);
        assertNotSame(first, WorkingMemory.during(() -> kept(0)));
    }

    @Test
    void resultsOfOneTypePushOutNoneOfAnother() {
        Object first = WorkingMemory.during(() -> kept(0));
        WorkingMemory.during(() -> {
            for (int i = 0; i <= MOST_KEPT; i++) {
                WorkingMemory.kept(new Key(i), String.class, BYTES, String::new);
            }
            return MOST_KEPT;
        });
        assertSame(first, WorkingMemory.during(() -> kept(0)));
    }

    @Test
    void whoCalculatesIsToldBeforeEachTable() {
        List<Long> told = new ArrayList<>();
        WorkingMemory.during(told::add, () -> {
            kept(1);
            WorkingMemory.table(new Key(2), Object.class, BYTES, 7, Object::new);
            return WorkingMemory.table(new Key(2), Object.class, BYTES, 8, Object::new);
        });
        WorkingMemory.during(() -> WorkingMemory.table(new Key(3), Object.class, BYTES, 9, Object::new));
        assertEquals(List.of(7L, 8L), told);
    }
}
