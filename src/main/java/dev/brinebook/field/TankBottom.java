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
     * Resin in a tank by its depth, above gravel.
     *
     * <pre>V = V(h) − V(g);  V(h) = 1000 (π/4) D² (h − c/3) above the dome,  1000 (π/4) D² h² (3c − h) / (3c²) in it</pre>
     *
     * <p>V litres; D inner diameter, m; h depth of the top of the resin and g that of the gravel below it, from the inner bottom, m;
     * c depth of the dome, D/4 elliptical, D/2 hemispherical, 0 flat. A half ellipsoid holds (π/6) D² c.
     * Validity: h reaches above the dome, and above the gravel, which is level and lets no resin in.
     * Source: by geometry.
     * Deviation: the distributor is counted as resin.
     */
    public double resinLitres(double diameterMetres, double depthMetres, double gravelMetres) {
        Guard.positive(diameterMetres, "diameterMetres");
        Guard.within(depthMetres, domeMetres(diameterMetres), Double.MAX_VALUE, "depthMetres");
        Guard.within(gravelMetres, 0, depthMetres, "gravelMetres");
        return litres(diameterMetres, depthMetres) - litres(diameterMetres, gravelMetres);
    }

    private double litres(double diameter, double depth) {
        double dome = domeMetres(diameter);
        double full = depth >= dome ? depth - diameter / lostDepth : depth * depth * (3 * dome - depth) / (3 * dome * dome);
        return 1000 * Math.PI / 4 * diameter * diameter * full;
    }
}
