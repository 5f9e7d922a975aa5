// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.Guard;
import java.util.Objects;

/**
 * All inputs of the cyclic column. Equal cases have equal results, so that a result may be
 * cached by its case.
 *
 * @param resin the resin
 * @param water the water it softens
 * @param brining how it is regenerated
 * @param endPointMgPerL hardness at which a service run ends, as CaCO₃
 */
public record ColumnCase(Resin resin, FeedWater water, Brining brining, double endPointMgPerL) {

    public ColumnCase {
        Objects.requireNonNull(resin, "resin");
        Objects.requireNonNull(water, "water");
        Objects.requireNonNull(brining, "brining");
        Guard.within(endPointMgPerL, CyclicColumn.MIN_END_POINT_MG_PER_L, CyclicColumn.MAX_END_POINT_MG_PER_L,
                "endPointMgPerL");
    }

    /** Calculates the cycle that the column settles into; takes milliseconds. */
    public ColumnResult result() {
        return CyclicColumn.of(resin, water, brining, endPointMgPerL);
    }
}
