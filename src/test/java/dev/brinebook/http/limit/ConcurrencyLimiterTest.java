// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.limit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.http.problem.ProblemException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Permits to calculate: bounded in number and in bytes, and fair between callers (max-min fairness). */
@Timeout(30)
class ConcurrencyLimiterTest {

    private static final int ALL = ConcurrencyLimiter.AT_ONCE;

    private final RequestMetrics metrics = new RequestMetrics();
    private final ConcurrencyLimiter limiter = new ConcurrencyLimiter(metrics, 10_000, 100);
    private final ExecutorService threads = Executors.newCachedThreadPool();
    private final CountDownLatch end = new CountDownLatch(1);
    private final AtomicInteger running = new AtomicInteger();

    @AfterEach
    void stop() throws InterruptedException {
        end.countDown();
        threads.shutdown();
        assertTrue(threads.awaitTermination(20, TimeUnit.SECONDS));
        metrics.close();
    }

    private CompletableFuture<Integer> hold(String caller, long bytes) {
        return CompletableFuture.supplyAsync(() -> limiter.call(caller, bytes, () -> {
            running.incrementAndGet();
            try {
                end.await();
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
            }
            return running.decrementAndGet();
        }), threads);
    }

    private void awaitRunning(int count) throws InterruptedException {
        while (running.get() < count) {
            TimeUnit.MILLISECONDS.sleep(5);
        }
    }

    /** However many requests one caller sends, another is served at once. */
    @Test
    void leavesAPermitForAnotherCaller() throws Exception {
        List<CompletableFuture<Integer>> flood = new ArrayList<>();
        for (int i = 0; i < ALL + ConcurrencyLimiter.MOST_WAITING; i++) {
            flood.add(hold("one", 0));
        }
        awaitRunning(ALL - 1);
        assertEquals("answered", limiter.call("other", 0, () -> "answered"));
        end.countDown();
        long refused = flood.stream().filter(each -> each.handle((value, fault) -> fault != null).join()).count();
        assertTrue(refused <= 1 + ConcurrencyLimiter.MOST_WAITING, "only of the flood");
    }

    /** All places to wait are the flood's: it loses one to a caller who has none. */
    @Test
    void givesAPlaceToWaitToTheCallerWithFewer() throws Exception {
        hold("second", 0);
        awaitRunning(1);
        for (int i = 0; i < ALL - 1; i++) {
            hold("one", 0);
        }
        awaitRunning(ALL);
        List<CompletableFuture<Integer>> waiting = new ArrayList<>();
        for (int i = 0; i < ConcurrencyLimiter.MOST_WAITING; i++) {
            waiting.add(hold("one", 0));
        }
        while (!limiter.isFullFor("one")) {
            TimeUnit.MILLISECONDS.sleep(5);
        }
        assertFalse(limiter.isFullFor("other"));
        CompletableFuture<Integer> other = hold("other", 0);
        while (waiting.stream().noneMatch(CompletableFuture::isCompletedExceptionally)) {
            TimeUnit.MILLISECONDS.sleep(5);
        }
        end.countDown();
        other.get(10, TimeUnit.SECONDS);
    }

    @Test
    void admitsNoMoreBytesThanThereAre() throws Exception {
        hold("one", 60);
        awaitRunning(1);
        assertThrows(ProblemException.class, () -> limiter.call("other", 41, () -> "too many"));
        assertEquals("fits", limiter.call("other", 40, () -> "fits"));
    }

    /** What is larger than everything still runs, alone: it was let in, so it is answered. */
    @Test
    void runsOversizedWorkAlone() {
        assertEquals("alone", limiter.call("one", 1_000, () -> "alone"));
    }

    /** As many callers as there are permits, each with a hundred calls: all are answered, whoever waits for whom. */
    @Test
    void losesNoWakeUp() throws Exception {
        AtomicInteger answered = new AtomicInteger();
        List<CompletableFuture<?>> callers = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            String caller = "caller " + i % 5;
            callers.add(CompletableFuture.runAsync(() -> {
                for (int call = 0; call < 500; call++) {
                    limiter.call(caller, call % 90, answered::incrementAndGet);
                }
            }, threads));
        }
        for (CompletableFuture<?> each : callers) {
            each.get(20, TimeUnit.SECONDS);
        }
        assertEquals(24 * 500, answered.get());
    }
}
