// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import dev.brinebook.household.Days;
import java.util.Objects;

/**
 * What all policies on trial share: the days, the water and the softener.
 *
 * @param days use of each day
 * @param hardnessMilligramsPerLitre compensated hardness as CaCO3; 0 for a water that loads nothing
 * @param regeneration what each regeneration restores and uses
 * @param leftAtStartShare share of the capacity, and of the meter's count, left before the first day, 0 to 1; the night
 *     before is taken as the last regeneration for clocks and overrides
 */
public record SimulationInput(Days days, double hardnessMilligramsPerLitre, Regeneration regeneration, double leftAtStartShare) {

    /** Refuses a share out of range. */
    public SimulationInput {
        Objects.requireNonNull(days, "days");
        Guard.notNegative(hardnessMilligramsPerLitre, "hardnessMilligramsPerLitre");
        Objects.requireNonNull(regeneration, "regeneration");
        Guard.within(leftAtStartShare, 0.0, 1.0, "leftAtStartShare");
    }

    /** A trial that starts just regenerated. */
    public SimulationInput(Days days, double hardnessMilligramsPerLitre, Regeneration regeneration) {
        this(days, hardnessMilligramsPerLitre, regeneration, 1);
    }

    /** Capacity left before the first day. */
    public double startGrams() {
        return leftAtStartShare * regeneration.capacityGrams();
    }
}
