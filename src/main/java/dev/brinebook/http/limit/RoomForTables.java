// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.limit;

import dev.brinebook.guard.CancellationToken;
import dev.brinebook.http.problem.ProblemException;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/**
 * Heap reserved for the tables of one household's calculation, from its first table on. Without it, a few households with a different
 * use on each weekday, or with absences, would fill a small heap. Not thread-safe.
 */
final class RoomForTables implements AutoCloseable {

    private static final long MIB = 1L << 20;
    private static final long MILLISECONDS_BETWEEN_LOOKS = 20;

    private static final int ALL = room(Runtime.getRuntime().maxMemory());
    private static final Semaphore ROOM = new Semaphore(ALL, true);

    private int taken;

    /** MiB for tables in a heap. */
    static int room(long heapBytes) {
        return (int) Math.max(1, (heapBytes - HeapPlan.IDLE_BYTES) / MIB);
    }

    /**
     * Reserves heap for tables, waiting until it is free. Does nothing if at least as much is reserved already. The whole room is enough
     * for a request that is larger.
     *
     * @throws dev.brinebook.guard.CalculationCancelled when the calculation is to stop before
     * @throws ProblemException when the thread is to end
     */
    void take(long bytes) {
        int wanted = (int) Math.min(ALL, (bytes + MIB - 1) / MIB);
        if (wanted <= taken) {
            return;
        }
        close(); // Who holds some while waiting for more may wait for another who does the same.
        try {
            while (taken == 0) {
                taken = ROOM.tryAcquire(wanted, MILLISECONDS_BETWEEN_LOOKS, TimeUnit.MILLISECONDS) ? wanted : 0;
                CancellationToken.obey();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw ConcurrencyLimiter.overloaded();
        }
    }

    @Override
    public void close() {
        ROOM.release(taken);
        taken = 0;
    }
}
