// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.Guard;

/**
 * The packing of a settled bed, as it determines the pressure drop.
 *
 * <p>Not a bead: a bed of beads and fragments has a mean that none of them need have, so its limits are wider than those
 * of {@link ResinBead}.
 *
 * @param diameterMillimetres Sauter mean diameter: that of the sphere with the same surface per volume
 * @param voidShare volume between the particles, as a share of the bed
 */
public record Packing(double diameterMillimetres, double voidShare) {

    public static final double MAX_CRUSHED_SHARE = 0.5;
    /** Share of the beads, by volume, that is crushed after years of service: no source was found for it. */
    public static final double ASSUMED_CRUSHED_SHARE = 0.2;
    /** Diameter of a fragment over that of its bead: no source was found for it. */
    public static final double ASSUMED_FRAGMENT_DIAMETER_SHARE = 0.5;
    /** Loss of void share when fragments fill the gaps: no source was found for it. */
    public static final double ASSUMED_VOID_LOSS_SHARE = 0.03;

    private static final double MIN_DIAMETER_MILLIMETRES =
            ResinBead.MIN_DIAMETER_MILLIMETRES * ASSUMED_FRAGMENT_DIAMETER_SHARE;

    public Packing {
        Guard.within(diameterMillimetres, MIN_DIAMETER_MILLIMETRES, ResinBead.MAX_DIAMETER_MILLIMETRES,
                "diameterMillimetres");
        Guard.within(voidShare, ResinBead.MIN_VOID_SHARE - ASSUMED_VOID_LOSS_SHARE, ResinBead.MAX_VOID_SHARE, "voidShare");
    }

    /**
     * A bed in which a share of the beads is crushed.
     *
     * <pre>1/d = (1 − w) / d₀ + w / (f d₀),  ε = ε₀ − 0.03 · min(1, w / 0.2)</pre>
     *
     * <p>d mean diameter, mm; d₀ that of the bead; w crushed share by volume; f diameter of a fragment over that of a bead,
     * {@link #ASSUMED_FRAGMENT_DIAMETER_SHARE}; ε voids; ε₀ those of the clean bed. The voids fall in step with the share
     * up to {@link #ASSUMED_CRUSHED_SHARE}, from where on the gaps are filled.
     * Validity: w from 0 to 0.5.
     * Source: [ERGUN-1952], whose d represents surface per volume, so that the means add as w/d; the rest is assumed.
     * Deviation: fragments are treated as spheres, and the bed keeps its depth, though closer packing alone would make it 5 %
     * lower: the drop comes out a little high.
     */
    public static Packing of(ResinBead bead, double crushedShare) {
        Guard.within(crushedShare, 0, MAX_CRUSHED_SHARE, "crushedShare");
        double surfaceRatio = 1 - crushedShare + crushedShare / ASSUMED_FRAGMENT_DIAMETER_SHARE;
        double filled = Math.min(1, crushedShare / ASSUMED_CRUSHED_SHARE);
        return new Packing(bead.diameterMillimetres() / surfaceRatio, bead.voidShare() - ASSUMED_VOID_LOSS_SHARE * filled);
    }

    double diameterMetres() {
        return diameterMillimetres / 1000;
    }
}
