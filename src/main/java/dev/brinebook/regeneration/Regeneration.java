// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;

/**
 * What one regeneration restores and uses.
 *
 * @param capacityGrams hardness the bed can take up afterwards, as CaCO3
 * @param saltGrams salt dissolved for it
 * @param waterLitres water sent to the drain
 * @param minutes from its start until softened water runs again
 */
public record Regeneration(double capacityGrams, double saltGrams, double waterLitres, double minutes) {

    /** Shorter than any cycle with a brine draw; bounds how many can fall on one day. */
    public static final double MIN_MINUTES = 20;
    public static final double MAX_MINUTES = 1440;
    public static final double MINUTES_PER_DAY = 1440;

    /** Refuses a regeneration that restores nothing. */
    public Regeneration {
        Guard.positive(capacityGrams, "capacityGrams");
        Guard.notNegative(saltGrams, "saltGrams");
        Guard.notNegative(waterLitres, "waterLitres");
        Guard.within(minutes, MIN_MINUTES, MAX_MINUTES, "minutes");
    }

    /**
     * The meter volume at which the meter and the bed run out together.
     * <pre>V = 1000 C / H</pre>
     * V: litres; C: capacity in grams as CaCO3; H: hardness in mg/L as CaCO3, above 0; 1000: mg per g.
     *
     * <p>Source: the units alone.
     */
    public double meterVolumeLitres(double hardnessMilligramsPerLitre) {
        return 1000 * capacityGrams / Guard.positive(hardnessMilligramsPerLitre, "hardnessMilligramsPerLitre");
    }
}
