package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import dev.brinebook.randomness.RandomStream;
import java.time.LocalDate;

/**
 * Years of a {@link UseModel}, drawn one after the other into the same memory: any year can be drawn at any time, and comes
 * out the same.
 *
 * <p>Used by one thread. Ten thousand draws would else be ten thousand arrays.
 */
public final class DrawnYear implements DailyUse {

    private final UseModel model;
    private final LocalDate firstDate;
    private final long seed;
    private final double shape;
    private final LocalDate[] dates;
    private final double[] meanLitres;
    private final double[] useLitres;

    /**
     * Years that all start on the same date.
     *
     * @param size days of each, 1 to {@link Days#MAX_DAYS}
     * @param seed the seed of all of them
     */
    public DrawnYear(UseModel model, LocalDate firstDate, int size, long seed) {
        this.model = model;
        this.firstDate = firstDate;
        this.seed = seed;
        Guard.within(firstDate.getYear(), Days.MIN_YEAR, Days.MAX_YEAR, "firstDate's year");
        shape = model.cv() == 0 ? Double.POSITIVE_INFINITY : 1 / (model.cv() * model.cv());
        dates = new LocalDate[Guard.within(size, 1, Days.MAX_DAYS, "number of days")];
        meanLitres = new double[size];
        useLitres = new double[size];
        for (int i = 0; i < size; i++) {
            dates[i] = firstDate.plusDays(i);
            meanLitres[i] = model.occupiedMeanLitres(dates[i]);
        }
    }

    /** Draws the year with this number, from 0 on; the one drawn before is gone. */
    public DrawnYear draw(long number) {
        RandomStream stream = new RandomStream(seed, number);
        boolean occupied = model.occupancy().first(dates[0], stream);
        for (int i = 0; i < useLitres.length; i++) {
            if (i > 0) {
                occupied = model.occupancy().next(dates[i], occupied, stream);
            }
            useLitres[i] = occupied ? meanLitres[i] * factor(stream) : 0;
        }
        return this;
    }

    /** A copy of the use of all days of the year drawn last. */
    double[] litres() {
        return useLitres.clone();
    }

    private double factor(RandomStream stream) {
        return Double.isInfinite(shape) ? 1 : stream.nextGamma(shape) / shape;
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
