package dev.brinebook.request.softener;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import dev.brinebook.resin.ColumnCase;
import dev.brinebook.resin.ColumnResult;
import dev.brinebook.resin.Columns;

/**
 * The columns worked out lately, by their exact cases: a request that asks for the same water and dose again, and the next
 * request that does, wait no milliseconds for it. What is remembered never changes an answer.
 */
public final class RememberedColumns {

    /** A case with its result takes about half a kilobyte. */
    static final int MOST_REMEMBERED = 20_000;

    private static final Cache<ColumnCase, ColumnResult> CACHE =
            Caffeine.newBuilder().maximumSize(MOST_REMEMBERED).recordStats().build();

    /** Works out a column only if it is not remembered. */
    public static final Columns COLUMNS = column -> CACHE.get(column, ColumnCase::result);

    private RememberedColumns() {
    }

    /** What remembers, to be watched. */
    public static Cache<ColumnCase, ColumnResult> cache() {
        return CACHE;
    }
}
