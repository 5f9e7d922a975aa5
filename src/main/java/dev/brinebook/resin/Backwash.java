// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.Guard;
import dev.brinebook.guard.LastResultCache;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import dev.brinebook.quantity.Exact;
import dev.brinebook.water.WaterProperties;
import org.hipparchus.analysis.solvers.BrentSolver;

/** Expansion of the bed by an upflow, and the upflow for a given expansion. */
public final class Backwash {

    /** Usual aim of a backwash, as a share of the settled depth. */
    public static final double TARGET_EXPANSION_SHARE = 0.5;
    public static final double MAX_EXPANSION_SHARE = 2;

    private static final double SECONDS_PER_HOUR = 3600;
    private static final int MAX_EVALUATIONS = 200;
    /** The low end of the search: beads allowed here fall at a seventh of Stokes' velocity or faster. */
    private static final double LEAST_SHARE_OF_STOKES = 0.01;

    /** What beads of a kind do in water of a temperature, whatever the flow. */
    private record Falling(double velocityMetresPerHour, double hindranceExponent) {

        private record Asked(ResinBead bead, double temperatureCelsius) {
        }

        private static final LastResultCache<Asked, Falling> LAST = new LastResultCache<>(asked -> {
            WaterProperties water = WaterProperties.at(asked.temperatureCelsius());
            return new Falling(SECONDS_PER_HOUR * terminalVelocityMetresPerSecond(asked.bead(), water),
                    Backwash.hindranceExponent(asked.bead(), water));
        });

        static Falling of(ResinBead bead, double temperatureCelsius) {
            return LAST.of(new Asked(bead, temperatureCelsius));
        }
    }

    private Backwash() {
    }

    /**
     * Velocity at which a single bead falls through still water.
     *
     * <pre>Cd u² = 4 g d (ρ_s − ρ) / (3 ρ),  Re = ρ u d / μ</pre>
     *
     * <p>u m/s; Cd drag coefficient at Re; μ viscosity of water, Pa·s; ρ its density and ρ_s that of the bead, kg/m³; d
     * diameter, m; g standard gravity. Solved for u between 0 and Stokes' velocity, which no sphere reaches.
     * Validity: spheres, Re as the drag law; the beads allowed here have 1.4 to 227.
     * Source: [BARATI-2014] by way of {@link SphereDrag}.
     * Deviation: drag laws of the same validity differ: Schiller and Naumann's, 24 / Re (1 + 0.15 Re^0.687) of
     * [SCHILLER-NAUMANN], gives up to 4 % more velocity, and for the lightest beads 3 % less.
     */
    public static double terminalVelocityMetresPerSecond(ResinBead bead, WaterProperties water) {
        double d = bead.diameterMetres();
        double density = water.densityKilogramsPerCubicMetre();
        double weight = Exact.STANDARD_GRAVITY * d * (bead.wetDensityKilogramsPerCubicMetre() - density);
        double stokes = weight * d / (18 * water.viscosityPascalSeconds());
        return new BrentSolver(1e-14, 1e-18, 0).solve(MAX_EVALUATIONS, u -> u * u
                * SphereDrag.coefficient(reynoldsNumber(bead, u, water)) - 4 * weight / (3 * density),
                LEAST_SHARE_OF_STOKES * stokes, stokes);
    }

    /**
     * Exponent by which beads hinder one another.
     *
     * <pre>n = 4.45 Re^−0.1</pre>
     *
     * <p>Re Reynolds number of a single falling bead.
     * Validity: 1 &lt; Re &lt; 500, walls far away.
     * Source: [RICHARDSON-ZAKI].
     * Deviation: none.
     */
    public static double hindranceExponent(ResinBead bead, WaterProperties water) {
        double terminal = terminalVelocityMetresPerSecond(bead, water);
        double reynolds = Guard.within(reynoldsNumber(bead, terminal, water), 1.0, 500.0, "Reynolds number");
        return 4.45 * StrictMath.pow(reynolds, -0.1);
    }

    /**
     * The upflow that expands a bed by a given share.
     *
     * <pre>v = u ε^n,  ε = 1 − (1 − ε₀) / (1 + X)</pre>
     *
     * <p>v over the empty tank; u, n as above; ε₀ voids of the settled bed; X expansion as a share of the depth.
     * Validity: X from 0 (the bed begins to lift) to 2.
     * Source: [RICHARDSON-ZAKI]; [DAVIS] table 8-2 gives 12 to 20 m/h and [TEN-STATES] 6 to 8 gpm/ft².
     * Deviation: beads of one size; a real bed sorts itself, the fines on top expand more.
     */
    public static double velocityMetresPerHour(ResinBead bead, double expansionShare, double temperatureCelsius) {
        Guard.within(expansionShare, 0, MAX_EXPANSION_SHARE, "expansionShare");
        Falling falling = Falling.of(bead, temperatureCelsius);
        double voids = 1 - (1 - bead.voidShare()) / (1 + expansionShare);
        return falling.velocityMetresPerHour() * StrictMath.pow(voids, falling.hindranceExponent());
    }

    /**
     * Expansion of a bed by a given upflow: the inverse of the above, 0 while the bed stays settled.
     *
     * <pre>X = (1 − ε₀) / (1 − ε) − 1,  ε = (v / u)^(1/n)</pre>
     *
     * <p>Symbols as above.
     * Validity: v from 0; no answer from the falling velocity of a bead on, at which the resin leaves the tank.
     * Source: [RICHARDSON-ZAKI].
     * Deviation: as above.
     */
    public static OptionalResult expansionShare(ResinBead bead, double velocityMetresPerHour, double temperatureCelsius) {
        Guard.notNegative(velocityMetresPerHour, "velocityMetresPerHour");
        Falling falling = Falling.of(bead, temperatureCelsius);
        double relative = velocityMetresPerHour / falling.velocityMetresPerHour();
        if (relative >= 1) {
            return OptionalResult.none(NoResultReason.RESIN_CARRIED_OUT);
        }
        double voids = StrictMath.pow(relative, 1 / falling.hindranceExponent());
        return OptionalResult.of(voids <= bead.voidShare() ? 0 : (1 - bead.voidShare()) / (1 - voids) - 1);
    }

    private static double reynoldsNumber(ResinBead bead, double velocityMetresPerSecond, WaterProperties water) {
        return water.densityKilogramsPerCubicMetre() * velocityMetresPerSecond * bead.diameterMetres()
                / water.viscosityPascalSeconds();
    }
}
