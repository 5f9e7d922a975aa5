package dev.brinebook.resin;

import dev.brinebook.guard.Guard;
import dev.brinebook.water.WaterProperties;

/**
 * Pressure lost in the bed.
 *
 * <p>Not the loss of a softener: valve, distributors and fouled resin add to it.
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
     * <p>ΔP/L Pa/m; μ viscosity, Pa·s; ε voids; v velocity over the empty tank, m/s; d bead diameter, m; ρ density,
     * kg/m³.
     * Validity: spheres of one size; ρ v d / (μ (1 − ε)) from 1 to 2,500.
     * Source: [ERGUN-1952] equation for the total energy loss.
     * Deviation: none.
     */
    public static double pascalsPerMetre(ResinBead bead, double velocityMetresPerHour, WaterProperties water) {
        double v = Guard.notNegative(velocityMetresPerHour, "velocityMetresPerHour") / SECONDS_PER_HOUR;
        return viscousTerm(bead, water) * v + inertialTerm(bead, water) * v * v;
    }

    /** Pressure drop of the whole bed at a flow, with water of {@code temperatureCelsius}. */
    public static double pascals(ResinBed bed, double flowLitresPerMinute, double temperatureCelsius) {
        return bed.depthMetres() * pascalsPerMetre(bed.bead(), bed.velocityMetresPerHour(flowLitresPerMinute),
                WaterProperties.at(temperatureCelsius));
    }

    /**
     * The flow that loses a given pressure in the bed: the positive root of the equation above, which is a parabola.
     *
     * <pre>v = 2 p / (a + √(a² + 4 b p)),  p = ΔP/L</pre>
     *
     * <p>a, b factors of v and v² above; the form without a difference, so that it stays exact at small drops.
     * Validity: as above.
     * Source: [ERGUN-1952].
     * Deviation: none.
     */
    public static double flowLitresPerMinute(ResinBed bed, double dropPascals, double temperatureCelsius) {
        WaterProperties water = WaterProperties.at(temperatureCelsius);
        double gradient = Guard.notNegative(dropPascals, "dropPascals") / bed.depthMetres();
        double a = viscousTerm(bed.bead(), water);
        double b = inertialTerm(bed.bead(), water);
        double velocityMetresPerSecond = 2 * gradient / (a + Math.sqrt(a * a + 4 * b * gradient));
        return bed.flowLitresPerMinute(velocityMetresPerSecond * SECONDS_PER_HOUR);
    }

    private static double viscousTerm(ResinBead bead, WaterProperties water) {
        double e = bead.voidShare();
        double d = bead.diameterMetres();
        return 150 * water.viscosityPascalSeconds() * (1 - e) * (1 - e) / (e * e * e * d * d);
    }

    private static double inertialTerm(ResinBead bead, WaterProperties water) {
        double e = bead.voidShare();
        return 1.75 * water.densityKilogramsPerCubicMetre() * (1 - e) / (e * e * e * bead.diameterMetres());
    }
}
