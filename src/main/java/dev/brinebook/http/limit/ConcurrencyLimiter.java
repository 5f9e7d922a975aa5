// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.limit;

import dev.brinebook.http.problem.ProblemException;
import dev.brinebook.http.problem.ProblemType;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;

/**
 * Lets no more calculations run at once than the processors have work for and the heap has room for. Others wait a little and are then
 * asked to retry. Pages and health do not pass here, so they are answered under any load.
 *
 * <p>Fair between callers: one caller never holds the last permit, a released permit goes to the next caller in turn, and when all places
 * to wait are taken, whoever has the most of them gives one up. So one caller cannot cause a 503 for another. As long as only one caller
 * waits, a request that arrives takes a free permit ahead of those that wait: waking a thread takes longer than most calculations.
 *
 * <p>Jetty's QoSHandler cannot do this work: it holds a permit until the answer has been sent, so that a few callers that read slowly
 * would hold them all; it knows no shares; and it refuses the newcomer, whoever filled the queue.
 */
public final class ConcurrencyLimiter {

    /** Two for each processor: a calculation never waits for anything else. */
    public static final int AT_ONCE = Math.min(100, Math.max(2, 2 * Runtime.getRuntime().availableProcessors()));
    /** Beside those, for lines of bulk streams: a single request does not wait behind the lines of streams. */
    public static final int AT_ONCE_IN_BULK = AT_ONCE / 2;
    /** One permit is always left for another caller. */
    public static final int MOST_OF_ONE_CALLER = AT_ONCE - 1;
    public static final int MOST_WAITING = 32;
    private static final long LONGEST_WAIT_NANOS = TimeUnit.SECONDS.toNanos(1);
    private static final long NO_LIMIT = Long.MAX_VALUE;

    private final RequestMetrics metrics;
    private final int longestMilliseconds;
    private final Gate calls;
    /** A stream is in no hurry: its lines wait however long, no more of them than there are streams. */
    private final Gate bulk = new Gate(AT_ONCE_IN_BULK, AT_ONCE_IN_BULK, NO_LIMIT, StreamSlots.MOST_AT_ONCE, NO_LIMIT);

    /** Calls that run at once may hold {@code mostBytes} of the heap; each calculation may take {@code longestMilliseconds}. */
    public ConcurrencyLimiter(RequestMetrics metrics, int longestMilliseconds, long mostBytes) {
        this.metrics = metrics;
        this.longestMilliseconds = longestMilliseconds;
        this.calls = new Gate(AT_ONCE, MOST_OF_ONE_CALLER, mostBytes, MOST_WAITING, LONGEST_WAIT_NANOS);
    }

    /**
     * What {@code work} returns, with a permit and before its deadline.
     *
     * @param bytes heap that the work may hold
     * @throws ProblemException when no permit is free in time, or the work is not done in time
     */
    public <T> T call(String caller, long bytes, Supplier<T> work) {
        return callWithoutDeadline(caller, bytes, () -> deadline().run(work));
    }

    /**
     * The same for work that sets {@link #deadline} itself.
     *
     * @throws ProblemException when no permit is free in time
     */
    public <T> T callWithoutDeadline(String caller, long bytes, Supplier<T> work) {
        if (!calls.enter(caller, bytes)) {
            metrics.reject(Rejection.PERMITS);
            throw overloaded();
        }
        try {
            return work.get();
        } finally {
            calls.leave(caller, bytes);
        }
    }

    /**
     * Has {@code work} done, with a permit however long the wait for it: for lines of a stream, whose caller is in no hurry. The work sets
     * {@link #deadline} itself, for each line, and is over after some lines, as others wait.
     *
     * @throws ProblemException when the service stops
     */
    public void runInBulk(String caller, Runnable work) {
        if (!bulk.enter(caller, 0)) {
            throw overloaded();
        }
        try {
            work.run();
        } finally {
            bulk.leave(caller, 0);
        }
    }

    /** A deadline that begins now, for all that one request has calculated. */
    public Deadline deadline() {
        return new Deadline(longestMilliseconds, metrics);
    }

    /** Whether {@code caller} would wait in vain. */
    public boolean isFullFor(String caller) {
        return calls.isFullFor(caller);
    }

    /** Whether nothing is calculated now. */
    public boolean isIdle() {
        return calls.isIdle() && bulk.isIdle();
    }

    static ProblemException overloaded() {
        return new ProblemException(ProblemType.OVERLOADED, ProblemType.OVERLOADED.explanation());
    }

    /** A request that waits, with what has become of it. */
    private static final class Waiter {

        private final long bytes;
        private final Condition changed;
        private boolean admitted;
        private boolean evicted;

        Waiter(long bytes, Condition changed) {
            this.bytes = bytes;
            this.changed = changed;
        }
    }

    /** Permits and bytes, and who waits for them. */
    private static final class Gate {

