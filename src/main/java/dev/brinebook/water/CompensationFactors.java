// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.AtomicWeights;
import dev.brinebook.quantity.HardnessUnit;

/**
 * How much hardness one milligram per litre of iron and of manganese counts for, in mg/L as CaCO3.
 *
 * <p>The chemistry says 1.79 for iron: a divalent ion takes the place of one calcium. The trade counts 34 to 86 (2 to 5
 * gpg). That is not capacity but a margin: it brings the next regeneration forward so that iron does not build up on the
 * resin. All four practice values are in use and no source settles it; the default is {@link #STANDARD}.
 *
 * @param ironMgPerMg mg/L as CaCO3 per mg/L of dissolved iron
 * @param manganeseMgPerMg mg/L as CaCO3 per mg/L of manganese
 */
public record CompensationFactors(double ironMgPerMg, double manganeseMgPerMg) {

    /** Highest factor accepted, gpg per mg/L. */
    public static final double MAX_GPG_PER_MG = 10;

    /** Equivalents only. Source: [CIAAW], computed. */
    public static final CompensationFactors STOICHIOMETRIC = new CompensationFactors(
            AtomicWeights.CALCIUM_CARBONATE / AtomicWeights.IRON,
            AtomicWeights.CALCIUM_CARBONATE / AtomicWeights.MANGANESE);
    /** Source for this and the next three: [CP-IRON-FACTORS]. */
    public static final CompensationFactors LIGHT = ofGpg(2, 2);
    public static final CompensationFactors MODERATE = ofGpg(3, 2);
    public static final CompensationFactors STANDARD = ofGpg(4, 2);
    public static final CompensationFactors CONSERVATIVE = ofGpg(5, 2);

    public CompensationFactors {
        double max = HardnessUnit.GPG.toBase(MAX_GPG_PER_MG);
        Guard.within(ironMgPerMg, 0, max, "ironMgPerMg");
        Guard.within(manganeseMgPerMg, 0, max, "manganeseMgPerMg");
    }

    /** Factors given in grains per US gallon per mg/L, the trade's way. */
    public static CompensationFactors ofGpg(double ironGpgPerMg, double manganeseGpgPerMg) {
        return new CompensationFactors(HardnessUnit.GPG.toBase(ironGpgPerMg), HardnessUnit.GPG.toBase(manganeseGpgPerMg));
    }
}
