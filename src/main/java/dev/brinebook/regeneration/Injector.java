// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import dev.brinebook.resin.Salt;
import dev.brinebook.water.WaterProperties;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * The injector of a valve: water that runs through it draws saturated brine from the tank, and both pass the bed together.
 */
public final class Injector {

    /** Usual strengths about {@link dev.brinebook.resin.Brining#DILUTED_SALT_SHARE}; no source at hand gives a band. */
    public static final double ASSUMED_MIN_DILUTED_SALT_SHARE = 0.08;
    public static final double ASSUMED_MAX_DILUTED_SALT_SHARE = 0.12;

    private static final double SHARE_ACCURACY = 1e-12;
    private static final int MAX_EVALUATIONS = 100;

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

    /**
     * Strength of the brine behind the injector, whose density is that of brine of this strength.
     *
     * <pre>w ρ(w) = f c</pre>
     *
     * <p>w share of salt by weight; ρ(w) density of that brine, kg/m³; f saturated brine as a share of the volume; c salt in it, kg/m³.
     * Validity: 0 &lt; f &lt; 1; the brine drawn is saturated to its end.
     * Source: the balance of salt alone; [PORADNIK] or [CRC-KCL] by way of {@link Brine}.
     * Deviation: densities are those of 20 °C.
     */
    public static double dilutedSaltShareByWeight(Salt salt, double suctionShare, double brineTankTemperatureCelsius) {
        double kilogramsPerCubicMetre = 1000 * Guard.within(suctionShare, 0, 1, "suctionShare")
                * Brine.saltKilogramsPerLitreBrine(salt, brineTankTemperatureCelsius);
        return new BrentSolver(SHARE_ACCURACY, SHARE_ACCURACY, 0).solve(MAX_EVALUATIONS,
                share -> share * Brine.weakDensityKilogramsPerCubicMetre(salt, share) - kilogramsPerCubicMetre, 0,
                Brine.saturatedSaltShare(salt, brineTankTemperatureCelsius) + SHARE_ACCURACY);
    }

    /**
     * Litres of water that the injector adds for a litre of diluted brine.
     *
     * <pre>v = ρ(w) (1 − w / s) / ρ_w</pre>
     *
     * <p>v L/L; w share of salt by weight of the diluted brine, s of the saturated; ρ(w) density of the diluted brine and ρ_w that of the
     * water, kg/m³.
     * Validity: w ≤ s.
     * Source: the balance of masses alone; [PORADNIK] or [CRC-KCL] by way of {@link Brine}; [KELL-1975].
     * Deviation: as above.
     */
    static double waterShare(Salt salt, double dilutedSaltShare, double brineTankTemperatureCelsius, double waterTemperatureCelsius) {
        return Brine.weakDensityKilogramsPerCubicMetre(salt, dilutedSaltShare)
                * (1 - dilutedSaltShare / Brine.saturatedSaltShare(salt, brineTankTemperatureCelsius))
                / WaterProperties.densityKilogramsPerCubicMetre(waterTemperatureCelsius);
    }
}
