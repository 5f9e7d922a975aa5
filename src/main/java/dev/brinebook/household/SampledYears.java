// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import java.time.LocalDate;

/**
 * Many years of a {@link UseModel}, each simulated when first needed and then kept: everything compared on them sees the same
 * days, and drawing takes longer than trying.
 *
 * <p>Not thread-safe. A year takes 3 kB. A year that is needed once need not be kept: see {@link SampledYear}.
 */
public final class SampledYears {

    public static final int MAX_YEARS = 2_000;

    private final SampledYear drawn;
    private final Kept[] years;

    /**
     * Years that all start on the same date.
     *
     * @param count how many, 1 to {@value #MAX_YEARS}
     * @param seed the seed of all of them
     */
    public SampledYears(UseModel model, LocalDate firstDate, int count, long seed) {
        drawn = new SampledYear(model, firstDate, Days.PER_YEAR, seed);
        years = new Kept[Guard.within(count, 1, MAX_YEARS, "number of years")];
    }

    public int count() {
        return years.length;
    }

    /** Days of the year with this number, from 0 on. */
    public DailyUse year(int number) {
        if (years[number] == null) {
            years[number] = new Kept(drawn.firstDate(), drawn.draw(number).litres());
        }
        return years[number];
    }

    private record Kept(LocalDate firstDate, double[] litres) implements DailyUse {

        @Override
        public int size() {
            return litres.length;
        }

        @Override
        public double useLitres(int index) {
            return litres[index];
        }
    }
}
