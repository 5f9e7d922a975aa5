// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.guard;

import java.lang.ref.SoftReference;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.LongConsumer;
import java.util.function.Supplier;

/**
 * Intermediate results that one calculation leaves for a later one, as tables that change while they are read and so cannot be shared
 * by two at once: each calculation has a memory to itself while it runs. There are as many as calculations have run at once, and a heap
 * that has no room for a result takes it back, if the calculation that runs does not hold it itself.
 *
 * <p>No number depends on it: what is kept is what its key gives, and a calculation without a memory makes it anew.
 */
public final class WorkingMemory {

    /** Share of the heap that the results of one type may take in all memories together. */
    private static final double SHARE_OF_HEAP = 0.025;
    private static final double LEAST_BYTES = 2.4e6;
    private static final long MOST_BYTES = 20_000_000;
    /** What one memory keeps of a type; what was not used for the longest time gives way. */
    static final long MOST_BYTES_OF_A_TYPE = (long) Math.max(LEAST_BYTES,
            shareOfHeap(SHARE_OF_HEAP / Runtime.getRuntime().availableProcessors(), MOST_BYTES));

    private static final LongConsumer NOTHING = bytes -> { };
    private static final Deque<WorkingMemory> FREE = new ArrayDeque<>();
    private static final ThreadLocal<WorkingMemory> OF_THIS_THREAD = new ThreadLocal<>();

    private final Map<Class<?>, Results> kept = new HashMap<>();
    private boolean used;
    private LongConsumer beforeTables = NOTHING;

    private WorkingMemory() {
    }

    /** The result of a calculation that has a memory to itself. One that ends in the midst of what it keeps takes that with it. */
    public static <T> T during(Supplier<T> calculation) {
        return during(NOTHING, calculation);
    }

    /** The same. Before each table, {@code beforeTables} gets the most bytes that all tables of the calculation may need. */
    public static <T> T during(LongConsumer beforeTables, Supplier<T> calculation) {
        if (OF_THIS_THREAD.get() != null) {
            return calculation.get();
        }
        WorkingMemory own = taken();
        own.used = false;
        own.beforeTables = beforeTables;
        boolean whole = false;
        OF_THIS_THREAD.set(own);
        try {
            T result = calculation.get();
            whole = true;
            return result;
        } finally {
            OF_THIS_THREAD.remove();
            own.beforeTables = NOTHING;
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
     * @param usualBytes what such a result takes in the end, or so
     */
    public static <T> T kept(Object key, Class<T> type, long usualBytes, Supplier<T> made) {
        WorkingMemory own = OF_THIS_THREAD.get();
        if (own == null) {
            return made.get();
        }
        own.used = true;
        Results results = own.kept.computeIfAbsent(type, of -> new Results((int) Math.max(1, MOST_BYTES_OF_A_TYPE / usualBytes)));
        SoftReference<Object> reference = results.get(key);
        Object known = reference == null ? null : reference.get();
        if (known == null) {
            known = made.get();
            results.put(key, new SoftReference<>(known));
        }
        return type.cast(known);
    }

    /**
     * Like {@link #kept}, for a table that may be large: first calls {@code beforeTables} of {@link #during(LongConsumer, Supplier)}.
     *
     * @param mostBytes the most that all tables of such a household may need
     */
    public static <T> T table(Object key, Class<T> type, long usualBytes, long mostBytes, Supplier<T> made) {
        WorkingMemory own = OF_THIS_THREAD.get();
        if (own != null) {
            own.beforeTables.accept(mostBytes);
        }
        return kept(key, type, usualBytes, made);
    }

    /** A number of results of one type, so that those that are looked at once push out none that are looked at again and again. */
    private static final class Results extends LinkedHashMap<Object, SoftReference<Object>> {
        private static final long serialVersionUID = 1L;
        private final int most;

        Results(int most) {
            super(2 * most, 0.75f, true);
            this.most = most;
        }

        @Override
        protected boolean removeEldestEntry(Map.Entry<Object, SoftReference<Object>> eldest) {
            return size() > most;
        }
    }

    /** A share of the heap, but no more than so many bytes. */
    public static long shareOfHeap(double share, long most) {
        return (long) Math.min(most, share * Runtime.getRuntime().maxMemory());
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
