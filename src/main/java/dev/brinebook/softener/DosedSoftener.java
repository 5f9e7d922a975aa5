// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.regeneration.Regeneration;
import java.util.Map;

/**
 * A softener at one salt dose: what a regeneration restores and what it takes.
 *
 * @param softener the softener
 * @param saltDoseGramsPerLitre the dose, within the range of its capacity table
 * @param cycle the regeneration as it runs
 */
public record DosedSoftener(Softener softener, double saltDoseGramsPerLitre, Cycle cycle) {

    /** The softener with the cycle calculated for its dose. */
    public static DosedSoftener designed(Softener softener, double saltDoseGramsPerLitre, double temperatureCelsius) {
        return new DosedSoftener(softener, saltDoseGramsPerLitre,
                softener.cycleDesign(saltDoseGramsPerLitre, temperatureCelsius).cycle());
    }

    /** The softener with the minutes that are set on its controller, as far as known. */
    public DosedSoftener withMinutes(Map<CycleStep.Kind, Double> minutes) {
        return new DosedSoftener(softener, saltDoseGramsPerLitre, cycle.retimed(minutes));
    }

    /** Capacity that a regeneration restores, grams as CaCO3. */
    public double capacityGrams() {
        return softener.capacityGrams(saltDoseGramsPerLitre);
    }

    /** Salt of one regeneration, grams. */
    public double saltGrams() {
        return softener.saltGrams(saltDoseGramsPerLitre);
    }

    /** Hardness that the salt removes when all of the capacity is used, grams as CaCO3 per gram. */
    public double saltEfficiencyGramsPerGram() {
        return capacityGrams() / saltGrams();
    }

    /** What one regeneration restores and uses, for a simulation. */
    public Regeneration regeneration() {
        return cycle.regeneration(capacityGrams(), saltGrams());
    }
}
