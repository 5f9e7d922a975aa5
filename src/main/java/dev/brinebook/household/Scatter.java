// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.randomness.RandomStream;
import dev.brinebook.randomness.RandomStream.GammaShape;
import java.time.LocalDate;

/**
 * What chance does to the days of a household, whatever it uses. Years of it are drawn by their number: any can be drawn at any time,
 * and comes out the same. Each has a level and a scatter of its own, within the spreads of {@link UseChange}, and its consecutive
 * days are correlated accordingly.
 *
 * <pre>V(t) = q (A(t) + B(t) + B(t-1)) / a,   A gamma of shape a - 2b, B of shape b = a min(1/2, r / (1 - r)),   a = 1 / CV²</pre>
 *
 * <p>V a day over the mean of its weekday; q level of the year; r {@link UseChange#dayCorrelation}. Days stay gamma of shape a, and
 * the sum of many scatters as {@link UseChange#scatterOfSums} says, up to r = 1/3.
 * Source: gamma numbers of one scale add up to one, from memory.
 *
 * @param cv scatter of a day about its mean
 * @param change how far years differ, and days are alike
 * @param occupancy on which days somebody is at home
 * @param firstDate of every year
 * @param size days of a year
 * @param seed the seed of all of them
 */
record Scatter(double cv, UseChange change, Occupancy occupancy, LocalDate firstDate, int size, long seed) {

    /** Share of a day's shape that it can have in common with the next. */
    private static final double MOST_SHARED = 0.5;

    /**
     * One year.
     *
     * @param level use of the year over the mean
     * @param shape a of the formula
     * @param parts A(t) + B(t) + B(t-1) of each day; 0 with nobody at home
     */
    record Year(double level, double shape, double[] parts) {

        /** Use of a day, by its mean with somebody at home. */
        double useLitres(int day, double meanLitres) {
            return level * meanLitres * parts[day] / shape;
        }
    }

    /** The year with this number, from 0 on. */
    Year year(long number) {
        RandomStream stream = new RandomStream(seed, number);
        double level = logNormal(change.levelSpread(), stream) * StrictMath.exp(-change.levelSpread() * change.levelSpread() / 2);
        double ownCv = cv * logNormal(change.scatterSpread(), stream);
        double[] parts = new double[size];
        if (cv == 0) {
            draw(parts, stream, null, null);
            return new Year(level, 1, parts);
        }
        double shape = 1 / (ownCv * ownCv);
        double shared = shape * Math.min(MOST_SHARED, change.dayCorrelation() / (1 - change.dayCorrelation()));
        draw(parts, stream, shape > 2 * shared ? new GammaShape(shape - 2 * shared) : null, shared > 0 ? new GammaShape(shared) : null);
        return new Year(level, shape, parts);
    }

    private void draw(double[] parts, RandomStream stream, GammaShape own, GammaShape shared) {
        double before = gamma(shared, stream);
        boolean occupied = occupancy.first(firstDate, stream);
        for (int i = 0; i < size; i++) {
            if (i > 0) {
                occupied = occupancy.next(firstDate.plusDays(i), occupied, stream);
            }
            if (occupied && cv == 0) {
                parts[i] = 1;
            } else if (occupied) {
                double next = gamma(shared, stream);
                parts[i] = gamma(own, stream) + before + next;
                before = next;
            }
        }
    }

    private static double logNormal(double spread, RandomStream stream) {
        return spread == 0 ? 1 : StrictMath.exp(spread * stream.nextNormal());
    }

    private static double gamma(GammaShape shape, RandomStream stream) {
        return shape == null ? 0 : stream.nextGamma(shape);
    }
}
