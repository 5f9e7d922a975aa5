// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import java.util.Objects;

/**
 * All that a capacity curve depends on. Equal cases have equal curves, so that a curve may be cached by its case.
 *
 * @param resin the resin
 * @param water the water it softens
 * @param salt what regenerates it
 * @param direction the way of the brine
 * @param endPointMgPerL hardness at which a service run ends, as CaCO₃
 */
public record CurveCase(Resin resin, FeedWater water, Salt salt, Brining.Direction direction, double endPointMgPerL) {

    public CurveCase {
        Objects.requireNonNull(resin, "resin");
        Objects.requireNonNull(water, "water");
        Objects.requireNonNull(salt, "salt");
        Objects.requireNonNull(direction, "direction");
    }

    /** Calculates the curve from some ten columns; takes milliseconds. */
    public CapacityCurve curve() {
        return CapacityCurve.of(this);
    }
}
