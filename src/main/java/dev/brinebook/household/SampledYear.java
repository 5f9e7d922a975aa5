// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import dev.brinebook.randomness.RandomStream;
import java.time.LocalDate;

/**
 * Years of a {@link UseModel}, simulated one by one into the same memory: any year can be simulated at any time, and comes
 * out the same. Each year has a level and a scatter of its own, within the spreads of the model's {@link UseChange}, and its consecutive
 * days are correlated accordingly.
 *
 * <pre>V(t) = q (A(t) + B(t) + B(t-1)) / a,   A gamma of shape a - 2b, B of shape b = a min(1/2, r / (1 - r)),   a = 1 / CV²</pre>
 *
 * <p>V a day over the mean of its weekday; q level of the year; r {@link UseChange#dayCorrelation}. Days stay gamma of shape a, and
 * the sum of many scatters as {@link UseChange#scatterOfSums} says, up to r = 1/3.
 * Source: gamma numbers of one scale add up to one, from memory.
 *
 * <p>Not thread-safe. Otherwise ten thousand years would be ten thousand arrays.
 */
public final class SampledYear implements DailyUse {

    /** Share of a day's shape that it can have in common with the next. */
    private static final double MOST_SHARED = 0.5;

    private final UseModel model;
    private final LocalDate firstDate;
    private final long seed;
    private final LocalDate[] dates;
    private final double[] meanLitres;
    private final double[] useLitres;

    /**
     * Years that all start on the same date.
     *
     * @param size days of each, 1 to {@link Days#MAX_DAYS}
     * @param seed the seed of all of them
     */
    public SampledYear(UseModel model, LocalDate firstDate, int size, long seed) {
        this.model = model;
        this.firstDate = firstDate;
        this.seed = seed;
        Guard.within(firstDate.getYear(), Days.MIN_YEAR, Days.MAX_YEAR, "firstDate's year");
        dates = new LocalDate[Guard.within(size, 1, Days.MAX_DAYS, "number of days")];
        meanLitres = new double[size];
        useLitres = new double[size];
        for (int i = 0; i < size; i++) {
            dates[i] = firstDate.plusDays(i);
            meanLitres[i] = model.occupiedMeanLitres(dates[i]);
        }
    }

    /** Simulates the year with this number, from 0 on; it replaces the one before. */
    public SampledYear draw(long number) {
        RandomStream stream = new RandomStream(seed, number);
        UseChange change = model.change();
        double level = logNormal(change.levelSpread(), stream) * StrictMath.exp(-change.levelSpread() * change.levelSpread() / 2);
        double cv = model.cv() * logNormal(change.scatterSpread(), stream);
        double shape = 1 / (cv * cv);
        double shared = shape * Math.min(MOST_SHARED, change.dayCorrelation() / (1 - change.dayCorrelation()));
        double before = model.cv() == 0 ? 0 : gamma(shared, stream);
        boolean occupied = model.occupancy().first(dates[0], stream);
        for (int i = 0; i < useLitres.length; i++) {
            if (i > 0) {
                occupied = model.occupancy().next(dates[i], occupied, stream);
            }
            if (model.cv() == 0) {
                useLitres[i] = occupied ? level * meanLitres[i] : 0;
            } else if (occupied) {
                double next = gamma(shared, stream);
                useLitres[i] = level * meanLitres[i] * (gamma(shape - 2 * shared, stream) + before + next) / shape;
                before = next;
            } else {
                useLitres[i] = 0;
            }
        }
        return this;
    }

    /** A copy of the use of all days of the year simulated last. */
    double[] litres() {
        return useLitres.clone();
    }

    private static double logNormal(double spread, RandomStream stream) {
        return spread == 0 ? 1 : StrictMath.exp(spread * stream.nextNormal());
    }

    private static double gamma(double shape, RandomStream stream) {
        return shape > 0 ? stream.nextGamma(shape) : 0;
    }

    @Override
    public LocalDate firstDate() {
        return firstDate;
    }

    @Override
    public int size() {
        return useLitres.length;
    }

    @Override
    public double useLitres(int index) {
        return useLitres[index];
    }
}
