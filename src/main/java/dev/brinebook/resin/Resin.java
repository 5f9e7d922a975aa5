// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.Guard;
import java.util.Objects;

/**
 * Cation resin as the equilibrium-stage column sees it: sites, voids, preferences, and how well the water is led past.
 *
 * @param totalEquivalentsPerLitre exchange sites of a litre of settled resin
 * @param voidShare volume between the beads, as a share of the bed
 * @param stages equal stages that the bed behaves like: the more, the sharper its front
 * @param selectivity how firmly it holds each ion
 */
public record Resin(double totalEquivalentsPerLitre, double voidShare, int stages, Selectivity selectivity) {

    /** A quarter of the weakest resin sold new: what age may leave. */
    public static final double MIN_TOTAL_EQUIVALENTS_PER_LITRE = 0.2;
    /** The weakest resin sold new. */
    public static final double MIN_NEW_EQUIVALENTS_PER_LITRE = 4 * MIN_TOTAL_EQUIVALENTS_PER_LITRE;
    public static final double MAX_TOTAL_EQUIVALENTS_PER_LITRE = 3;
    public static final int MIN_STAGES = 1;
    public static final int MAX_STAGES = 100;
    /**
     * Stages of a household bed: no source was found for them. With 6 one {@link ResinEfficiency} for all doses
     * reproduces either capacity table best, within 2.6 % and 1.2 %; with 10 within 3.2 % and 1.8 %, with 20 within 4.6 %
     * and 3.2 %. Going from 6 to 12 raises the capacity by less than 10 %, most at the lowest dose.
     */
    public static final int ASSUMED_STAGES = 6;

    /** Exchange sites of new gel resin. Source: [WCP-2011] and [WT-2014]. */
    public static final double STANDARD_EQUIVALENTS_PER_LITRE = 2.0;
    /** New gel resin. */
    public static final Resin STANDARD = new Resin(STANDARD_EQUIVALENTS_PER_LITRE, ResinBead.DEFAULT.voidShare(), ASSUMED_STAGES,
            Selectivity.GEL_8_PERCENT);

    public Resin {
        Guard.within(totalEquivalentsPerLitre, MIN_TOTAL_EQUIVALENTS_PER_LITRE, MAX_TOTAL_EQUIVALENTS_PER_LITRE,
                "totalEquivalentsPerLitre");
        Guard.within(voidShare, ResinBead.MIN_VOID_SHARE, ResinBead.MAX_VOID_SHARE, "voidShare");
        Guard.within(stages, MIN_STAGES, MAX_STAGES, "stages");
        Objects.requireNonNull(selectivity, "selectivity");
    }

    /** This resin with a share of its sites left, by {@link ResinEfficiency#remainingShare}. */
    public Resin withSitesLeft(double share) {
        return new Resin(totalEquivalentsPerLitre * Guard.within(share, 0, 1, "share"), voidShare, stages, selectivity);
    }

    /** This resin as another number of stages. */
    public Resin withStages(int count) {
        return new Resin(totalEquivalentsPerLitre, voidShare, count, selectivity);
    }
}
