// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.guard;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Intermediate results that one calculation leaves for a later one, as tables that change while they are read and so cannot be shared
 * by two at once: each calculation has a memory to itself while it runs. There are as many as calculations have run at once.
 *
 * <p>No number depends on it: what is kept is what its key gives, and a calculation without a memory makes it anew.
 */
public final class WorkingMemory {

    /** Share of the heap that all memories together may take, and what an entry takes at most or so. */
    private static final double SHARE_OF_HEAP = 0.05;
    private static final double BYTES_OF_AN_ENTRY = 3e5;
    /** Entries of one memory; the one that was not used for the longest time gives way. */
    static final int MOST_KEPT = (int) Math.max(12, Math.min(200,
            SHARE_OF_HEAP * Runtime.getRuntime().maxMemory() / Runtime.getRuntime().availableProcessors() / BYTES_OF_AN_ENTRY));

    private static final Deque<WorkingMemory> FREE = new ArrayDeque<>();
    private static final ThreadLocal<WorkingMemory> OF_THIS_THREAD = new ThreadLocal<>();

    private final Map<Object, Object> kept = new LinkedHashMap<>(2 * MOST_KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Object, Object> eldest) {
            return size() > MOST_KEPT;
        }
    };

    private boolean used;

    private WorkingMemory() {
    }

    /** The result of a calculation that has a memory to itself. One that ends in the midst of what it keeps takes that with it. */
    public static <T> T during(Supplier<T> calculation) {
        if (OF_THIS_THREAD.get() != null) {
            return calculation.get();
        }
        WorkingMemory own = taken();
        own.used = false;
        boolean whole = false;
        OF_THIS_THREAD.set(own);
        try {
            T result = calculation.get();
            whole = true;
            return result;
        } finally {
            OF_THIS_THREAD.remove();
            if (whole || !own.used) {
                give(own);
            }
        }
    }

    /**
     * What is kept under a key in the memory of this thread, or else {@code made} and kept if there is a memory. It must not be used
     * after the calculation.
     *
     * @param key of a type of its own for each kind of result, with everything that the result depends on
     */
    public static <T> T kept(Object key, Class<T> type, Supplier<T> made) {
        WorkingMemory own = OF_THIS_THREAD.get();
        if (own == null) {
            return made.get();
        }
        own.used = true;
        Object known = own.kept.get(key);
        if (known == null) {
            known = made.get();
            own.kept.put(key, known);
        }
        return type.cast(known);
    }

    /** Forgets everything that no calculation uses at this moment. */
    public static void clear() {
        synchronized (FREE) {
            FREE.clear();
        }
    }

    private static WorkingMemory taken() {
        synchronized (FREE) {
            return FREE.isEmpty() ? new WorkingMemory() : FREE.pop();
        }
    }

    private static void give(WorkingMemory own) {
        synchronized (FREE) {
            FREE.push(own);
        }
    }
}
