// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.field;

import dev.brinebook.guard.Guard;

/** Plan of a brine tank, and what a change of its level means. */
public enum BrineTankShape {
    ROUND(Math.PI / 4), SQUARE(1);

    /** Density of a crystal of sodium chloride, kg/m³. Source: [CP-FIELD-TESTS]. */
    public static final double CRYSTAL_KILOGRAMS_PER_CUBIC_METRE = 2165;
    /** Voids of rock salt of 80 lb/ft³, by the formula below. */
    public static final double ROCK_SALT_VOID_SHARE = 0.41;
    /** Voids of pellets and solar crystals, of which no published bulk density was found. */
    public static final double ASSUMED_OTHER_VOID_SHARE = 0.45;

    private final double areaOfWidthSquared;

    BrineTankShape(double areaOfWidthSquared) {
        this.areaOfWidthSquared = areaOfWidthSquared;
    }

    /**
     * Brine that leaves among salt when the level falls.
     *
     * <pre>V = 1000 A ε h s</pre>
     *
     * <p>V litres; A inner area at the wet height, m², of a width in m; ε share of voids, 1 in open water; h fall of the level, m;
     * s factor for salt that slumps, 1 where it stands.
     * Validity: the same width over the whole fall; the brine well is counted as salt.
     * Source: by geometry.
     * Deviation: none.
     */
    public double litres(double widthMetres, double voidShare, double fallMetres, double slump) {
        return 1000 * areaOfWidthSquared * widthMetres * widthMetres * Guard.within(voidShare, 0, 1, "voidShare") * fallMetres * slump;
    }

    /**
     * Voids of a heap of salt.
     *
     * <pre>ε = 1 − ρ_b / 2165</pre>
     *
     * <p>ρ_b bulk density, kg/m³, below that of the crystal.
     * Validity: dry salt.
     * Source: by definition.
     * Deviation: none.
     */
    public static double voidShare(double bulkKilogramsPerCubicMetre) {
        return 1 - Guard.within(bulkKilogramsPerCubicMetre, 0, CRYSTAL_KILOGRAMS_PER_CUBIC_METRE, "bulkKilogramsPerCubicMetre")
                / CRYSTAL_KILOGRAMS_PER_CUBIC_METRE;
    }
}
