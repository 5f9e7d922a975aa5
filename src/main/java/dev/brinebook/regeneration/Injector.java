// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import dev.brinebook.resin.Salt;
import dev.brinebook.water.WaterProperties;

/**
 * The injector of a valve: water that runs through it draws saturated brine from the tank, and both pass the bed together.
 */
public final class Injector {

    /** Usual strengths about {@link dev.brinebook.resin.Brining#DILUTED_SALT_SHARE}; no source at hand gives a band. */
    public static final double ASSUMED_MIN_DILUTED_SALT_SHARE = 0.08;
    public static final double ASSUMED_MAX_DILUTED_SALT_SHARE = 0.12;

    private Injector() {
    }

    /** Saturated brine as a share, by volume, of what passes the bed: above 0 and below 1. */
    public static double suctionShare(double suctionLitresPerMinute, double brineLitresPerMinute) {
        double share = Guard.positive(suctionLitresPerMinute, "suctionLitresPerMinute")
                / Guard.positive(brineLitresPerMinute, "brineLitresPerMinute");
        if (!(suctionLitresPerMinute < brineLitresPerMinute)) {
            throw new IllegalArgumentException("suctionLitresPerMinute must be below brineLitresPerMinute, "
                    + brineLitresPerMinute + ", was " + suctionLitresPerMinute);
        }
        return share;
    }

    /**
     * Strength of the brine behind the injector.
     *
     * <pre>w = f c / (f ρ_s + (1 − f) ρ)</pre>
     *
     * <p>w share of salt by weight; f saturated brine as a share of the volume, {@link #suctionShare}; c salt in it, kg/m³;
     * ρ_s its density and ρ that of the water, kg/m³: the salt drawn over the weight of brine and water.
     * Validity: 0 &lt; f &lt; 1; the brine drawn is saturated to its end.
     * Source: the balance of masses alone; [SALT-INSTITUTE] or [CRC-KCL] by way of {@link Brine}; [KELL-1975].
     * Deviation: volumes are taken to add up; 10 % brine takes 0.4 % less room.
     */
    public static double dilutedSaltShare(Salt salt, double suctionShare, double brineTankTemperatureCelsius,
            double waterTemperatureCelsius) {
        Guard.within(suctionShare, 0, 1, "suctionShare");
        double saturatedShare = Brine.saturatedSaltShare(salt, brineTankTemperatureCelsius);
        double brineKilograms = suctionShare * Brine.densityKilogramsPerCubicMetre(salt, saturatedShare);
        double waterKilograms = (1 - suctionShare)
                * WaterProperties.densityKilogramsPerCubicMetre(waterTemperatureCelsius);
        return brineKilograms * saturatedShare / (brineKilograms + waterKilograms);
    }
}
