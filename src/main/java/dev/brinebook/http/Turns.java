package dev.brinebook.http;

import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/**
 * Lets no more calculations run at once than the processors have work for. The others wait a little, and are then told
 * to come back; pages and health need no turn, so that they answer under any load.
 */
final class Turns {

    /** Two for each processor: a calculation never waits for anything else. */
    static final int AT_ONCE = Math.min(100, 2 * Runtime.getRuntime().availableProcessors());
    /** With those that run fewer than the 250 threads of the server, so that one is left for the health paths. */
    private static final int MOST_WAITING = 100;
    private static final long LONGEST_WAIT_SECONDS = 1;

    private final Semaphore free = new Semaphore(AT_ONCE, true);

    /**
     * What {@code work} gives, in turn.
     *
     * @throws ProblemException when no turn is free in time
     */
    <T> T take(Supplier<T> work) {
        if (!waitForOne()) {
            throw new ProblemException(ProblemType.OVERLOADED, ProblemType.OVERLOADED.explanation());
        }
        try {
            return work.get();
        } finally {
            free.release();
        }
    }

    /**
     * What {@code work} gives, in turn, however long that takes: for a caller that is in no hurry.
     *
     * @throws ProblemException when the service stops
     */
    <T> T await(Supplier<T> work) {
        try {
            free.acquire();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new ProblemException(ProblemType.OVERLOADED, ProblemType.OVERLOADED.explanation());
        }
        try {
            return work.get();
        } finally {
            free.release();
        }
    }

    private boolean waitForOne() {
        try {
            return free.getQueueLength() < MOST_WAITING && free.tryAcquire(LONGEST_WAIT_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
