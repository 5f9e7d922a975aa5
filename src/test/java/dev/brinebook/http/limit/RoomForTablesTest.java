// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.limit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.brinebook.guard.CalculationCancelled;
import dev.brinebook.guard.CancellationToken;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoomForTablesTest {

    private static final long MORE_THAN_THERE_IS = Long.MAX_VALUE / 2;

    /** What all else takes was measured with the image's flags by the hostile step. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            # heap MiB, for tables
            32,   1
            96,   56
            1024, 984
            """)
    void whatAllElseTakesIsLeft(long heap, int room) {
        assertEquals(room, RoomForTables.room(heap << 20));
    }

    @Test
    void oneThatFindsNoRoomWaitsUntilThereIs() throws Exception {
        CompletableFuture<Void> second;
        try (RoomForTables first = new RoomForTables(); RoomForTables late = new RoomForTables()) {
            first.take(MORE_THAN_THERE_IS);
            first.take(1);
            assertThrows(CalculationCancelled.class, () -> CancellationToken.obeying(() -> true, () -> {
                late.take(1);
                return null;
            }));
            second = CompletableFuture.runAsync(RoomForTablesTest::takeAll);
        }
        second.get();
    }

    private static void takeAll() {
        try (RoomForTables room = new RoomForTables()) {
            room.take(1);
            room.take(MORE_THAN_THERE_IS);
        }
    }

    @Test
    void whatIsGivenBackTwiceIsGivenBackOnce() {
        RoomForTables room = new RoomForTables();
        room.take(1);
        room.close();
        room.close();
        takeAll();
    }
}
