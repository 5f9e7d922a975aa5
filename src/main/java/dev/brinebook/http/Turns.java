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
    /** Of those, for lines of streams: whoever waits for one answer is not to wait behind all lines of all lists. */
    static final int AT_ONCE_IN_BULK = AT_ONCE / 2;
    static final int MOST_WAITING = 32;
    private static final long LONGEST_WAIT_SECONDS = 1;

    private final Semaphore free = new Semaphore(AT_ONCE, true);
    private final Semaphore freeInBulk = new Semaphore(AT_ONCE_IN_BULK, true);
    private final RequestMetrics metrics;

    Turns(RequestMetrics metrics) {
        this.metrics = metrics;
    }

    /**
     * What {@code work} gives, in turn.
     *
     * @throws ProblemException when no turn is free in time
     */
    <T> T take(Supplier<T> work) {
        if (!waitForOne()) {
            metrics.reject(Rejection.TURNS);
            throw new ProblemException(ProblemType.OVERLOADED, ProblemType.OVERLOADED.explanation());
        }
        try {
            return work.get();
        } finally {
            free.release();
        }
    }

    /**
     * What {@code work} gives, in turn, however long that takes: for a line of a stream, whose caller is in no hurry.
     *
     * @throws ProblemException when the service stops
     */
    <T> T await(Supplier<T> work) {
        return after(freeInBulk, () -> after(free, work));
    }

    private static <T> T after(Semaphore turns, Supplier<T> work) {
        try {
            turns.acquire();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new ProblemException(ProblemType.OVERLOADED, ProblemType.OVERLOADED.explanation());
        }
        try {
            return work.get();
        } finally {
            turns.release();
        }
    }

    /** Whether as many wait as may, so that the next would wait in vain. */
    boolean areAllWaitedFor() {
        return free.getQueueLength() >= MOST_WAITING;
    }

    private boolean waitForOne() {
        try {
            return !areAllWaitedFor() && free.tryAcquire(LONGEST_WAIT_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
