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
     * <pre>V = 1000 h (ε s (A − B) + B)</pre>
     *
     * <p>V litres; A inner area at the wet height, m², of a width in m; B area of the brine well, a round pipe of open water, 0 where
     * there is none; ε share of voids, 1 in open water; h fall of the level, m; s factor for salt that slumps, 1 where it stands.
     * Validity: the same width over the whole fall.
     * Source: by geometry.
     * Deviation: the wall of the well is counted as water.
     */
    public double litres(double widthMetres, double wellMetres, double voidShare, double fallMetres, double slump) {
        double well = Math.PI / 4 * wellMetres * wellMetres;
        double salt = areaOfWidthSquared * widthMetres * widthMetres - well;
        return 1000 * fallMetres * (Guard.within(voidShare, 0, 1, "voidShare") * slump * salt + well);
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
