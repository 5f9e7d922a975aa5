// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.savings;

import dev.brinebook.guard.Guard;
import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Occupancy;
import dev.brinebook.household.UseChange;

/**
 * How far the use of a period may lie from what the household uses in the long run.
 *
 * @param cv scatter of an occupied day: standard deviation over mean
 * @param longRunVariance variance of the mean of many days over the squared mean, times the number of days
 * @param occupiedShare share of the days with somebody at home
 * @param levelSpread standard deviation of the logarithm of the level from one period to another
 */
public record UseScatter(double cv, double longRunVariance, double occupiedShare, double levelSpread) {

    public UseScatter {
        Guard.within(cv, DayVariation.MIN_CV, 2 * DayVariation.MAX_CV, "cv");
        Guard.notNegative(longRunVariance, "longRunVariance");
        Guard.within(occupiedShare, Occupancy.Chain.MIN_PROBABILITY / 2, 1, "occupiedShare");
        Guard.within(levelSpread, 0, UseChange.MAX_LEVEL_SPREAD, "levelSpread");
    }

    /**
     * The scatter of days with absences.
     *
     * <pre>v = [p (1 − p) (1 + ρ) / (1 − ρ) + p CV² f²] / p²,   p = r / (l + r),   ρ = 1 − l − r</pre>
     *
     * <p>p share of occupied days; l leave and r return, a day; CV scatter of an occupied day; f {@link UseChange#scatterOfSums}.
     * Validity: many days; l + r above 0.
     * Source: variance of the mean of a chain of two states, and of independent days; [DAIAD] for usual values.
     * Deviation: where the scatter of the home is itself uncertain, CV² is its mean, CV² exp(2 c²) with c {@code scatterSpread}.
     */
    public static UseScatter of(double cv, Occupancy occupancy, UseChange change) {
        double c = change.scatterSpread();
        double meanCv = cv * StrictMath.exp(c * c);
        double f = change.scatterOfSums();
        double of = meanCv * meanCv * f * f;
        return occupancy.longRun().map(chain -> {
            double p = chain.returnPerDay() / (chain.leavePerDay() + chain.returnPerDay());
            double kept = 1 - chain.leavePerDay() - chain.returnPerDay();
            double variance = (p * (1 - p) * (1 + kept) / (1 - kept) + p * of) / (p * p);
            return new UseScatter(meanCv, variance, p, change.levelSpread());
        }).orElseGet(() -> new UseScatter(meanCv, of, 1, change.levelSpread()));
    }

    /**
     * Litres by which a meter that waits for the night overshoots, over the use of a mean day.
     *
     * <pre>o = (1 + CV²) / (2 p)</pre>
     *
     * <p>CV scatter of an occupied day; p share of occupied days.
     * Validity: several days between two regenerations.
     * Source: mean excess over a level of a renewal process, E X² / (2 E X), from memory.
     * Deviation: weekdays that are not alike are left out.
     */
    public double overshoot() {
        return (1 + cv * cv) / (2 * occupiedShare);
    }

    /**
     * Scatter of these litres, over the use of a mean day.
     *
     * <pre>σ² = [(1 + CV²) (1 + 2 CV²) / 3 − ((1 + CV²) / 2)²] / p²</pre>
     *
     * <p>CV scatter of an occupied day; p share of occupied days. Validity: as {@link #overshoot}; gamma days.
     * Source: excess over a level of a renewal process, E X³ / (3 E X) − (E X² / (2 E X))², from memory.
     * Deviation: as {@link #overshoot}.
     */
    public double overshootScatter() {
        double square = cv * cv;
        double mean = (1 + square) / 2;
        return Math.sqrt((1 + square) * (1 + 2 * square) / 3 - mean * mean) / occupiedShare;
    }
}
