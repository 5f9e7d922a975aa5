// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.field;

import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.Salt;
import org.hipparchus.analysis.solvers.BrentSolver;

/** What a run from a checked regeneration to the first hard water says of the resin. */
public final class BreakthroughRun {

    /** Resin is replaced below this share of its capacity, if cleaning does not help. Source: [UFC-3-240-13FN]. */
    public static final double WORN_SHARE = 0.75;

    private static final double SOLVER_ACCURACY = 1e-9;
    private static final int MAX_EVALUATIONS = 100;

    private BreakthroughRun() {
    }

    /**
     * Hardness that the bed took up.
     *
     * <pre>C = V (H_in − H_out) / 1000</pre>
     *
     * <p>C grams as CaCO₃; V litres softened, the middle of the last step between two tests; H_in and H_out hardness of raw and softened
     * water, mg/L.
     * Validity: started after a full regeneration.
     * Source: by balance.
     * Deviation: none.
     */
    public static double capacityGrams(double litres, double rawMgPerL, double outletMgPerL) {
        return litres * (rawMgPerL - outletMgPerL) / 1000;
    }

    /**
     * Capacity of new resin of a volume, regenerated with an amount of salt. A dose beside the table is taken as its nearest.
     *
     * <p>Source: [CP-WORKING-TABLE].
     */
    public static double tableGrams(Salt salt, double saltKilograms, double resinLitres) {
        return resinLitres * CapacityTable.WORKING.capacityGramsPerLitre(salt, nearestDose(salt, 1000 * saltKilograms / resinLitres));
    }

    /** Whether the table covers the dose of a bed. */
    public static boolean isInTable(Salt salt, double saltKilograms, double resinLitres) {
        return CapacityTable.WORKING.isKnownAt(salt, 1000 * saltKilograms / resinLitres);
    }

    private static double nearestDose(Salt salt, double gramsPerLitre) {
        return Math.max(CapacityTable.minSaltDoseGramsPerLitre(salt),
                Math.min(CapacityTable.maxSaltDoseGramsPerLitre(salt), gramsPerLitre));
    }

    /**
     * New resin that takes up a capacity with an amount of salt: V of V c(S/V) = C, between the volumes at the highest and the lowest dose
     * of the table; one of these where C lies beyond.
     *
     * <p>Source: [CP-WORKING-TABLE].
     */
    public static double resinLitres(Salt salt, double saltKilograms, double capacityGrams) {
        double least = 1000 * saltKilograms / CapacityTable.maxSaltDoseGramsPerLitre(salt);
        double most = 1000 * saltKilograms / CapacityTable.minSaltDoseGramsPerLitre(salt);
        if (capacityGrams <= tableGrams(salt, saltKilograms, least)) {
            return least;
        }
        if (capacityGrams >= tableGrams(salt, saltKilograms, most)) {
            return most;
        }
        return new BrentSolver(SOLVER_ACCURACY, SOLVER_ACCURACY).solve(MAX_EVALUATIONS,
                litres -> tableGrams(salt, saltKilograms, litres) - capacityGrams, least, most);
    }

    /** Whether a volume lies between the ends of the table. */
    public static boolean hasResinLitres(Salt salt, double saltKilograms, double capacityGrams) {
        return capacityGrams > tableGrams(salt, saltKilograms, 1000 * saltKilograms / CapacityTable.maxSaltDoseGramsPerLitre(salt))
                && capacityGrams < tableGrams(salt, saltKilograms, 1000 * saltKilograms / CapacityTable.minSaltDoseGramsPerLitre(salt));
    }
}
