// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.server;

import java.util.HashMap;
import java.util.Map;

/**
 * An amount that callers hold parts of, such as threads or bytes. No caller may hold more than its share, so that one cannot use up what
 * others need.
 */
final class CallerShares {

    private final long most;
    private final long mostOfOneCaller;
    private final Map<String, Long> held = new HashMap<>();
    private long heldByAll;

    /** At most {@code most} in all, and {@code mostOfOneCaller} for each. */
    CallerShares(long most, long mostOfOneCaller) {
        this.most = most;
        this.mostOfOneCaller = mostOfOneCaller;
    }

    /** Takes {@code amount} for a caller, or nothing and returns false. */
    synchronized boolean tryTake(String caller, long amount) {
        long own = held.getOrDefault(caller, 0L) + amount;
        if (heldByAll + amount > most || own > mostOfOneCaller) {
            return false;
        }
        held.put(caller, own);
        heldByAll += amount;
        return true;
    }

    /** Gives back what was taken. */
    synchronized void giveBack(String caller, long amount) {
        heldByAll -= amount;
        held.computeIfPresent(caller, (one, own) -> own == amount ? null : own - amount);
    }

    /** What all callers hold. */
    synchronized long held() {
        return heldByAll;
    }
}
