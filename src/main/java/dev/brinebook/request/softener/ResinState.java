// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.resin.Brining;
import dev.brinebook.resin.Resin;
import dev.brinebook.resin.ResinEfficiency;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterCautions;

/**
 * The resin of a softener and its brine direction, as column and table need them.
 *
 * @param resin the resin, with the sites that age has left or a test has found
 * @param direction the direction of the brine
 */
public record ResinState(Resin resin, Brining.Direction direction) {

    /** New resin, brine in the direction of service. */
    public static final ResinState NEW = new ResinState(Resin.STANDARD, Brining.Direction.CO_CURRENT);

    /** Loss on a public supply whose chlorine was not tested: the middle of what [UFC-3-240-13FN] prints. */
    static final double ASSUMED_PUBLIC_SUPPLY_LOSS_SHARE =
            (ResinEfficiency.LOW_YEARLY_LOSS_SHARE + ResinEfficiency.HIGH_YEARLY_LOSS_SHARE) / 2;

    /** What {@link #assumedYearlyLossShare} gives, in percent, in words. */
    static final String ASSUMED_YEARLY_LOSS = (int) SoftenerRequest.MIN_YEARLY_LOSS_PERCENT
            + " with a private well or without free chlorine, " + (int) SoftenerRequest.MAX_YEARLY_LOSS_PERCENT + " at "
            + (int) WaterCautions.CHLORINE_HARMS_MG_PER_L + " mg/L of free chlorine or more, in proportion between; "
            + (int) (100 * ASSUMED_PUBLIC_SUPPLY_LOSS_SHARE) + " with a public supply whose chlorine was not tested";

    /** Share of the sites of new resin that is left, for a table, which is of new resin's sites. */
    public double sitesLeft() {
        return Math.min(1, resin.totalEquivalentsPerLitre() / Resin.STANDARD.totalEquivalentsPerLitre());
    }

    /**
     * Share of the sites that a year takes, between the ends that [UFC-3-240-13FN] prints: the low end without free
     * chlorine, the high end where free chlorine is high enough to be warned of, in proportion between.
     */
    public static double assumedYearlyLossShare(WaterAnalysis water) {
        if (water.freeChlorineMgPerL().isEmpty()) {
            return water.supply() == WaterAnalysis.Supply.PRIVATE_WELL ? ResinEfficiency.LOW_YEARLY_LOSS_SHARE
                    : ASSUMED_PUBLIC_SUPPLY_LOSS_SHARE;
        }
        double exposure = Math.min(1, water.freeChlorineMgPerL().getAsDouble() / WaterCautions.CHLORINE_HARMS_MG_PER_L);
        return ResinEfficiency.LOW_YEARLY_LOSS_SHARE
                + exposure * (ResinEfficiency.HIGH_YEARLY_LOSS_SHARE - ResinEfficiency.LOW_YEARLY_LOSS_SHARE);
    }
}
