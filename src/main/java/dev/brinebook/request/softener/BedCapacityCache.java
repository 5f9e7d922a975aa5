// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import dev.brinebook.resin.ColumnCase;
import dev.brinebook.resin.ColumnResult;
import dev.brinebook.resin.Columns;

/**
 * Cache of calculated columns, by their exact cases, so that the same water and dose is calculated once. The cache never changes an
 * answer.
 */
public final class BedCapacityCache {

    /** A case with its result takes about half a kilobyte. */
    static final int MOST_REMEMBERED = 20_000;

    private static final Cache<ColumnCase, ColumnResult> CACHE =
            Caffeine.newBuilder().maximumSize(MOST_REMEMBERED).recordStats().build();

    /** Works out a column only if it is not remembered. */
    public static final Columns COLUMNS = column -> CACHE.get(column, ColumnCase::result);

    private BedCapacityCache() {
    }

    /** What remembers, to be watched. */
    public static Cache<ColumnCase, ColumnResult> cache() {
        return CACHE;
    }
}