        private final ReentrantLock lock = new ReentrantLock();
        private final int permits;
        private final int permitsOfOneCaller;
        private final long mostBytes;
        private final int mostWaiting;
        private final long longestWaitNanos;
        private final Map<String, Integer> running = new HashMap<>();
        /** By caller, the one to be served next first. */
        private final Map<String, Deque<Waiter>> waiting = new LinkedHashMap<>();
        private int runningNow;
        private int waitingNow;
        private long bytesNow;

        Gate(int permits, int permitsOfOneCaller, long mostBytes, int mostWaiting, long longestWaitNanos) {
            this.permits = permits;
            this.permitsOfOneCaller = permitsOfOneCaller;
            this.mostBytes = mostBytes;
            this.mostWaiting = mostWaiting;
            this.longestWaitNanos = longestWaitNanos;
        }

        /** Whether a permit was had; false after the longest wait, or at once when there is no place to wait. */
        boolean enter(String caller, long bytes) {
            lock.lock();
            try {
                if (mayRun(caller, bytes) && (waiting.isEmpty() || !waiting.containsKey(caller) || waiting.size() == 1)) {
                    admit(caller, bytes);
                    return true;
                }
                if (waitingNow >= mostWaiting && !makePlaceFor(caller)) {
                    return false;
                }
                return await(caller, new Waiter(bytes, lock.newCondition()));
            } finally {
                lock.unlock();
            }
        }

        private boolean await(String caller, Waiter waiter) {
            waiting.computeIfAbsent(caller, one -> new ArrayDeque<>()).addLast(waiter);
            waitingNow++;
            long left = longestWaitNanos;
            try {
                while (!waiter.admitted && !waiter.evicted && left > 0) {
                    left = waiter.changed.awaitNanos(left);
                    if (!waiter.admitted && !waiter.evicted && isFirst(caller, waiter) && mayRun(caller, waiter.bytes)) {
                        forget(caller, waiter);
                        admit(caller, waiter.bytes);
                        serveNext();
                        return true;
                    }
                }
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
            }
            if (!waiter.admitted && !waiter.evicted) {
                forget(caller, waiter);
                serveNext();
            }
            return waiter.admitted;
        }

        void leave(String caller, long bytes) {
            lock.lock();
            try {
                runningNow--;
                bytesNow -= bytes;
                running.computeIfPresent(caller, (one, count) -> count == 1 ? null : count - 1);
                serveNext();
            } finally {
                lock.unlock();
            }
        }

        public boolean isFullFor(String caller) {
            lock.lock();
            try {
                return waitingNow >= mostWaiting && waitingMost(caller) == null;
            } finally {
                lock.unlock();
            }
        }

        boolean isIdle() {
            lock.lock();
            try {
                return runningNow == 0;
            } finally {
                lock.unlock();
            }
        }

        private boolean mayRun(String caller, long bytes) {
            return runningNow < permits && running.getOrDefault(caller, 0) < permitsOfOneCaller
                    && (runningNow == 0 || bytesNow + bytes <= mostBytes);
        }

        private void admit(String caller, long bytes) {
            runningNow++;
            bytesNow += bytes;
            running.merge(caller, 1, Integer::sum);
        }

        private boolean isFirst(String caller, Waiter waiter) {
            Deque<Waiter> own = waiting.get(caller);
            return own != null && own.peekFirst() == waiter;
        }

        private void forget(String caller, Waiter waiter) {
            Deque<Waiter> own = waiting.get(caller);
            own.remove(waiter);
            waitingNow--;
            if (own.isEmpty()) {
                waiting.remove(caller);
            }
        }

        /**
         * Gives what is free to callers in turn; for a single caller it only wakes the first, which may find that another was quicker.
         */
        private void serveNext() {
            if (waiting.isEmpty()) {
                return;
            }
            if (waiting.size() == 1) {
                waiting.values().iterator().next().peekFirst().changed.signal();
                return;
            }
            for (String served = nextToServe(); served != null; served = nextToServe()) {
                Deque<Waiter> own = waiting.remove(served);
                Waiter waiter = own.removeFirst();
                waitingNow--;
                if (!own.isEmpty()) {
                    waiting.put(served, own); // behind all others
                }
                admit(served, waiter.bytes);
                waiter.admitted = true;
                waiter.changed.signal();
            }
        }

        private String nextToServe() {
            return waiting.entrySet().stream().filter(entry -> mayRun(entry.getKey(), entry.getValue().peekFirst().bytes))
                    .map(Map.Entry::getKey).findFirst().orElse(null);
        }

        private boolean makePlaceFor(String caller) {
            String most = waitingMost(caller);
            if (most == null) {
                return false;
            }
            Waiter last = waiting.get(most).peekLast();
            forget(most, last);
            last.evicted = true;
            last.changed.signal();
            return true;
        }

        /** The caller with the most places to wait, if it has at least two more than {@code caller}; else null. */
        private String waitingMost(String caller) {
            int own = waiting.containsKey(caller) ? waiting.get(caller).size() : 0;
            return waiting.entrySet().stream().max(Comparator.comparingInt(entry -> entry.getValue().size()))
                    .filter(entry -> entry.getValue().size() > own + 1).map(Map.Entry::getKey).orElse(null);
        }
    }
}
