// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.field;

import dev.brinebook.guard.Guard;
import dev.brinebook.regeneration.Brine;
import dev.brinebook.resin.Salt;
import dev.brinebook.water.WaterProperties;

/** Strength of brine by the degrees of a hydrometer: 100 degrees are saturated, 26.395 % of salt by weight at 60 °F. */
public final class BrineStrength {

    /** Salt in saturated brine at 60 °F, a share of its weight. Source: [CP-FIELD-TESTS], the scale of the instrument. */
    public static final double SATURATED_SHARE = 0.26395;
    /** 60 °F, at which the instrument is read. */
    public static final double SCALE_CELSIUS = (60 - 32) / 1.8;
    /** Least degrees at which brine may be drawn. Source: [CP-FIELD-TESTS]. */
    public static final double LEAST_DEGREES = 95;
    /** Range of a reading. */
    public static final double MAX_DEGREES = 110;
    /** What stands over salt for hours where nobody tested it: between 95 and 100 degrees. */
    public static final double ASSUMED_DEGREES = 97.5;
    public static final double ASSUMED_DEGREES_HALF_WIDTH = 2.5;
    /** Highest strength of the formula of density. */
    public static final double MAX_SHARE = 0.4;

    private static final double[] C = {-0.00433, 0.06471, 1.01660, 0.014624, 3315.6};
    private static final double STEP = 1e-4;

    private BrineStrength() {
    }

    /**
     * Density of sodium chloride brine.
     *
     * <pre>
     * ρ_app = (c₀ w + c₁) exp(10⁻⁶ (t + c₄)²) / (w + c₂ + c₃ t)
     * 1/ρ = (1 − w)/ρ_w + w/ρ_app
     * </pre>
     *
     * <p>ρ kg/m³; w salt share by weight; t °C; ρ_w density of water; c −0.00433, 0.06471, 1.01660, 0.014624, 3315.6.
     * Validity: 0 to 60 °C, to saturation; a little beyond and below 0 for what a reading may be off.
     * Source: [LALIBERTE-2004] for brine; [KELL-1975] for water.
     * Deviation: none; within 0.7 kg/m³ of [PORADNIK].
     */
    public static double densityKilogramsPerCubicMetre(double saltShare, double celsius) {
        double w = Guard.within(saltShare, -MAX_SHARE, MAX_SHARE, "saltShare");
        double exponent = 1e-6 * (celsius + C[4]) * (celsius + C[4]);
        double apparent = (C[0] * w + C[1]) * StrictMath.exp(exponent) / (w + C[2] + C[3] * celsius);
        return 1 / ((1 - w) / WaterProperties.densityKilogramsPerCubicMetre(celsius) + w / apparent);
    }

    /** Salt share by weight of degrees at 60 °F. */
    public static double saltShare(double degrees) {
        return degrees / 100 * SATURATED_SHARE;
    }

    /** Density at 60 °F as a multiple of that of water. */
    public static double specificGravity(double degrees) {
        return densityKilogramsPerCubicMetre(saltShare(degrees), SCALE_CELSIUS)
                / WaterProperties.densityKilogramsPerCubicMetre(SCALE_CELSIUS);
    }

    /**
     * Degrees at 60 °F of brine that was read at another temperature.
     *
     * <pre>ρ(w, t) = ρ(w_r, 60 °F),  by one step of Newton from w_r:  w = w_r + (ρ(w_r, 60 °F) − ρ(w_r, t)) / (∂ρ/∂w)</pre>
     *
     * <p>w_r salt share of the degrees read; t °C.
     * Validity: 0 to 60 °C.
     * Source: [LALIBERTE-2004].
     * Deviation: the glass does not expand.
     */
    public static double correctedDegrees(double degrees, double celsius) {
        double read = saltShare(degrees);
        double slope = (densityKilogramsPerCubicMetre(read + STEP, celsius) - densityKilogramsPerCubicMetre(read - STEP, celsius))
                / (2 * STEP);
        double off = densityKilogramsPerCubicMetre(read, SCALE_CELSIUS) - densityKilogramsPerCubicMetre(read, celsius);
        return degrees + off / slope / SATURATED_SHARE * 100;
    }

    /**
     * Salt that a litre of water takes up to become brine of degrees.
     *
     * <pre>s = ρ_w w / (1000 (1 − w))</pre>
     *
     * <p>s kg/L; w salt share; ρ_w density of water at 60 °F. For potassium chloride, degrees are hundredths of its own saturation at t.
     * Validity: as the density; 0.358 kg/L (2.99 lb/gal) saturated.
     * Source: by definition.
     * Deviation: none.
     */
    public static double saltPerWaterKilogramsPerLitre(Salt salt, double degrees, double celsius) {
        double share = share(salt, degrees, celsius);
        return WaterProperties.densityKilogramsPerCubicMetre(SCALE_CELSIUS) / 1000 * share / (1 - share);
    }

    /**
     * Salt in a litre of brine of degrees.
     *
     * <pre>c = w ρ / 1000</pre>
     *
     * <p>c kg/L; w salt share; ρ density of the brine at 60 °F. Potassium chloride as above.
     * Validity: as the density; 0.317 kg/L (2.65 lb/gal) saturated.
     * Source: by definition.
     * Deviation: none.
     */
    public static double saltPerBrineKilogramsPerLitre(Salt salt, double degrees, double celsius) {
        double share = share(salt, degrees, celsius);
        return share / 1000 * (salt == Salt.SODIUM_CHLORIDE ? densityKilogramsPerCubicMetre(share, SCALE_CELSIUS)
                : Brine.weakDensityKilogramsPerCubicMetre(salt, Math.max(0, share)));
    }

    private static double share(Salt salt, double degrees, double celsius) {
        return salt == Salt.SODIUM_CHLORIDE ? saltShare(degrees) : degrees / 100 * Brine.saturatedSaltShare(salt, celsius);
    }
}
