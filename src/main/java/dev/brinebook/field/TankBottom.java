// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.field;

import dev.brinebook.guard.Guard;

/** Shape of the bottom of a resin tank, which holds less than a cylinder of its depth. */
public enum TankBottom {
    /** Half an ellipsoid twice as wide as it is high: the usual one. */
    ELLIPTICAL(12, 4), HEMISPHERICAL(6, 2), FLAT(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);

    private final double lostDepth;
    private final double domeDepth;

    TankBottom(double lostDepth, double domeDepth) {
        this.lostDepth = lostDepth;
        this.domeDepth = domeDepth;
    }

    /** Depth of the dome, m; the resin must reach above it. */
    public double domeMetres(double diameterMetres) {
        return diameterMetres / domeDepth;
    }

    /**
     * Resin in a tank by its depth.
     *
     * <pre>V = 1000 (π/4) D² (h − D/n),  n = 12 elliptical, 6 hemispherical, ∞ flat</pre>
     *
     * <p>V litres; D inner diameter, m; h depth of the resin from the inner bottom, m. A half ellipsoid of depth D/4 holds π D³/24.
     * Validity: h reaches above the dome.
     * Source: by geometry.
     * Deviation: the distributor and underbedding are counted as resin.
     */
    public double resinLitres(double diameterMetres, double depthMetres) {
        Guard.positive(diameterMetres, "diameterMetres");
        Guard.within(depthMetres, domeMetres(diameterMetres), Double.MAX_VALUE, "depthMetres");
        return 1000 * Math.PI / 4 * diameterMetres * diameterMetres * (depthMetres - diameterMetres / lostDepth);
    }
}
