// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.Guard;
import dev.brinebook.water.WaterProperties;

/**
 * Pressure lost in the bed.
 *
 * <p>Not the loss of a softener: valve, distributors and dirt in the resin add to it.
 */
public final class PressureDrop {

    private static final double SECONDS_PER_HOUR = 3600;

    private PressureDrop() {
    }

    /**
     * Pressure drop of a packed bed per metre of depth.
     *
     * <pre>ΔP/L = 150 μ (1 − ε)² v / (ε³ d²) + 1.75 ρ (1 − ε) v² / (ε³ d)</pre>
     *
     * <p>ΔP/L Pa/m; μ viscosity, Pa·s; ε voids; v velocity over the empty tank, m/s; d Sauter mean diameter, m;
     * ρ density, kg/m³.
     * Validity: ρ v d / (μ (1 − ε)) to 2,500; below 1 the first term is left, the drop of creeping flow.
     * Source: [ERGUN-1952] equation for the total energy loss.
     * Deviation: none.
     */
    public static double pascalsPerMetre(Packing packing, double velocityMetresPerHour, WaterProperties water) {
        double v = Guard.notNegative(velocityMetresPerHour, "velocityMetresPerHour") / SECONDS_PER_HOUR;
        return viscousTerm(packing, water) * v + inertialTerm(packing, water) * v * v;
    }

    /** Pressure drop of a whole clean bed at a flow, with water of {@code temperatureCelsius}. */
    public static double pascals(ResinBed bed, double flowLitresPerMinute, double temperatureCelsius) {
        return pascals(bed, 0, flowLitresPerMinute, temperatureCelsius);
    }

    /** The same of a bed in which {@code crushedShare} of the beads is crushed. */
    public static double pascals(ResinBed bed, double crushedShare, double flowLitresPerMinute, double temperatureCelsius) {
        return bed.depthMetres() * pascalsPerMetre(Packing.of(bed.bead(), crushedShare),
                bed.velocityMetresPerHour(flowLitresPerMinute), WaterProperties.at(temperatureCelsius));
    }

    /** The flow that loses a given pressure in a clean bed. */
    public static double flowLitresPerMinute(ResinBed bed, double dropPascals, double temperatureCelsius) {
        return flowLitresPerMinute(bed, 0, dropPascals, temperatureCelsius);
    }

    /**
     * The flow that loses a given pressure in a bed in which {@code crushedShare} of the beads is crushed: the positive
     * root of the equation above, which is a parabola.
     *
     * <pre>v = 2 p / (a + √(a² + 4 b p)),  p = ΔP/L</pre>
     *
     * <p>a, b factors of v and v² above; the form without a difference, so that it stays exact at small drops.
     * Validity: as above.
     * Source: [ERGUN-1952].
     * Deviation: none.
     */
    public static double flowLitresPerMinute(ResinBed bed, double crushedShare, double dropPascals,
            double temperatureCelsius) {
        Packing packing = Packing.of(bed.bead(), crushedShare);
        WaterProperties water = WaterProperties.at(temperatureCelsius);
        double gradient = Guard.notNegative(dropPascals, "dropPascals") / bed.depthMetres();
        double a = viscousTerm(packing, water);
        double b = inertialTerm(packing, water);
        double velocityMetresPerSecond = 2 * gradient / (a + Math.sqrt(a * a + 4 * b * gradient));
        return bed.flowLitresPerMinute(velocityMetresPerSecond * SECONDS_PER_HOUR);
    }

    private static double viscousTerm(Packing packing, WaterProperties water) {
        double e = packing.voidShare();
        double d = packing.diameterMetres();
        return 150 * water.viscosityPascalSeconds() * (1 - e) * (1 - e) / (e * e * e * d * d);
    }

    private static double inertialTerm(Packing packing, WaterProperties water) {
        double e = packing.voidShare();
        return 1.75 * water.densityKilogramsPerCubicMetre() * (1 - e) / (e * e * e * packing.diameterMetres());
    }
}
