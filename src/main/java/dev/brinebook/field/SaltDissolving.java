// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.field;

import dev.brinebook.guard.Guard;

/** How long refilled water takes to become saturated where salt stands above it. */
public final class SaltDissolving {

    /** Wait before brine is drawn, minutes. Source: [CP-FIELD-TESTS]. */
    public static final double WAIT_MINUTES = 120;
    /** Transfer through the film about a crystal, m/s, from slow to fast. */
    public static final double ASSUMED_SLOW_METRES_PER_SECOND = 3e-6;
    public static final double ASSUMED_FAST_METRES_PER_SECOND = 1e-5;
    /** Size of pieces of salt, m. */
    public static final double ASSUMED_PIECE_METRES = 0.015;

    private static final double SATURATED_SHARE = 0.99;

    private SaltDissolving() {
    }

    /**
     * Minutes until 99 % of saturation.
     *
     * <pre>dC/dt = k a (C_s − C),  a = 6 (1 − ε) / (ε d);   t = ln 100 / (60 k a)</pre>
     *
     * <p>k transfer through the film, m/s; a surface of salt per volume of water, 1/m; ε voids; d size of the pieces, m.
     * Validity: salt stands above the water.
     * Source: [OWN-ASSUMPTION] for k; no published time for a household tank was found.
     * Deviation: the tank is taken as mixed.
     */
    public static double minutes(double transferMetresPerSecond, double voidShare, double pieceMetres) {
        double surface = 6 * (1 - voidShare) / (voidShare * Guard.positive(pieceMetres, "pieceMetres"));
        return -StrictMath.log(1 - SATURATED_SHARE) / (Guard.positive(transferMetresPerSecond, "transferMetresPerSecond") * surface) / 60;
    }
}
