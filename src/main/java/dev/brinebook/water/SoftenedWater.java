// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water;

import dev.brinebook.caution.Caution;
import dev.brinebook.guard.Guard;
import java.util.EnumSet;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What softening adds to a water.
 *
 * @param addedSodiumMgPerL sodium added, 0 with potassium chloride
 * @param addedPotassiumMgPerL potassium added, 0 with sodium chloride
 * @param rawSodiumMgPerL sodium of the raw water, absent when not tested
 */
public record SoftenedWater(double addedSodiumMgPerL, double addedPotassiumMgPerL, OptionalDouble rawSodiumMgPerL) {

    public SoftenedWater {
        Guard.notNegative(addedSodiumMgPerL, "addedSodiumMgPerL");
        Guard.notNegative(addedPotassiumMgPerL, "addedPotassiumMgPerL");
    }

    /** The water after all its real hardness was exchanged for the ion of the salt. */
    public static SoftenedWater of(CompensatedHardness hardness, OptionalDouble rawSodiumMgPerL, boolean potassiumSalt) {
        return ofRemoved(hardness.realMgPerL(), rawSodiumMgPerL, potassiumSalt);
    }

    /** The water after {@code removedMgPerL} of its real hardness was exchanged. */
    public static SoftenedWater ofRemoved(double removedMgPerL, OptionalDouble rawSodiumMgPerL, boolean potassiumSalt) {
        return potassiumSalt
                ? new SoftenedWater(0, AddedSalt.potassiumMgPerL(removedMgPerL), rawSodiumMgPerL)
                : new SoftenedWater(AddedSalt.sodiumMgPerL(removedMgPerL), 0, rawSodiumMgPerL);
    }

    /** Sodium after softening, mg/L; the added part alone when the raw water was not tested. */
    public double totalSodiumMgPerL() {
        return rawSodiumMgPerL.orElse(0) + addedSodiumMgPerL;
    }

    /** Cautions for the people who drink it. */
    public Set<Caution> cautions() {
        Set<Caution> cautions = EnumSet.of(Caution.LEAD_COPPER_PLUMBING);
        if (totalSodiumMgPerL() > AddedSalt.SODIUM_DIET_MG_PER_L) {
            cautions.add(Caution.SODIUM_RESTRICTED_DIET);
        }
        if (totalSodiumMgPerL() > AddedSalt.SODIUM_TASTE_MG_PER_L) {
            cautions.add(Caution.SODIUM_TASTE);
        }
        if (addedPotassiumMgPerL > 0) {
            cautions.add(Caution.POTASSIUM_KIDNEY_HEART);
        }
        return cautions;
    }
}
