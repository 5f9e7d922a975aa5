// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.guard;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/**
 * A pure function that caches its last few results, as {@link LastResultCache} does one.
 *
 * <p>Thread-safe. No result depends on earlier questions.
 *
 * @param <Q> the question, compared by {@code equals}; immutable
 * @param <A> the result; immutable
 */
public final class LastResultsCache<Q, A> {

    private final Function<Q, A> function;
    private final Map<Q, A> last;

    /** A cache of a number of results. */
    public LastResultsCache(int most, Function<Q, A> function) {
        this.function = function;
        last = new LinkedHashMap<>(2 * most, 0.75f, true) {

            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<Q, A> eldest) {
                return size() > most;
            }
        };
    }

    /** What the function gives. */
    public A of(Q asked) {
        synchronized (last) {
            A known = last.get(asked);
            if (known != null) {
                return known;
            }
        }
        A result = function.apply(asked);
        synchronized (last) {
            last.put(asked, result);
        }
        return result;
    }
}
