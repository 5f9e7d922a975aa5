// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.OptionalResult;

/**
 * What an upflow does to a bed in its tank.
 *
 * <p>Two things judge a backwash, and they are not the same: the published band of velocities, which holds for ordinary
 * temperatures, and the expansion at the temperature of this water. Where they differ the expansion decides: at 5 °C a
 * bed is well lifted by 12 m/h, the low end of the band, and at 25 °C hardly.
 *
 * @param velocityMetresPerHour upflow over the empty cross-section of the tank
 * @param expansionShare how far it lifts the bed, as a share of the settled depth; none if it carries the resin out
 * @param freeboardShare room above the settled bed, as a share of its depth
 * @param mostVelocityMetresPerHour the upflow that lifts the resin just to the top of the tank, or to three times its
 *     depth where there is more room than that
 */
public record BackwashEffect(double velocityMetresPerHour, OptionalResult expansionShare, double freeboardShare,
        double mostVelocityMetresPerHour) {

    /** Published band of backwash velocities. Source: [DAVIS] table 8-2; [TEN-STATES] has 14.7 to 19.6 m/h. */
    public static final double GUIDE_MIN_VELOCITY_METRES_PER_HOUR = 12;
    public static final double GUIDE_MAX_VELOCITY_METRES_PER_HOUR = 20;
    /**
     * An expansion that no longer loosens and cleans the whole bed: no source was found for it. The low end of the
     * published band gives 0.33 at 20 °C and 0.29 at 25 °C.
     */
    public static final double ASSUMED_WEAK_EXPANSION_SHARE = 0.3;

    /** The effect of a flow on a bed in a tank of a height, which must take the bed. */
    public static BackwashEffect of(ResinBed bed, double tankHeightMetres, double flowLitresPerMinute,
            double temperatureCelsius) {
        double velocity = bed.velocityMetresPerHour(flowLitresPerMinute);
        double freeboard = bed.freeboardShare(tankHeightMetres);
        return new BackwashEffect(velocity, Backwash.expansionShare(bed.bead(), velocity, temperatureCelsius), freeboard,
                Backwash.velocityMetresPerHour(bed.bead(), Math.min(freeboard, Backwash.MAX_EXPANSION_SHARE),
                        temperatureCelsius));
    }

    /** Whether it lifts the bed by less than it takes to clean it. */
    public boolean isWeak() {
        return isWeak(expansionShare);
    }

    /** Whether an expansion is too small to clean the bed; that of resin carried out is not. */
    public static boolean isWeak(OptionalResult expansionShare) {
        return expansionShare.exists() && !(expansionShare.value() >= ASSUMED_WEAK_EXPANSION_SHARE);
    }

    /** Whether resin leaves the tank. */
    public boolean losesResin() {
        return !(expansionShare.exists() && expansionShare.value() <= freeboardShare);
    }

    /** Whether the tank has the room above the bed that the guide asks for. */
    public boolean hasGuideFreeboard() {
        return freeboardShare >= ResinBed.GUIDE_MIN_FREEBOARD_SHARE;
    }

    /** Whether the velocity lies in the published band. */
    public boolean isWithinGuide() {
        return velocityMetresPerHour >= GUIDE_MIN_VELOCITY_METRES_PER_HOUR
                && velocityMetresPerHour <= GUIDE_MAX_VELOCITY_METRES_PER_HOUR;
    }
}
