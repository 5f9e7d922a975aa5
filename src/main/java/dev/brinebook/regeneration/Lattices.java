// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.WorkingMemory;
import java.util.Arrays;
import java.util.List;

/**
 * The lattices of all households whose days are alike but for how much they use, in units of the mean use of a day at home: few
 * households have days of their own, so that most find them in the {@link WorkingMemory} as the one before left them.
 *
 * <p>Not thread-safe, and not to be kept longer than a calculation.
 */
final class Lattices {

    /** Of a weekday's share, so that the same week in litres of another household is the same shape. */
    private static final double SHARES_ROUNDED_TO = 1e-12;
    /** Of what is kept for days of one kind. */
    private static final int USUAL_BYTES = 300_000;
    /** The same for one override. */
    private static final int USUAL_BYTES_OF_METERS = 450_000;
    private static final int WORKDAY_AND_WEEKEND = 2;
    private static final long MOST_BYTES = 16_000_000;
    private static final long MOST_BYTES_OF_UNEVEN_WEEKS = 36_000_000;
    private static final long MOST_BYTES_WITH_ABSENCES = MOST_BYTES + HomeStates.SCATTERS.count() * RenewalRows.MOST_BYTES;

    /**
     * Everything that the lattices depend on.
     *
     * @param weekdays mean use of each weekday at home over that of them all, Monday first
     * @param cv scatter of a day about its mean
     * @param leave probability that a house at home is vacant the next day; 0 where nobody ever leaves
     * @param comeBack probability that a vacant house is at home the next day
     * @param steps lattice points in a mean day
     */
    private record Shape(List<Double> weekdays, double cv, double leave, double comeBack, int steps) {

        long mostBytes() {
            return Lattices.mostBytes(weekdays, leave > 0);
        }
    }

    /** The lattice of meters with one override. */
    private record Metered(Shape shape, int overrideDays) {
    }

    private final Shape shape;
    private final double[] weekdays;
    private RenewalTable table;
    private ClockRates clockRates;

    private Lattices(Shape shape) {
        this.shape = shape;
        weekdays = shape.weekdays.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Those of a household that uses something; a number of lattice points in its mean day. */
    static Lattices of(SteadyUse use, int steps) {
        Shape shape = new Shape(weekdayShares(use.means()), use.cv(), use.leave(), use.comeBack(), steps);
        return WorkingMemory.table(shape, Lattices.class, USUAL_BYTES, shape.mostBytes(), () -> new Lattices(shape));
    }

    /** What all tables of a household may take at once: more than those of any of some hundreds of random requests did. */
    static long mostBytes(List<Double> weekdays, boolean absences) {
        return absences ? MOST_BYTES_WITH_ABSENCES
                : weekdays.stream().distinct().count() > WORKDAY_AND_WEEKEND ? MOST_BYTES_OF_UNEVEN_WEEKS : MOST_BYTES;
    }

    /** Mean use of each weekday over that of them all, the same for households that differ in litres alone. */
    static List<Double> weekdayShares(double[] means) {
        double mean = Arrays.stream(means).average().orElseThrow();
        return Arrays.stream(means).mapToObj(day -> Math.rint(day / mean / SHARES_ROUNDED_TO) * SHARES_ROUNDED_TO).toList();
    }

    /** Mean use of each weekday at home over that of them all, Monday first; not to be changed. */
    double[] weekdays() {
        return weekdays;
    }

    /** Of days that scatter by {@link LatticeDay#LEAST_CV} at least. */
    RenewalTable table() {
        if (table == null) {
            table = new RenewalTable(weekdays, shape.cv, shape.leave, shape.comeBack, shape.steps);
        }
        return table;
    }

    /** Of delayed meters with an override. */
    MeterRates meterRates(int overrideDays) {
        return WorkingMemory.table(new Metered(shape, overrideDays), MeterRates.class, USUAL_BYTES_OF_METERS, shape.mostBytes(),
                () -> new MeterRates(table().rows(), shape.cv, 1, overrideDays));
    }

    ClockRates clockRates() {
        if (clockRates == null) {
            clockRates = new ClockRates(table().rows(), shape.comeBack / (shape.leave + shape.comeBack));
        }
        return clockRates;
    }
}
