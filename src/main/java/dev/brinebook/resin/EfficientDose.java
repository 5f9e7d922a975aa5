// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** The highest salt dose with a given efficiency: more salt gives more capacity, but less for each gram. */
public final class EfficientDose {

    /** Parts of the range of doses, searched one by one from the highest down: one for each lb/ft³. */
    private static final int PARTS = 17;
    private static final double ACCURACY_GRAMS_PER_LITRE = 1e-3;
    private static final int SOLVER_ORDER = 5;
    private static final int MAX_EVALUATIONS = 60;

    private EfficientDose() {
    }

    /**
     * The highest salt dose that still reaches a salt efficiency, or the reason why none does.
     *
     * <pre>c(d) / d = e</pre>
     *
     * <p>c capacity of the model, grams as CaCO₃ per litre of resin; d dose, grams of salt per litre; e efficiency, grams
     * as CaCO₃ per gram of salt. The dose returned reaches e; one that is higher by 0.001 g/L does not, give or take what the
     * cycles of a column agree to, a ten-thousandth of the capacity.
     * Validity: e above 0. Only doses that hold the end point of the model count. Two crossings within the same lb/ft³
     * would be missed; neither a table, whose efficiency falls from dose to dose, nor a column in any water tried, whose
     * efficiency rises at most once, just above the least dose that holds the end point, has them.
     * Source: [CA-HSC-116785] for efficiency as hardness removed per salt used.
     * Deviation: none.
     */
    public static OptionalResult highestGramsPerLitre(CapacityModel model, Salt salt, double saltEfficiencyGramsPerGram) {
        Guard.positive(saltEfficiencyGramsPerGram, "saltEfficiencyGramsPerGram");
        OptionalResult least = model.leastSaltDoseGramsPerLitre(salt);
        if (!least.exists()) {
            return least;
        }
        UnivariateFunction excess = dose -> model.holdsEndPoint(salt, dose)
                ? model.saltEfficiencyGramsPerGram(salt, dose) - saltEfficiencyGramsPerGram : -saltEfficiencyGramsPerGram;
        double high = CapacityTable.maxSaltDoseGramsPerLitre(salt);
        if (excess.value(high) >= 0) {
            return OptionalResult.of(high);
        }
        double part = (high - CapacityTable.minSaltDoseGramsPerLitre(salt)) / PARTS;
        while (high > least.value()) {
            double low = Math.max(least.value(), high - part);
            if (excess.value(low) >= 0) {
                return OptionalResult.of(crossing(excess, low, high));
            }
            high = low;
        }
        return OptionalResult.none(NoResultReason.EFFICIENCY_NOT_REACHED);
    }

    /** From the side on which the efficiency is still reached. */
    private static double crossing(UnivariateFunction excess, double low, double high) {
        return new BracketingNthOrderBrentSolver(ACCURACY_GRAMS_PER_LITRE, SOLVER_ORDER)
                .solve(MAX_EVALUATIONS, excess, low, high, 0.5 * (low + high), AllowedSolution.LEFT_SIDE);
    }
}
