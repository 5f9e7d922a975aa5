// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.guard;

import java.util.function.Function;

/**
 * A pure function that caches its last result: the same question, as is usual in a search, is not calculated again.
 *
 * <p>Thread-safe. No result depends on earlier questions.
 *
 * @param <Q> the question, compared by {@code equals}; immutable
 * @param <A> the result; immutable
 */
public final class LastResultCache<Q, A> {

    private record Kept<Q, A>(Q asked, A result) {
    }

    private final Function<Q, A> function;
    private volatile Kept<Q, A> last;

    public LastResultCache(Function<Q, A> function) {
        this.function = function;
    }

    /** What the function gives. */
    public A of(Q asked) {
        Kept<Q, A> kept = last;
        if (kept == null || !kept.asked().equals(asked)) {
            kept = new Kept<>(asked, function.apply(asked));
            last = kept;
        }
        return kept.result();
    }
}
