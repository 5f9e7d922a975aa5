// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import dev.brinebook.guard.LastResultsCache;
import java.lang.ref.SoftReference;
import java.time.LocalDate;

/**
 * Many years of a {@link UseModel}: everything compared on them sees the same days.
 *
 * <p>What chance does to them takes a hundred times as long to draw as the days to be calculated from it, and households that scatter
 * alike have it in common: it is drawn when a year is first needed, and kept for those that come while there is memory.
 */
public final class SampledYears {

    public static final int MAX_YEARS = 2_000;

    private static final int MOST_SCATTERS = 3;
    /** Share of the heap that the years of one scatter may take. */
    private static final double SHARE_OF_HEAP = 0.02;
    /** Years of a scatter that are kept, of 3 KB each; those beyond are drawn each time. */
    private static final int MOST_KEPT = (int) Math.min(MAX_YEARS,
            SHARE_OF_HEAP * Runtime.getRuntime().maxMemory() / Double.BYTES / Days.PER_YEAR);
    private static final LastResultsCache<Scatter, Drawn> DRAWN = new LastResultsCache<>(MOST_SCATTERS, scatter -> new Drawn());

    private final LocalDate firstDate;
    private final double[] meanLitres;
    private final int count;
    private final Scatter scatter;
    private final Scatter.Year[] drawn;

    /**
     * Years that all start on the same date.
     *
     * @param count how many, 1 to {@value #MAX_YEARS}
     * @param seed the seed of all of them
     */
    public SampledYears(UseModel model, LocalDate firstDate, int count, long seed) {
        Guard.within(firstDate.getYear(), Days.MIN_YEAR, Days.MAX_YEAR, "firstDate's year");
        this.firstDate = firstDate;
        this.count = Guard.within(count, 1, MAX_YEARS, "number of years");
        meanLitres = model.occupiedMeanLitres(firstDate, Days.PER_YEAR);
        scatter = new Scatter(model.cv(), model.change(), model.occupancy(), firstDate, Days.PER_YEAR, seed);
        drawn = DRAWN.of(scatter).years();
    }

    public int count() {
        return count;
    }

    /** Days of the year with this number, from 0 on. */
    public DailyUse year(int number) {
        if (number >= count) {
            throw new IndexOutOfBoundsException(number);
        }
        // Threads that draw the same year at once draw it alike.
        Scatter.Year year = number < drawn.length ? drawn[number] : null;
        if (year == null) {
            year = scatter.year(number);
            if (number < drawn.length) {
                drawn[number] = year;
            }
        }
        return new Litres(firstDate, year, meanLitres);
    }

    /** Years of a scatter, which may be forgotten when memory is short. */
    private static final class Drawn {

        private SoftReference<Scatter.Year[]> known = new SoftReference<>(null);

        synchronized Scatter.Year[] years() {
            Scatter.Year[] years = known.get();
            if (years == null) {
                years = new Scatter.Year[MOST_KEPT];
                known = new SoftReference<>(years);
            }
            return years;
        }
    }

    private record Litres(LocalDate firstDate, Scatter.Year year, double[] meanLitres) implements DailyUse {

        @Override
        public int size() {
            return meanLitres.length;
        }

        @Override
        public double useLitres(int index) {
            return year.useLitres(index, meanLitres[index]);
        }
    }
}
