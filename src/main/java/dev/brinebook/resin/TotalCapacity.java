// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.AtomicWeights;
import dev.brinebook.quantity.Exact;

/** What all exchange sites of the resin hold, and the figure on the nameplate: neither is what a regeneration gives. */
public final class TotalCapacity {

    /** Nameplate capacity of a litre of resin, grams as CaCO₃: 30,000 grains per cubic foot. Source: [CP-NAMEPLATE]. */
    public static final double NAMEPLATE_GRAMS_PER_LITRE = 30 * Exact.GRAIN_MILLIGRAMS / Exact.CUBIC_FOOT_LITRES;
    /** The most that is printed on one: 32,000 grains per cubic foot. Source: [CP-NAMEPLATE]. */
    public static final double HIGHEST_NAMEPLATE_GRAMS_PER_LITRE = 32 * Exact.GRAIN_MILLIGRAMS / Exact.CUBIC_FOOT_LITRES;

    private TotalCapacity() {
    }

    /**
     * Total capacity of a resin as hardness.
     *
     * <pre>c = q · M(CaCO₃) / 2</pre>
     *
     * <p>c grams as CaCO₃ per litre of resin; q eq/L; M molar mass.
     * Validity: q above 0.
     * Source: [CIAAW] atomic weights; [WCP-2011] states 21.87 kgr/ft³ for 1 eq/L. [DAVIS] table 8-2: a softener
     * operates at 50 to 70 % of it.
     * Deviation: none.
     */
    public static double gramsPerLitre(double equivalentsPerLitre) {
        return Guard.positive(equivalentsPerLitre, "equivalentsPerLitre") * AtomicWeights.CALCIUM_CARBONATE / 2;
    }

    /**
     * The salt dose with as many equivalents as the resin has sites.
     *
     * <pre>d = q · M(salt)</pre>
     *
     * <p>d grams of salt per litre of resin; q eq/L; M molar mass, g/mol.
     * Validity: q above 0.
     * Source: [CIAAW] atomic weights; [WT-2014] states 7.29 lb/ft³ of sodium chloride for 2.0 eq/L.
     * Deviation: none.
     */
    public static double matchingDoseGramsPerLitre(double equivalentsPerLitre, Salt salt) {
        return Guard.positive(equivalentsPerLitre, "equivalentsPerLitre") * salt.molarMassGramsPerMole();
    }

    /**
     * What no regeneration can exceed: the equivalents of the salt, or the sites of the resin where those are fewer.
     *
     * <pre>c = min(d · M(CaCO₃) / (2 M(salt)), q · M(CaCO₃) / 2)</pre>
     *
     * <p>c grams as CaCO₃ per litre of resin; d dose, grams of salt per litre of resin; q eq/L; M molar mass, g/mol.
     * Validity: d of 0 or more, q above 0.
     * Source: [CIAAW] atomic weights; [WT-2014] states where the two meet, 7.29 lb/ft³ of sodium chloride for 2.0 eq/L.
     * Deviation: none.
     */
    public static double ceilingGramsPerLitre(Salt salt, double saltDoseGramsPerLitre, double equivalentsPerLitre) {
        return Math.min(Guard.notNegative(saltDoseGramsPerLitre, "saltDoseGramsPerLitre") * salt.ceilingGramsPerGram(),
                gramsPerLitre(equivalentsPerLitre));
    }
}
