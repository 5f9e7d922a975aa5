// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.quantity;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Molar masses of the substances that water reports print, from their formulas. Not for formulas with brackets or charges.
 *
 * <p>Source: [CIAAW] abridged values.
 */
public final class MolarMass {

    private static final Map<String, Double> WEIGHTS = Map.ofEntries(Map.entry("Ca", AtomicWeights.CALCIUM),
            Map.entry("Mg", AtomicWeights.MAGNESIUM), Map.entry("Fe", AtomicWeights.IRON), Map.entry("Mn", AtomicWeights.MANGANESE),
            Map.entry("Na", AtomicWeights.SODIUM), Map.entry("K", AtomicWeights.POTASSIUM), Map.entry("C", AtomicWeights.CARBON),
            Map.entry("O", AtomicWeights.OXYGEN), Map.entry("Cl", AtomicWeights.CHLORINE), Map.entry("H", AtomicWeights.HYDROGEN),
            Map.entry("N", AtomicWeights.NITROGEN), Map.entry("F", AtomicWeights.FLUORINE), Map.entry("Si", AtomicWeights.SILICON),
            Map.entry("P", AtomicWeights.PHOSPHORUS), Map.entry("S", AtomicWeights.SULFUR), Map.entry("Br", AtomicWeights.BROMINE),
            Map.entry("Sr", AtomicWeights.STRONTIUM), Map.entry("Ba", AtomicWeights.BARIUM));

    private static final Pattern WHOLE = Pattern.compile("(\\d*)((?:[A-Z][a-z]?\\d*)+)");
    private static final Pattern ELEMENT = Pattern.compile("([A-Z][a-z]?)(\\d*)");

    private MolarMass() {
    }

    /**
     * Mass in g of the moles that a formula names, such as 100.086 of {@code CaCO3} and 122.032 of {@code 2HCO3}.
     *
     * @throws IllegalArgumentException when it is no such formula or has an element without a weight here
     */
    public static double grams(String formula) {
        Matcher whole = WHOLE.matcher(formula);
        if (!whole.matches()) {
            throw new IllegalArgumentException("no formula of a substance: " + formula);
        }
        double grams = 0;
        Matcher element = ELEMENT.matcher(whole.group(2));
        while (element.find()) {
            Double weight = WEIGHTS.get(element.group(1));
            if (weight == null) {
                throw new IllegalArgumentException("no atomic weight of " + element.group(1) + " in " + formula);
            }
            grams += weight * count(element.group(2));
        }
        return grams * count(whole.group(1));
    }

    /** Moles that the formula begins with: 2 of {@code 2HCO3}, 1 of {@code CaCO3}. */
    public static int moles(String formula) {
        Matcher whole = WHOLE.matcher(formula);
        if (!whole.matches()) {
            throw new IllegalArgumentException("no formula of a substance: " + formula);
        }
        return count(whole.group(1));
    }

    private static int count(String digits) {
        return digits.isEmpty() ? 1 : Integer.parseInt(digits);
    }
}
