// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.http.limit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Places for bulk streams, each of which holds a thread as long as it runs. When all are taken, the idlest stream of the caller
 * that has the most gives its place to a caller that has fewer; and a stream on which nothing has moved for a while gives it
 * to anyone.
 */
public final class StreamSlots {

    /** A stream holds a thread of the server as long as it runs, so only a part of them may. */
    public static final int MOST_AT_ONCE = 32;
    private static final long IDLE_NANOS = TimeUnit.SECONDS.toNanos(10);

    private final int most;
    private final List<Slot> slots = new ArrayList<>();

    /** The number of slots. */
    public StreamSlots(int most) {
        this.most = most;
    }

    /** The place of one stream. */
    public static final class Slot {

        private final String caller;
        private final Runnable end;
        private volatile long movedNanos = System.nanoTime();
        private volatile boolean taken;

        private Slot(String caller, Runnable end) {
            this.caller = caller;
            this.end = end;
        }

        /** A line has come. */
        public void moved() {
            movedNanos = System.nanoTime();
        }

        /** Whether the place was given to another stream. */
        public boolean isTaken() {
            return taken;
        }

        private long idleNanos() {
            return System.nanoTime() - movedNanos;
        }
    }

    /** A place for a stream of {@code caller}, if there is one; {@code end} ends the stream when another needs its place. */
    public synchronized Optional<Slot> take(String caller, Runnable end) {
        if (slots.size() >= most) {
            Slot idlest = idlestFor(caller);
            if (idlest == null) {
                return Optional.empty();
            }
            slots.remove(idlest);
            idlest.taken = true;
            idlest.end.run();
        }
        Slot slot = new Slot(caller, end);
        slots.add(slot);
        return Optional.of(slot);
    }

    /** The stream has ended. */
    public synchronized void giveBack(Slot slot) {
        slots.remove(slot);
    }

    private Slot idlestFor(String caller) {
        Map<String, Long> held = slots.stream().collect(Collectors.groupingBy(slot -> slot.caller, Collectors.counting()));
        long most = held.values().stream().mapToLong(Long::longValue).max().orElse(0);
        boolean hasFewer = held.getOrDefault(caller, 0L) + 1 < most;
        Function<Slot, Long> idle = Slot::idleNanos;
        return slots.stream().filter(slot -> hasFewer ? held.get(slot.caller) == most : slot.idleNanos() > IDLE_NANOS)
                .max(Comparator.comparing(idle)).orElse(null);
    }
}
