// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import java.util.ArrayList;
import java.util.List;

/**
 * What comes of the cycles of a rule, by the state in which they start: the weekday of the first day, and whether somebody was
 * at home on the day before.
 *
 * <p>States count weekdays first, those after a day at home before those after a vacant one.
 */
final class Cycles {

    /** Share of the chain's steps taken to a weekday at random, so that cycles of whole weeks have a long run too. */
    private static final double MIXING = 1e-9;

    private final int weekdays;
    private final int states;
    private final double[] nights;
    private final double[] hardDays;
    private final double[] hardLitres;
    private final double[] overrides;
    private final double[][] next;
    private final int[] lengths;
    private final List<List<Night>> ends;

    /**
     * One night of a cycle.
     *
     * @param hardDay chance that the cycle lasts to this day, and that the bed is exhausted on it
     * @param endAfterHardDay chance that the cycle ends with this night and that the bed was exhausted on the day, where a cycle
     *     has no more than one such day
     * @param endAtHome chance that it ends with this night, somebody having been at home and the bed having lasted
     * @param endVacant the same, nobody having been at home
     */
    record Night(double hardDay, double endAfterHardDay, double endAtHome, double endVacant) {
    }

    /**
     * Room for the cycles.
     *
     * @param weekdays 7, or 1 where all are alike
     * @param occupancies 2 where there are absences, else 1
     * @param nightByNight whether each night is kept
     */
    Cycles(int weekdays, int occupancies, boolean nightByNight) {
        this.weekdays = weekdays;
        states = weekdays * occupancies;
        nights = new double[states];
        hardDays = new double[states];
        hardLitres = new double[states];
        overrides = new double[states];
        next = new double[states][states];
        lengths = new int[states];
        ends = new ArrayList<>();
        for (int state = 0; nightByNight && state < states; state++) {
            ends.add(new ArrayList<>());
        }
    }

    /** Adds the next night of the cycles that start in a state, as {@link Night} has it. */
    void add(int state, double waitedBefore, double litres, double overridden, double hardDay, double endAfterHardDay,
            double endAtHome, double endVacant) {
        nights[state] += waitedBefore;
        hardDays[state] += hardDay;
        hardLitres[state] += litres;
        overrides[state] += overridden;
        lengths[state]++;
        if (!ends.isEmpty()) {
            ends.get(state).add(new Night(hardDay, endAfterHardDay, endAtHome, endVacant));
        }
        int weekday = (state % weekdays + lengths[state]) % weekdays;
        next[state][weekday] += endAfterHardDay + endAtHome;
        if (states > weekdays) {
            next[state][weekdays + weekday] += endVacant;
        }
    }

    /** Adds expected nights of the cycles that start in a state. */
    void addNights(int state, double expected) {
        nights[state] += expected;
    }

    /** Adds what all days on a weekday come to, in the cycles that start in a state. */
    void addDays(int state, int weekday, double hard, double litres, double ended) {
        hardDays[state] += hard;
        hardLitres[state] += litres;
        next[state][(weekday + 1) % weekdays] += ended;
    }

    int weekdays() {
        return weekdays;
    }

    int states() {
        return states;
    }

    List<Night> nights(int state) {
        return ends.get(state);
    }

    /** Means of a day in the long run. */
    Rates rates() {
        return rates(shares());
    }

    /** The same by how often a cycle starts in each state. */
    Rates rates(double[] shares) {
        double meanNights = 0;
        double hard = 0;
        double litres = 0;
        double overridden = 0;
        double ended = 0;
        for (int state = 0; state < states; state++) {
            meanNights += shares[state] * nights[state];
            hard += shares[state] * hardDays[state];
            litres += shares[state] * hardLitres[state];
            overridden += shares[state] * overrides[state];
            for (double chance : next[state]) {
                ended += shares[state] * chance;
            }
        }
        return new Rates(1 / meanNights, Math.max(0, hard / meanNights), Math.max(0, litres / meanNights),
                overridden / meanNights, ended);
    }

    /**
     * Means of a day.
     *
     * @param ended chance that a cycle ends at all: 1, but for what the calculation leaves out
     */
    record Rates(double regenerations, double hardDays, double hardLitres, double overrides, double ended) {
    }

    /** How often a cycle starts in each state: the shares that one cycle's end leaves as they are. */
    double[] shares() {
        double[][] system = new double[states][states + 1];
        for (int to = 0; to < states; to++) {
            for (int from = 0; from < states; from++) {
                system[to][from] = (to == from ? 1 : 0) - (1 - MIXING) * next[from][to];
            }
            system[to][states] = MIXING / states;
        }
        double[] shares = solved(system);
        double sum = 0;
        for (double share : shares) {
            sum += share;
        }
        for (int state = 0; state < states; state++) {
            shares[state] /= sum;
        }
        return shares;
    }

    private static double[] solved(double[][] system) {
        int size = system.length;
        for (int i = 0; i < size; i++) {
            int pivot = i;
            for (int row = i + 1; row < size; row++) {
                pivot = Math.abs(system[row][i]) > Math.abs(system[pivot][i]) ? row : pivot;
            }
            double[] swapped = system[i];
            system[i] = system[pivot];
            system[pivot] = swapped;
            for (int row = i + 1; row < size; row++) {
                double factor = system[row][i] / system[i][i];
                for (int column = i; factor != 0 && column <= size; column++) {
                    system[row][column] -= factor * system[i][column];
                }
            }
        }
        double[] result = new double[size];
        for (int i = size - 1; i >= 0; i--) {
            double sum = system[i][size];
            for (int column = i + 1; column < size; column++) {
                sum -= system[i][column] * result[column];
            }
            result[i] = sum / system[i][i];
        }
        return result;
    }
}
