// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.chemistry;

import dev.brinebook.guard.Guard;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Cations against anions of a water: a complete and correct analysis has as many charges of either sign.
 *
 * @param cationsMeqPerL sum of the cations
 * @param anionsMeqPerL sum of the anions
 * @param uncertaintyPercent standard uncertainty of {@link #percent}
 */
public record ChargeBalance(double cationsMeqPerL, double anionsMeqPerL, double uncertaintyPercent) {

    public ChargeBalance {
        Guard.notNegative(cationsMeqPerL, "cationsMeqPerL");
        Guard.notNegative(anionsMeqPerL, "anionsMeqPerL");
        Guard.notNegative(uncertaintyPercent, "uncertaintyPercent");
    }

    /** The balance of a composition whose ions are known exactly. */
    public static ChargeBalance of(Composition composition) {
        return of(composition, Map.of());
    }

    /**
     * The balance with its uncertainty.
     *
     * <pre>u = 200 √((A uC)² + (C uA)²) / (C + A)²</pre>
     *
     * <p>u %; C, A sums, meq/L; uC, uA their standard uncertainties.
     * Source: [GUM] 5.1.2, of the quotient; the uncertainties of the ions are taken as independent.
     *
     * @param standardMgPerL standard uncertainty of each ion, mg/L; one that is not there is taken as exact
     */
    public static ChargeBalance of(Composition composition, Map<Ion, Double> standardMgPerL) {
        double cations = composition.cationsMeqPerL();
        double anions = composition.anionsMeqPerL();
        double sum = cations + anions;
        double uncertainty = sum > 0
                ? 200 * StrictMath.hypot(anions * uncertainty(true, standardMgPerL), cations * uncertainty(false, standardMgPerL))
                        / (sum * sum)
                : 0;
        return new ChargeBalance(cations, anions, uncertainty);
    }

    private static double uncertainty(boolean cations, Map<Ion, Double> standardMgPerL) {
        return Math.sqrt(Ion.all(cations).stream()
                .mapToDouble(ion -> standardMgPerL.getOrDefault(ion, 0.0) / ion.mgPerMeq()).map(u -> u * u).sum());
    }

    /** Cations less anions, meq/L. */
    public double differenceMeqPerL() {
        return cationsMeqPerL - anionsMeqPerL;
    }

    /** Difference of the sums against their sum, %; positive where cations are more. 0 of pure water. */
    public double percent() {
        double sum = cationsMeqPerL + anionsMeqPerL;
        return sum > 0 ? 100 * differenceMeqPerL() / sum : 0;
    }

    /** Whether the uncertainty of the tests alone explains the difference, at twice the standard uncertainty. */
    public boolean isWithinUncertainty() {
        return Math.abs(percent()) <= 2 * uncertaintyPercent;
    }

    /** How much more of each of the usual ions of the side that is short would close the balance, mg/L. */
    public Map<Ion, Double> closingMgPerL() {
        List<Ion> shortSide = differenceMeqPerL() < 0 ? List.of(Ion.CALCIUM, Ion.MAGNESIUM, Ion.SODIUM, Ion.POTASSIUM)
                : List.of(Ion.BICARBONATE, Ion.CHLORIDE, Ion.SULFATE, Ion.NITRATE);
        Map<Ion, Double> closing = new EnumMap<>(Ion.class);
        shortSide.forEach(ion -> closing.put(ion, ion.mgPerMeq() * Math.abs(differenceMeqPerL())));
        return closing;
    }
}
