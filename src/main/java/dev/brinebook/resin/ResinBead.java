// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.Guard;

/**
 * The bead that a bed is made of.
 *
 * <p>Source: [CP-RESIN-BEAD] for the default. The limits keep the formulas of the bed inside their validity.
 *
 * @param diameterMillimetres mean diameter of the swollen bead
 * @param voidShare volume between the beads of a settled bed, as a share of the bed
 * @param wetDensityKilogramsPerCubicMetre density of the swollen bead
 */
public record ResinBead(double diameterMillimetres, double voidShare, double wetDensityKilogramsPerCubicMetre) {

    public static final double MIN_DIAMETER_MILLIMETRES = 0.4;
    public static final double MAX_DIAMETER_MILLIMETRES = 1.2;
    public static final double MIN_VOID_SHARE = 0.30;
    public static final double MAX_VOID_SHARE = 0.50;
    public static final double MIN_WET_DENSITY_KILOGRAMS_PER_CUBIC_METRE = 1150;
    public static final double MAX_WET_DENSITY_KILOGRAMS_PER_CUBIC_METRE = 1350;

    /** Mean diameter of gel cation resin. Source: [CP-RESIN-BEAD]. */
    public static final double DEFAULT_DIAMETER_MILLIMETRES = 0.62;
    /** Voids of its settled bed. Source: [CP-RESIN-BEAD]. */
    public static final double DEFAULT_VOID_SHARE = 0.38;
    /** Its density. Source: [CP-RESIN-BEAD]. */
    public static final double DEFAULT_WET_DENSITY_KILOGRAMS_PER_CUBIC_METRE = 1280;
    /** Gel cation resin. */
    public static final ResinBead DEFAULT = new ResinBead(DEFAULT_DIAMETER_MILLIMETRES, DEFAULT_VOID_SHARE,
            DEFAULT_WET_DENSITY_KILOGRAMS_PER_CUBIC_METRE);

    public ResinBead {
        Guard.within(diameterMillimetres, MIN_DIAMETER_MILLIMETRES, MAX_DIAMETER_MILLIMETRES, "diameterMillimetres");
        Guard.within(voidShare, MIN_VOID_SHARE, MAX_VOID_SHARE, "voidShare");
        Guard.within(wetDensityKilogramsPerCubicMetre, MIN_WET_DENSITY_KILOGRAMS_PER_CUBIC_METRE,
                MAX_WET_DENSITY_KILOGRAMS_PER_CUBIC_METRE, "wetDensityKilogramsPerCubicMetre");
    }

    double diameterMetres() {
        return diameterMillimetres / 1000;
    }
}
