// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.chemistry;

import dev.brinebook.guard.Guard;

/**
 * Activity coefficients of single ions.
 *
 * <pre>log γ = −A z² (√I/(1 + √I) − 0.3 I);  A = 1.82e6 (ε T)^−1.5;  ε = 60954/(T + 116) − 68.937</pre>
 *
 * <p>z charge; I ionic strength, mol/L; T K; ε dielectric constant of water.
 * Validity: up to 0.5 mol/L.
 * Source: [DAVIES-1962].
 *
 * @param single coefficient of an ion of one charge
 * @param twice coefficient of an ion of two charges
 */
public record Activity(double single, double twice) {

    public static final double MAX_STRENGTH_MOL_PER_L = 0.5;
    /** Ionic strength per mg/L of dissolved solids, and per µS/cm: for a water whose ions are not known. Source: [SM2330]. */
    public static final double STRENGTH_PER_SOLIDS = 2.5e-5;
    public static final double STRENGTH_PER_CONDUCTIVITY = 1.6e-5;

    /** The coefficients at an ionic strength and a temperature. */
    public static Activity at(double strengthMolPerL, double celsius) {
        double strength = Guard.within(strengthMolPerL, 0, MAX_STRENGTH_MOL_PER_L, "strengthMolPerL");
        double kelvins = 273.15 + Guard.within(celsius, CarbonateConstants.MIN_CELSIUS, CarbonateConstants.MAX_CELSIUS, "celsius");
        double dielectric = 60954 / (kelvins + 116) - 68.937;
        double a = 1.82e6 * StrictMath.pow(dielectric * kelvins, -1.5);
        double root = Math.sqrt(strength);
        double exponent = -a * (root / (1 + root) - 0.3 * strength);
        return new Activity(StrictMath.pow(10, exponent), StrictMath.pow(10, 4 * exponent));
    }
}
