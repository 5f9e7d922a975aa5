// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import dev.brinebook.resin.CapacityCurve;
import dev.brinebook.resin.ColumnCase;
import dev.brinebook.resin.ColumnResult;
import dev.brinebook.resin.Columns;
import dev.brinebook.resin.CurveCase;

/**
 * Cache of capacity curves and of single columns, by their exact cases, so that the curve of the same water is calculated once. The
 * cache never changes an answer.
 */
public final class BedCapacityCache {

    /** A curve takes about three kilobytes, a column half a kilobyte. */
    static final int MOST_REMEMBERED = 2_000;

    private static final Cache<CurveCase, CapacityCurve> CURVES = remembered();
    private static final Cache<ColumnCase, ColumnResult> LOOSER = remembered();

    /** Calculates only what is not remembered. */
    public static final Columns COLUMNS = new Columns() {
        @Override
        public ColumnResult of(ColumnCase column) {
            return LOOSER.get(column, ColumnCase::result);
        }

        @Override
        public CapacityCurve of(CurveCase curve) {
            return CURVES.get(curve, CurveCase::curve);
        }
    };

    private BedCapacityCache() {
    }

    private static <K, V> Cache<K, V> remembered() {
        return Caffeine.newBuilder().maximumSize(MOST_REMEMBERED).recordStats().build();
    }

    /** The curves that are remembered, to be watched. */
    public static Cache<CurveCase, CapacityCurve> curves() {
        return CURVES;
    }

    /** Forgets everything. */
    public static void clear() {
        CURVES.invalidateAll();
        LOOSER.invalidateAll();
    }
}
