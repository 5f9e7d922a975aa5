// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.Guard;
import java.util.Objects;

/**
 * How a bed is regenerated: the brine, the way it takes, and the feed water that rinses it out.
 *
 * <p>The slow rinse follows the brine in its direction, the fast rinse runs as service does.
 *
 * @param salt salt of the brine
 * @param saltDoseGramsPerLitre salt per litre of resin
 * @param brineEquivalentsPerLitre strength of the brine as it meets the resin
 * @param direction the way through the bed
 * @param slowRinseBedVolumes feed water in litres per litre of resin
 * @param fastRinseBedVolumes feed water in litres per litre of resin
 */
public record Brining(Salt salt, double saltDoseGramsPerLitre, double brineEquivalentsPerLitre, Direction direction,
        double slowRinseBedVolumes, double fastRinseBedVolumes) {

    public static final double MIN_BRINE_EQUIVALENTS_PER_LITRE = 0.3;
    public static final double MAX_BRINE_EQUIVALENTS_PER_LITRE = 5.5;
    /** As much as the voids of the loosest bed hold, so that no brine is left in the pores. */
    public static final double MIN_SLOW_RINSE_BED_VOLUMES = ResinBead.MAX_VOID_SHARE;
    public static final double MAX_RINSE_BED_VOLUMES = 20;

    /** Strength of the brine behind the injector, by weight. Source: [CP-CYCLE] about 10 %. */
    public static final double DILUTED_SALT_SHARE = 0.10;
    /** Low end of [UFC-3-240-13FN], 7.5 gal/ft³ of slow rinse. */
    public static final double SLOW_RINSE_BED_VOLUMES = 1;
    /** Low end of 3 to 5; [UFC-3-240-13FN] has 4.7 to 13 for plants, too much for a household. */
    public static final double ASSUMED_FAST_RINSE_BED_VOLUMES = 3;

    /** The way of the brine through the bed. */
    public enum Direction {
        /** As the service flows: what brine drives off the top is driven through the bottom, which keeps part of it. */
        CO_CURRENT,
        /** Against the service: the end that the water leaves by is the cleanest. */
        COUNTER_CURRENT
    }

    public Brining {
        Objects.requireNonNull(salt, "salt");
        Objects.requireNonNull(direction, "direction");
        Guard.within(saltDoseGramsPerLitre, CapacityTable.minSaltDoseGramsPerLitre(salt),
                CapacityTable.maxSaltDoseGramsPerLitre(salt), "saltDoseGramsPerLitre");
        Guard.within(brineEquivalentsPerLitre, MIN_BRINE_EQUIVALENTS_PER_LITRE, MAX_BRINE_EQUIVALENTS_PER_LITRE,
                "brineEquivalentsPerLitre");
        Guard.within(slowRinseBedVolumes, MIN_SLOW_RINSE_BED_VOLUMES, MAX_RINSE_BED_VOLUMES, "slowRinseBedVolumes");
        Guard.within(fastRinseBedVolumes, 0, MAX_RINSE_BED_VOLUMES, "fastRinseBedVolumes");
    }

    /** An ordinary regeneration: 10 % brine, one bed volume of slow rinse, three of fast rinse. */
    public static Brining of(Salt salt, double saltDoseGramsPerLitre, Direction direction) {
        return new Brining(salt, saltDoseGramsPerLitre, dilutedEquivalentsPerLitre(salt), direction,
                SLOW_RINSE_BED_VOLUMES, ASSUMED_FAST_RINSE_BED_VOLUMES);
    }

    /**
     * Equivalents in a litre of brine as it comes from the injector.
     *
     * <pre>c = w ρ / M</pre>
     *
     * <p>c eq/L; w {@link #DILUTED_SALT_SHARE}; ρ density of that brine at 20 °C, g/L; M molar mass of the salt, g/mol.
     * Validity: 10 % by weight.
     * Source: [PORADNIK] 1070.7 g/L for sodium chloride, [CRC-KCL] 1063.3 g/L for potassium chloride.
     * Deviation: none.
     */
    static double dilutedEquivalentsPerLitre(Salt salt) {
        double densityGramsPerLitre = switch (salt) {
            case SODIUM_CHLORIDE -> 1070.7;
            case POTASSIUM_CHLORIDE -> 1063.3;
        };
        return DILUTED_SALT_SHARE * densityGramsPerLitre / salt.molarMassGramsPerMole();
    }

    /** Equivalents of salt per litre of resin. */
    public double doseEquivalentsPerLitre() {
        return saltDoseGramsPerLitre / salt.molarMassGramsPerMole();
    }

    /** Brine in litres per litre of resin. */
    public double brineBedVolumes() {
        return doseEquivalentsPerLitre() / brineEquivalentsPerLitre;
    }
}
