package dev.brinebook.http;

import dev.brinebook.guard.CalculationStopped;
import dev.brinebook.guard.StopSign;
import dev.brinebook.wording.Message;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;

/**
 * Lets no more calculations run at once than the processors have work for. The others wait a little, and are then told
 * to come back; pages and health need no turn, so that they answer under any load. A turn does not last for ever: what is not
 * done in time is ended.
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
    private final int longestMilliseconds;

    Turns(RequestMetrics metrics, int longestMilliseconds) {
        this.metrics = metrics;
        this.longestMilliseconds = longestMilliseconds;
    }

    /**
     * What {@code work} gives, in turn.
     *
     * @throws ProblemException when no turn is free in time, or the work is not done in time
     */
    <T> T take(Supplier<T> work) {
        if (!waitForOne()) {
            metrics.reject(Rejection.TURNS);
            throw new ProblemException(ProblemType.OVERLOADED, ProblemType.OVERLOADED.explanation());
        }
        try {
            return inTime(work);
        } finally {
            free.release();
        }
    }

    /**
     * What {@code work} gives, in turn, however long the wait for it: for a line of a stream, whose caller is in no hurry.
     *
     * @throws ProblemException when the service stops, or the work is not done in time
     */
    <T> T await(Supplier<T> work) {
        return after(freeInBulk, () -> after(free, () -> inTime(work)));
    }

    private <T> T inTime(Supplier<T> work) {
        long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(longestMilliseconds);
        try {
            return StopSign.obeying(() -> System.nanoTime() - end > 0, work);
        } catch (CalculationStopped late) {
            metrics.reject(Rejection.TIME);
            throw new ProblemException(ProblemType.CALCULATION_TOO_LONG, Message.of(
                    "The calculation was not done after {0} milliseconds, and was ended.", longestMilliseconds));
        }
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

    /** A turn that is free is taken before those who wait: to wake one of them for each takes longer than most calculations. */
    private boolean waitForOne() {
        try {
            return free.tryAcquire() || !areAllWaitedFor() && free.tryAcquire(LONGEST_WAIT_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return false;
        }
    }
}
