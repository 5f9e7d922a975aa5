// SPDX-License-Identifier: Apache-2.0
import java.time.Duration;

/**
 * The time that the service has had: of the clock, or of its processor time where its process is given. Processor time is counted
 * in steps of 10 ms, so between two looks a second apart the clock goes on by the share of a processor that the service had.
 */
final class ServiceClock {

    private static final long LOOK_NANOS = 1_000_000_000L;
    /** A service with too little processor time stalls, and must not make its callers wait forever. */
    private static final double LEAST_SHARE = 0.05;

    private final ProcessHandle process;
    private final long usedAtStartNanos;
    private double share = 1;
    private double passedNanos;
    private long lastNanos = System.nanoTime();
    private long lookNanos = lastNanos;
    private long usedAtLookNanos;

    /** @param process of the service, or null for the time of the clock */
    ServiceClock(ProcessHandle process) {
        this.process = process;
        usedAtStartNanos = processorNanos();
        usedAtLookNanos = usedAtStartNanos;
    }

    double passedSeconds() {
        long now = System.nanoTime();
        passedNanos += (now - lastNanos) * share;
        lastNanos = now;
        if (process != null && now - lookNanos > LOOK_NANOS) {
            long used = processorNanos();
            share = Math.max(LEAST_SHARE, (double) (used - usedAtLookNanos) / (now - lookNanos));
            lookNanos = now;
            usedAtLookNanos = used;
        }
        return passedNanos / 1e9;
    }

    /** The processor time that the service used since this clock was made; 0 without its process. */
    long usedMilliseconds() {
        return (processorNanos() - usedAtStartNanos) / 1_000_000;
    }

    private long processorNanos() {
        return process == null ? 0 : process.info().totalCpuDuration().map(Duration::toNanos).orElse(0L);
    }
}
