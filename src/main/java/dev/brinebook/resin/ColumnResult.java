// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.NoResultReason;

/** Result of the cyclic column: a cycle that repeats itself, or the reason why there is none. */
public sealed interface ColumnResult {

    /**
     * One service run and its regeneration, as each follows the one before for good.
     *
     * @param capacityEquivalentsPerLitre hardness taken from the service water, per litre of resin
     * @param serviceBedVolumes service water to the end point, litres per litre of resin
     * @param startLeakageMgPerL hardness of the first water after the rinse, as CaCO₃
     * @param meanLeakageMgPerL hardness of all the softened water mixed, as CaCO₃
     * @param endLeakageMgPerL hardness of the last water, which is the end point, as CaCO₃
     * @param saltUsedShare equivalents of capacity per equivalent of salt
     * @param chargeResidualShare what the equivalents in, out and held fail to balance by, per those of the brine
     * @param cycles cycles calculated from a fresh bed until two agreed
     */
    record Settled(double capacityEquivalentsPerLitre, double serviceBedVolumes, double startLeakageMgPerL,
            double meanLeakageMgPerL, double endLeakageMgPerL, double saltUsedShare, double chargeResidualShare,
            int cycles) implements ColumnResult {

        /** Capacity at equilibrium as grams of CaCO₃ per litre of resin; see {@link ResinEfficiency} for a real bed. */
        public double capacityGramsPerLitre() {
            return TotalCapacity.gramsPerLitre(capacityEquivalentsPerLitre);
        }
    }

    /**
     * No such cycle.
     *
     * @param reason why
     */
    record NotSettled(NoResultReason reason) implements ColumnResult {
    }
}
