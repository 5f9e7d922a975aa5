// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.OptionalResult;
import java.util.Optional;

/**
 * Capacity of a litre of resin between two regenerations, by the salt dose: a table of the trade, which is for one
 * ordinary water, with new or with worn resin, or the column, which is for the given water.
 *
 * <p>All doses are those of {@link CapacityTable#minSaltDoseGramsPerLitre} to
 * {@link CapacityTable#maxSaltDoseGramsPerLitre}.
 */
public sealed interface CapacityModel permits CapacityTable, WornTable, ColumnCapacity {

    /** Key of the source of the capacities. */
    String sourceKey();

    /**
     * Capacity for a dose of a salt, grams as CaCO₃ per litre of resin.
     *
     * @throws IllegalArgumentException when {@link #isKnownAt} denies it
     */
    double capacityGramsPerLitre(Salt salt, double saltDoseGramsPerLitre);

    /** Whether there is a capacity to state at a dose. */
    boolean isKnownAt(Salt salt, double saltDoseGramsPerLitre);

    /**
     * Capacity for a dose, 0 where there is none to state. That can be so above a dose that holds the end point too: in a
     * narrow range of doses the cycles of a column may alternate for good.
     */
    default double capacityOrNoneGramsPerLitre(Salt salt, double saltDoseGramsPerLitre) {
        return isKnownAt(salt, saltDoseGramsPerLitre) ? capacityGramsPerLitre(salt, saltDoseGramsPerLitre) : 0;
    }

    /** Whether the softened water keeps below the end point of hardness at a dose; a table takes it for granted. */
    boolean holdsEndPoint(Salt salt, double saltDoseGramsPerLitre);

    /** The least dose that holds the end point, or the reason why none does. */
    OptionalResult leastSaltDoseGramsPerLitre(Salt salt);

    /** The dose that holds the end point and has a capacity, or the reason why none does. */
    OptionalResult saltDoseGramsPerLitre(Salt salt, double capacityGramsPerLitre);

    /** The cycle behind a dose, with what it leaks; none in a table. */
    Optional<ColumnResult.Settled> cycle(Salt salt, double saltDoseGramsPerLitre);

    /** The same for resin as delivered, that has all of its sites. */
    CapacityModel ofNewResin();

    /** Hardness removed per salt used, grams as CaCO₃ per gram. */
    default double saltEfficiencyGramsPerGram(Salt salt, double saltDoseGramsPerLitre) {
        return capacityGramsPerLitre(salt, saltDoseGramsPerLitre) / saltDoseGramsPerLitre;
    }
}
