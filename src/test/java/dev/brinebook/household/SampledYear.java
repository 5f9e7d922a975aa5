// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import java.time.LocalDate;
import java.util.Arrays;

/** Years of a {@link UseModel} of any length, simulated one by one into the same memory. */
public final class SampledYear implements DailyUse {

    private final Scatter scatter;
    private final double[] meanLitres;
    private final double[] useLitres;

    /**
     * Years that all start on the same date.
     *
     * @param size days of each, 1 to {@link Days#MAX_DAYS}
     * @param seed the seed of all of them
     */
    public SampledYear(UseModel model, LocalDate firstDate, int size, long seed) {
        Guard.within(firstDate.getYear(), Days.MIN_YEAR, Days.MAX_YEAR, "firstDate's year");
        scatter = new Scatter(model.cv(), model.change(), model.occupancy(), firstDate, Guard.within(size, 1, Days.MAX_DAYS,
                "number of days"), seed);
        meanLitres = model.occupiedMeanLitres(firstDate, size);
        useLitres = new double[size];
    }

    /** Simulates the year with this number, from 0 on; it replaces the one before. */
    public SampledYear draw(long number) {
        Scatter.Year year = scatter.year(number);
        Arrays.setAll(useLitres, day -> year.useLitres(day, meanLitres[day]));
        return this;
    }

    /** A copy of the use of all days of the year simulated last. */
    public double[] litres() {
        return useLitres.clone();
    }

    @Override
    public LocalDate firstDate() {
        return scatter.firstDate();
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
