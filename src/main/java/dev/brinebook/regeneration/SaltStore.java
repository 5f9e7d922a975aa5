// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;

/**
 * The salt in the brine tank and how it is bought.
 *
 * @param capacityKilograms salt the brine tank holds
 * @param atStartKilograms salt in it on the first day
 * @param bagKilograms mass of a bag; bags are put in whole
 */
public record SaltStore(double capacityKilograms, double atStartKilograms, double bagKilograms) {

    public static final double MIN_CAPACITY_KILOGRAMS = 1;
    public static final double MAX_CAPACITY_KILOGRAMS = 10_000;
    public static final double MIN_BAG_KILOGRAMS = 1;
    public static final double MAX_BAG_KILOGRAMS = 1_000;

    /** Refuses more salt at the start than the tank holds. */
    public SaltStore {
        Guard.within(capacityKilograms, MIN_CAPACITY_KILOGRAMS, MAX_CAPACITY_KILOGRAMS, "capacityKilograms");
        Guard.within(atStartKilograms, 0, capacityKilograms, "atStartKilograms");
        Guard.within(bagKilograms, MIN_BAG_KILOGRAMS, MAX_BAG_KILOGRAMS, "bagKilograms");
    }

    /**
     * The smallest tank that can be kept going with whole bags. Filled with all the bags that fit, it lacks less than one
     * bag, and what is in it must do for one regeneration.
     * <pre>S = b + s</pre>
     * S: capacity; b: bag; s: salt of one regeneration, all in kg.
     *
     * <p>Source: mass balance.
     */
    public double leastCapacityKilograms(double saltGrams) {
        return bagKilograms + saltGrams / 1000;
    }

    /** Whether the tank can be kept going with whole bags. */
    public boolean takesWholeBags(double saltGrams) {
        return capacityKilograms >= leastCapacityKilograms(saltGrams);
    }
}
