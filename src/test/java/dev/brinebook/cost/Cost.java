// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.cost;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.HashMap;
import java.util.Map;

/**
 * What a request takes. All threads of the program count, whichever did a share of it; the collector and the compiler are none
 * of them, so that neither counts.
 *
 * @param cpuNanos processor time
 * @param allocatedBytes memory that was allocated, most of which is free again
 * @param answerBytes length of the answer, which is held in memory as a whole
 */
record Cost(long cpuNanos, long allocatedBytes, long answerBytes) {

    private static final ThreadMXBean THREADS = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    private static final double NANOS_PER_MILLISECOND = 1e6;
    private static final double BYTES_PER_MEGABYTE = 1e6;

    /** What {@code work} takes, when nothing else runs. */
    static Cost of(Runnable work) {
        Map<Long, Cost> before = now();
        work.run();
        long nanos = 0;
        long bytes = 0;
        for (Map.Entry<Long, Cost> after : now().entrySet()) {
            Cost start = before.getOrDefault(after.getKey(), new Cost(0, 0, 0));
            nanos += Math.max(0, after.getValue().cpuNanos - start.cpuNanos);
            bytes += Math.max(0, after.getValue().allocatedBytes - start.allocatedBytes);
        }
        return new Cost(nanos, bytes, 0);
    }

    /** Of each thread so far; -1 of one that ended meanwhile. */
    private static Map<Long, Cost> now() {
        long[] ids = THREADS.getAllThreadIds();
        long[] nanos = THREADS.getThreadCpuTime(ids);
        long[] bytes = THREADS.getThreadAllocatedBytes(ids);
        Map<Long, Cost> costs = new HashMap<>();
        for (int i = 0; i < ids.length; i++) {
            costs.put(ids[i], new Cost(nanos[i], bytes[i], 0));
        }
        return costs;
    }

    Cost answering(long bytes) {
        return new Cost(cpuNanos, allocatedBytes, bytes);
    }

    /** The lower of each. */
    Cost least(Cost other) {
        return new Cost(Math.min(cpuNanos, other.cpuNanos), Math.min(allocatedBytes, other.allocatedBytes),
                Math.min(answerBytes, other.answerBytes));
    }

    @Override
    public String toString() {
        return "%.0f ms of processor time, %.1f MB allocated, %.1f MB answered".formatted(cpuNanos / NANOS_PER_MILLISECOND,
                allocatedBytes / BYTES_PER_MEGABYTE, answerBytes / BYTES_PER_MEGABYTE);
    }
}
