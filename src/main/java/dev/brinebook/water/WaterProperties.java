// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water;

import dev.brinebook.guard.Guard;

/**
 * Density and viscosity of liquid water at the pressure of the air, as the hydraulics of a bed needs them.
 *
 * <p>Not for brine, nor for the effect of line pressure: 6 bar adds 0.03 % to the density.
 *
 * @param densityKilogramsPerCubicMetre density
 * @param viscosityPascalSeconds dynamic viscosity
 */
public record WaterProperties(double densityKilogramsPerCubicMetre, double viscosityPascalSeconds) {

    public static final double MIN_TEMPERATURE_CELSIUS = 0;
    public static final double MAX_TEMPERATURE_CELSIUS = 60;

    private static final double CELSIUS_ZERO_KELVINS = 273.15;

    public WaterProperties {
        Guard.positive(densityKilogramsPerCubicMetre, "densityKilogramsPerCubicMetre");
        Guard.positive(viscosityPascalSeconds, "viscosityPascalSeconds");
    }

    /** Both properties of water at {@code temperatureCelsius}. */
    public static WaterProperties at(double temperatureCelsius) {
        return new WaterProperties(densityKilogramsPerCubicMetre(temperatureCelsius),
                viscosityPascalSeconds(temperatureCelsius));
    }

    /**
     * Density of water at 1 atm.
     *
     * <pre>ρ = (999.83952 + 16.945176 t − 7.9870401e-3 t² − 46.170461e-6 t³ + 105.56302e-9 t⁴ − 280.54253e-12 t⁵)
     *     / (1 + 16.879850e-3 t)</pre>
     *
     * <p>ρ kg/m³; t °C.
     * Validity: the equation reaches 150 °C; used from 0 to 60 °C.
     * Source: [KELL-1975] equation 16.
     * Deviation: t is read on today's temperature scale; the result lies within 0.0004 % of IAPWS-95.
     */
    public static double densityKilogramsPerCubicMetre(double temperatureCelsius) {
        double t = Guard.within(temperatureCelsius, MIN_TEMPERATURE_CELSIUS, MAX_TEMPERATURE_CELSIUS,
                "temperatureCelsius");
        double numerator = 999.83952
                + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))));
        return numerator / (1 + 16.879850e-3 * t);
    }

    /**
     * Dynamic viscosity of water at 0.1 MPa.
     *
     * <pre>μ = 1e-6 · (280.68 τ^−1.9 + 511.45 τ^−7.7 + 61.131 τ^−19.6 + 0.45903 τ^−40),  τ = T / 300 K</pre>
     *
     * <p>μ Pa·s; T absolute temperature, K.
     * Validity: 253.15 to 383.15 K; used from 0 to 60 °C.
     * Source: [IAPWS-SR6-08] equation 8.
     * Deviation: none.
     */
    public static double viscosityPascalSeconds(double temperatureCelsius) {
        double celsius = Guard.within(temperatureCelsius, MIN_TEMPERATURE_CELSIUS, MAX_TEMPERATURE_CELSIUS,
                "temperatureCelsius");
        double tau = (celsius + CELSIUS_ZERO_KELVINS) / 300;
        return 1e-6 * (280.68 * StrictMath.pow(tau, -1.9) + 511.45 * StrictMath.pow(tau, -7.7)
                + 61.131 * StrictMath.pow(tau, -19.6) + 0.45903 * StrictMath.pow(tau, -40));
    }
}
