package dev.brinebook.resin;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.AtomicWeights;
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

    /**
     * Equivalents in a litre of 10 % brine: 100 g/kg · 1.0707 kg/L / 58.44 g. Source: [CP-CYCLE] for about 10 %,
     * [PORADNIK] for its density.
     */
    public static final double DILUTED_BRINE_EQUIVALENTS_PER_LITRE =
            100 * 1.0707 / AtomicWeights.SODIUM_CHLORIDE;
    /** Between the 7.5 and 22.5 gal/ft³, one to three bed volumes, of [UFC-3-240-13FN]. */
    public static final double DEFAULT_SLOW_RINSE_BED_VOLUMES = 2;
    /** A household's fast rinse, less than the 4.7 that [UFC-3-240-13FN] asks of plants. */
    public static final double ASSUMED_FAST_RINSE_BED_VOLUMES = 2;

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

    /** An ordinary regeneration with 10 % brine and two bed volumes of either rinse. */
    public static Brining of(Salt salt, double saltDoseGramsPerLitre, Direction direction) {
        return new Brining(salt, saltDoseGramsPerLitre, DILUTED_BRINE_EQUIVALENTS_PER_LITRE, direction,
                DEFAULT_SLOW_RINSE_BED_VOLUMES, ASSUMED_FAST_RINSE_BED_VOLUMES);
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
