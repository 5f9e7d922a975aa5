// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.WorkingMemory;
import dev.brinebook.household.Days;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.function.DoubleFunction;

/**
 * Hard days and litres under a clock with a fixed interval in a home as it changes, the mean over all states that it may have: on a
 * lattice of beds, each {@value #STEP_DAYS} mean days more, and interpolated between. Each point is the sum over the states when it is
 * first needed.
 *
 * <p>In mean days of the home, as {@link HomeRates}.
 * Validity: beds of {@value #LEAST_BED_DAYS} mean days or more, where each state can be read from its own lattice, {@link ClockRates}.
 * Deviation: cubics through four points, of the logarithm: hard days within 0.2 % of the sum over the states. Not thread-safe, and not to
 * be kept longer than a calculation.
 */
final class HomeClockRates {

    /** Smaller beds are summed up by themselves. */
    static final double LEAST_BED_DAYS = 1;
    private static final double STEP_DAYS = 0.25;
    /** A bed that lasts for so many intervals and days more is never exhausted; a larger one is read as this. */
    private static final double MOST_INTERVALS = 8;
    private static final double MORE_DAYS = 30;
    private static final int USUAL_BYTES = 2_000;

    private record Clock(HomeRates.Shape shape, int everyDays) {
    }

    private final int everyDays;
    /** By lattice point, the logarithms of hard days and litres. */
    private final Map<Integer, double[]> logs = new HashMap<>();

    private HomeClockRates(int everyDays) {
        this.everyDays = everyDays;
    }

    static HomeClockRates of(HomeRates.Shape shape, int everyDays) {
        return WorkingMemory.table(new Clock(shape, everyDays), HomeClockRates.class, USUAL_BYTES, shape.mostBytes(),
                () -> new HomeClockRates(everyDays));
    }

    /**
     * {@link SteadyRun#SUMS} sums of a year, with hard litres in mean days.
     *
     * @param states the same of a bed in mean days, summed over the states
     */
    double[] year(double bedDays, DoubleFunction<double[]> states) {
        double place = Math.min(MOST_INTERVALS * everyDays + MORE_DAYS, bedDays) / STEP_DAYS;
        int first = (int) place - 1;
        Cubic between = Cubic.at(place - first);
        double[][] logs = new double[Cubic.POINTS][];
        Arrays.setAll(logs, point -> logs(first + point, states));
        double days = between.sum(0, point -> logs[point][0]);
        double litres = between.sum(0, point -> logs[point][1]);
        return new double[] {(double) Days.PER_YEAR / everyDays, 0, HomeRates.fromLog(days), HomeRates.fromLog(litres), 0};
    }

    private double[] logs(int point, DoubleFunction<double[]> states) {
        return logs.computeIfAbsent(point, beds -> {
            double[] year = states.apply(beds * STEP_DAYS);
            return new double[] {HomeRates.log(year[2]), HomeRates.log(year[3])};
        });
    }
}
