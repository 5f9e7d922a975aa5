// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.Guard;

/**
 * How far a home departs from its model: its level of use wanders, its scatter is uncertain, and days that
 * follow each other are somewhat alike.
 *
 * <pre>use of a day = q · V,   q = exp(s z) / E exp(s z),   CV of the home = CV · exp(c z')</pre>
 *
 * <p>V a day of the {@link UseModel}; s {@code levelSpread}; c {@code scatterSpread}; z, z' standard normal.
 * Source: [DAIAD] 45 metered homes: the mean of one half year against the other differs by 0.15 beyond sampling, 28-day means
 * half a year apart by 0.24; days that follow each other correlate by 0.12.
 * Deviation: the factor is scaled so that the mean use is unchanged; without that it would be 1.6 % more at a
 * spread of 0.18.
 *
 * @param levelSpread standard deviation of the logarithm of the level
 * @param scatterSpread standard deviation of the logarithm of the scatter
 * @param dayCorrelation correlation of the uses of consecutive days; it matters where several days add up, as on a clock
 */
public record UseChange(double levelSpread, double scatterSpread, double dayCorrelation) {

    public static final double MAX_LEVEL_SPREAD = 0.6;
    public static final double MAX_SCATTER_SPREAD = 0.4;
    public static final double MAX_DAY_CORRELATION = 0.6;

    /** Of a home whose use was measured. Source: [DAIAD]. */
    public static final double USUAL_LEVEL_SPREAD = 0.18;
    /** The same for sums of several days. Source: [DAIAD]. */
    private static final double LEVEL_SPREAD_OF_SUMS = 0.20;
    /** The same where the months are known. Source: [DAIAD]. */
    public static final double LEVEL_SPREAD_WITH_MONTHS = 0.16;
    /** Of homes about the estimate from the number of people alone. Source: [DAIAD]. */
    public static final double LEVEL_SPREAD_OF_PEOPLE_ALONE = 0.377;
    /** Of the scatter of homes about the usual scatter. Source: [DAIAD]. */
    public static final double USUAL_SCATTER_SPREAD = 0.237;
    /** Source: [DAIAD]. */
    public static final double USUAL_DAY_CORRELATION = 0.12;

    /** A home that stays as it is. */
    public static final UseChange NONE = new UseChange(0, 0, 0);

    public UseChange {
        Guard.within(levelSpread, 0, MAX_LEVEL_SPREAD, "levelSpread");
        Guard.within(scatterSpread, 0, MAX_SCATTER_SPREAD, "scatterSpread");
        Guard.within(dayCorrelation, 0, MAX_DAY_CORRELATION, "dayCorrelation");
    }

    /**
     * Scatter of the sum of many days over that of independent days.
     *
     * <pre>f = √((1 + ρ) / (1 − ρ))</pre>
     *
     * <p>ρ {@code dayCorrelation}.
     * Validity: many days; ρ from 0 to {@value #MAX_DAY_CORRELATION}.
     * Source: [DAIAD] for ρ; the factor is the limit for a first-order autoregressive series.
     * Deviation: none.
     */
    public double scatterOfSums() {
        return Math.sqrt((1 + dayCorrelation) / (1 - dayCorrelation));
    }

    /**
     * Level spread for sums of several days, which changes over a few weeks move as well.
     *
     * <pre>s' = s · 0.20 / 0.18</pre>
     *
     * <p>s {@code levelSpread}; 0.18 the usual spread and 0.20 that of sums.
     * Validity: as {@code levelSpread}.
     * Source: [DAIAD] clocks of 3 to 7 days kept their promise of one hard day at a spread of 0.20, meters at 0.18.
     * Deviation: none.
     */
    public double levelSpreadOfSums() {
        return levelSpread * LEVEL_SPREAD_OF_SUMS / USUAL_LEVEL_SPREAD;
    }

    /** The same home as long as its level stays as it is. */
    public UseChange withoutLevel() {
        return new UseChange(0, scatterSpread, dayCorrelation);
    }
}
