// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.Exact;

/**
 * Resin in a cylindrical tank, settled.
 *
 * <p>Not the shell as sold: domes, underbedding and the wall are left out, so a depth is that of the resin alone.
 *
 * @param resinLitres volume of the settled resin
 * @param tankDiameterMetres inner diameter of the tank
 * @param bead the bead that it is made of
 */
public record ResinBed(double resinLitres, double tankDiameterMetres, ResinBead bead) {

    public static final double MIN_RESIN_LITRES = 1;
    public static final double MAX_RESIN_LITRES = 2000;
    public static final double MIN_TANK_DIAMETER_METRES = 0.1;
    public static final double MAX_TANK_DIAMETER_METRES = 2;
    /** Least depth of a bed by [CP-HYDRAULICS]: 24 in. */
    public static final double GUIDE_MIN_DEPTH_METRES = 24 * Exact.INCH_METRES;
    /** Least room above the bed by [CP-HYDRAULICS], as a share of its depth. */
    public static final double GUIDE_MIN_FREEBOARD_SHARE = 0.5;

    public ResinBed {
        Guard.within(resinLitres, MIN_RESIN_LITRES, MAX_RESIN_LITRES, "resinLitres");
        Guard.within(tankDiameterMetres, MIN_TANK_DIAMETER_METRES, MAX_TANK_DIAMETER_METRES, "tankDiameterMetres");
    }

    /** A bed of the default bead. */
    public ResinBed(double resinLitres, double tankDiameterMetres) {
        this(resinLitres, tankDiameterMetres, ResinBead.DEFAULT);
    }

    public double areaSquareMetres() {
        return Math.PI / 4 * tankDiameterMetres * tankDiameterMetres;
    }

    public double depthMetres() {
        return resinLitres / 1000 / areaSquareMetres();
    }

    /** Velocity of a flow over the empty cross-section of the tank. */
    public double velocityMetresPerHour(double flowLitresPerMinute) {
        return Guard.notNegative(flowLitresPerMinute, "flowLitresPerMinute") * 0.06 / areaSquareMetres();
    }

    /** The flow that has a velocity: the inverse of {@link #velocityMetresPerHour}. */
    public double flowLitresPerMinute(double velocityMetresPerHour) {
        return Guard.notNegative(velocityMetresPerHour, "velocityMetresPerHour") * areaSquareMetres() / 0.06;
    }

    public double bedVolumesPerHour(double flowLitresPerMinute) {
        return Guard.notNegative(flowLitresPerMinute, "flowLitresPerMinute") * 60 / resinLitres;
    }

    /** Flow from bed volumes an hour: the inverse of {@link #bedVolumesPerHour}. */
    public double flowLitresPerMinuteOfBedVolumes(double bedVolumesPerHour) {
        return Guard.notNegative(bedVolumesPerHour, "bedVolumesPerHour") * resinLitres / 60;
    }

    /** How long water would stay if the bed were empty: the usual measure of contact, 60 over bed volumes an hour. */
    public double emptyBedContactMinutes(double flowLitresPerMinute) {
        return resinLitres / Guard.positive(flowLitresPerMinute, "flowLitresPerMinute");
    }

    /** How long water stays between the beads, the voids of the bed over the flow. */
    public double voidContactMinutes(double flowLitresPerMinute) {
        return bead.voidShare() * emptyBedContactMinutes(flowLitresPerMinute);
    }

    /** Whether the bed is as deep as the guide asks for. */
    public boolean hasGuideDepth() {
        return depthMetres() >= GUIDE_MIN_DEPTH_METRES;
    }

    /**
     * Room above the settled bed as a share of its depth: how far the bed can expand before resin leaves the tank.
     *
     * @throws IllegalArgumentException when the tank is lower than the bed
     */
    public double freeboardShare(double tankHeightMetres) {
        Guard.within(tankHeightMetres, depthMetres(), Double.MAX_VALUE, "tankHeightMetres");
        return (tankHeightMetres - depthMetres()) / depthMetres();
    }

    /** Whether a tank of this height has room above the bed for {@code expansionShare} and for the guide value. */
    public boolean hasFreeboardFor(double expansionShare, double tankHeightMetres) {
        double needed = Math.max(Guard.notNegative(expansionShare, "expansionShare"), GUIDE_MIN_FREEBOARD_SHARE);
        return tankHeightMetres >= depthMetres() * (1 + needed);
    }
}
