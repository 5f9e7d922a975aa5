package dev.brinebook.guard;

import java.util.function.Function;

/**
 * A pure function that keeps its last result: asked the same again, as it is all through a search, it does not calculate anew.
 *
 * <p>May be used by any number of threads. No result depends on what was asked before.
 *
 * @param <Q> what is asked, compared by {@code equals}; immutable
 * @param <A> the result; immutable
 */
public final class LastResult<Q, A> {

    private record Kept<Q, A>(Q asked, A result) {
    }

    private final Function<Q, A> function;
    private volatile Kept<Q, A> last;

    public LastResult(Function<Q, A> function) {
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
