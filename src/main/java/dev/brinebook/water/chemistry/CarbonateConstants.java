// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.chemistry;

import dev.brinebook.guard.Guard;

/**
 * Equilibrium constants of carbonic acid, of the forms of calcium carbonate and of water, as negative decadic logarithms.
 *
 * <pre>log10 K = a + b T + c/T + d log10 T + e/T²</pre>
 *
 * <p>T K; K in mol/L, carbon dioxide and carbonic acid together.
 * Validity: 0 to 90 °C, 1 atm.
 * Source: [PLUMMER-BUSENBERG-1982]; that of water from memory.
 *
 * @param pk1 first constant of carbonic acid
 * @param pk2 second constant
 * @param pkCalcite solubility product of calcite
 * @param pkAragonite solubility product of aragonite
 * @param pkWater ion product of water
 */
public record CarbonateConstants(double pk1, double pk2, double pkCalcite, double pkAragonite, double pkWater) {

    public static final double MIN_CELSIUS = 0;
    public static final double MAX_CELSIUS = 90;
    private static final double ZERO_KELVINS = 273.15;

    /** The constants at a temperature, {@link #MIN_CELSIUS} to {@link #MAX_CELSIUS}. */
    public static CarbonateConstants at(double celsius) {
        double kelvins = ZERO_KELVINS + Guard.within(celsius, MIN_CELSIUS, MAX_CELSIUS, "celsius");
        return new CarbonateConstants(
                pk(kelvins, -356.3094, -0.06091964, 21834.37, 126.8339, -1684915),
                pk(kelvins, -107.8871, -0.03252849, 5151.79, 38.92561, -563713.9),
                pk(kelvins, -171.9065, -0.077993, 2839.319, 71.595, 0),
                pk(kelvins, -171.9773, -0.077993, 2903.293, 71.595, 0),
                pk(kelvins, -283.9710, -0.05069842, 13323.00, 102.24447, -1119669));
    }

    private static double pk(double kelvins, double a, double b, double c, double d, double e) {
        return -(a + b * kelvins + c / kelvins + d * StrictMath.log10(kelvins) + e / (kelvins * kelvins));
    }
}
