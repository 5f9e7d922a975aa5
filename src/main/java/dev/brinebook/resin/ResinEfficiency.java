// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.Guard;

/**
 * Share of the {@link CyclicColumn}'s equilibrium capacity that a real bed reaches, and the effect of age on it.
 *
 * <p>One number covers everything that an equilibrium does not describe: the time that ions take through film and pores, water
 * that finds channels, and the margin of whoever made the table. That one number for all doses reproduces each
 * table is why the column is trusted for other waters.
 */
public final class ResinEfficiency {

    /** Resin in use: [CP-WORKING-TABLE] within 3 % at every dose, water of 300 mg/L and 1 meq/L of sodium. */
    public static final double WORKING = 0.79;
    /** New resin: [RESIN-DATA-SHEET] within 2 % at every dose, water of 500 mg/L and 1 meq/L of sodium. */
    public static final double NEW_RESIN = 0.90;
    public static final double MIN_EFFICIENCY = 0.3;
    public static final double MAX_EFFICIENCY = 1;

    /** Low end of what chlorine and other oxidants take of the sites in a year. Source: [UFC-3-240-13FN]. */
    public static final double LOW_YEARLY_LOSS_SHARE = 0.01;
    /** High end of the same. Source: [UFC-3-240-13FN]. */
    public static final double HIGH_YEARLY_LOSS_SHARE = 0.05;
    public static final double MAX_YEARS = 25;

    private ResinEfficiency() {
    }

    /**
     * Capacity of a real bed.
     *
     * <pre>c = η · q_c · M(CaCO₃) / 2</pre>
     *
     * <p>c grams as CaCO₃ per litre of resin; η efficiency; q_c capacity of the cyclic column, eq/L.
     * Validity: η from 0.3 to 1.
     * Source: [CP-WORKING-TABLE] and [RESIN-DATA-SHEET], to which η is fitted.
     * Deviation: η is taken as the same for every water, dose and direction; both tables are of one water each.
     */
    public static double capacityGramsPerLitre(ColumnResult.Settled column, double efficiency) {
        return Guard.within(efficiency, MIN_EFFICIENCY, MAX_EFFICIENCY, "efficiency") * column.capacityGramsPerLitre();
    }

    /**
     * Sites that age leaves.
     *
     * <pre>f = (1 − l)^t</pre>
     *
     * <p>f share of the sites of new resin; l share lost in a year; t years.
     * Validity: l from 0.01 (no chlorine) to 0.05 (chlorinated water); t up to 25 years.
     * Source: [UFC-3-240-13FN] 1 to 5 % a year.
     * Deviation: the source gives a rate only; a loss in proportion to what is left, rather than to the new resin, is
     * ours. After ten years at 3 % it leaves 0.737 against 0.70.
     */
    public static double remainingShare(double years, double yearlyLossShare) {
        Guard.within(years, 0, MAX_YEARS, "years");
        Guard.within(yearlyLossShare, LOW_YEARLY_LOSS_SHARE, HIGH_YEARLY_LOSS_SHARE, "yearlyLossShare");
        return StrictMath.pow(1 - yearlyLossShare, years);
    }
}
