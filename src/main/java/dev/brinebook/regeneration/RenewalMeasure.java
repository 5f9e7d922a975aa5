// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.CancellationToken;
import org.hipparchus.linear.MatrixUtils;

/**
 * Expected days at home of a cycle that nothing but its use ends, by their weekday and by the use before them, on the lattice of
 * {@link RenewalRows}: the sum over all nights of what those have for each, without a night of it. How long a house is vacant does not
 * matter, as use waits meanwhile.
 *
 * <pre>g(v,k) = [k = 0] K(v,w-1) + Σ K(v,i) u(i,k),   u(i,k) = Σ p(i,j) g(i,k-j)
 * K(v,i) = (1 - l) [i = v-1] + l b (1 - b)^m / (1 - (1 - b)^W),   m = v - 2 - i mod W</pre>
 *
 * <p>g days on weekday v after k lattice points, in a cycle that starts on weekday w after a day at home; u those that end at k; p see
 * {@link LatticeDay}; l chance to leave, b to come back; K chance that the next day at home after one on weekday i is on v; W weekdays
 * that differ.
 * Validity: as {@link RenewalTable}.
 * Source: [FELLER] the renewal measure.
 * Deviation: from the sum over the nights, which cuts chances to wait that the lattice makes more than 1, 0.01 % where days scatter by
 * more than {@value MeterRates#LARGEST_CV}; else rounding alone.
 */
final class RenewalMeasure {

    private final int weekdays;
    private final int points;
    private final double[][] homeNext;
    private final double[][] idleDays;
    private final double leave;
    private final double comeBack;
    private final boolean[] idle;
    /** By weekday on which a cycle starts, weekday of the day, and lattice points used before it. */
    private final double[][][] days;

    /** The measure up to a number of lattice points. */
    RenewalMeasure(RenewalRows rows, int points) {
        this.points = points;
        weekdays = rows.weekdays();
        leave = 1 - rows.homeAfter(true);
        comeBack = rows.homeAfter(false);
        homeNext = homeNext();
        double[][] chances = new double[weekdays][];
        double[][] unused = identity();
        double[][] afterIdle = identity();
        idle = new boolean[weekdays];
        for (int day = 0; day < weekdays; day++) {
            LatticeDay of = rows.classes()[rows.classOf(day, 1)];
            chances[day] = of.chances();
            idle[day] = of.mean() == 0;
            for (int next = 0; next < weekdays; next++) {
                unused[next][day] -= homeNext[next][day] * chances[day][0];
                afterIdle[day][next] -= idle[day] ? homeNext[day][next] : 0;
            }
        }
        idleDays = inverse(afterIdle);
        double[][] step = MatrixUtils.createRealMatrix(inverse(unused)).multiply(MatrixUtils.createRealMatrix(homeNext)).getData();
        days = new double[weekdays][weekdays][points];
        for (int start = 0; start < weekdays; start++) {
            fill(days[start], start, step, chances);
        }
    }

    private void fill(double[][] to, int start, double[][] step, double[][] chances) {
        CancellationToken.obey();
        double[] ended = new double[weekdays];
        for (int k = 0; k < points; k++) {
            for (int day = 0; day < weekdays; day++) {
                ended[day] = k == 0 ? day == before(start) ? 1 : 0 : ended(to[day], chances[day], k);
            }
            for (int day = 0; day < weekdays; day++) {
                double sum = 0;
                for (int from = 0; from < weekdays; from++) {
                    sum += step[day][from] * ended[from];
                }
                to[day][k] = sum;
            }
        }
    }

    /** Days that end at a lattice point with use on them. */
    private static double ended(double[] days, double[] chances, int k) {
        double sum = 0;
        int last = Math.min(k, chances.length - 1);
        for (int j = 1; j <= last; j++) {
            sum += chances[j] * days[k - j];
        }
        return sum;
    }

    /** The chance that the next day at home is on a weekday, after one on another. */
    private double[][] homeNext() {
        double[][] next = new double[weekdays][weekdays];
        double away = 1 - comeBack;
        double week = 1;
        for (int day = 0; day < weekdays; day++) {
            week *= away;
        }
        for (int from = 0; from < weekdays; from++) {
            next[(from + 1) % weekdays][from] += 1 - leave;
            double share = leave > 0 ? leave * comeBack / (1 - week) : 0;
            for (int vacant = 1; vacant <= weekdays; vacant++) {
                next[(from + 1 + vacant) % weekdays][from] += share;
                share *= away;
            }
        }
        return next;
    }

    private double[][] identity() {
        return MatrixUtils.createRealIdentityMatrix(weekdays).getData();
    }

    private static double[][] inverse(double[][] matrix) {
        return MatrixUtils.inverse(MatrixUtils.createRealMatrix(matrix)).getData();
    }

    private int before(int weekday) {
        return (weekday + weekdays - 1) % weekdays;
    }

    int points() {
        return points;
    }

    /** Expected days on a weekday in cycles that start on another, by the lattice points used before them; not to be changed. */
    double[] days(int start, int weekday) {
        return days[start][weekday];
    }

    /** What a rule makes of the days at home on one weekday. */
    interface DaysOfRule {

        /** Those after which the cycle goes on. */
        double waiting(double[] days, int weekday);

        /** Those that end hard, of as many that end the cycle, of as many at home. */
        double hard(double[] days, int weekday, double ending, double atHome);

        /** Litres of hard water on them. */
        double hardLitres(double[] days, int weekday);
    }

    /** All cycles of a rule without override; each starts after a day at home, as a vacant one ends none. */
    Cycles cycles(DaysOfRule rule) {
        Cycles cycles = new Cycles(weekdays, 1, false);
        for (int start = 0; start < weekdays; start++) {
            double[] known = new double[weekdays];
            for (int day = 0; day < weekdays; day++) {
                known[day] = (idle[day] ? 0 : Math.max(0, rule.waiting(days[start][day], day))) + (day == before(start) ? 1 : 0);
            }
            double[] passed = times(idleDays, known);
            double[] atHome = times(homeNext, passed);
            double vacant = 0;
            for (int day = 0; day < weekdays; day++) {
                vacant += leave > 0 ? leave / comeBack * passed[day] : 0;
            }
            cycles.addNights(start, vacant);
            for (int day = 0; day < weekdays; day++) {
                double ending = idle[day] ? 0 : Math.max(0, atHome[day] - known[day] + (day == before(start) ? 1 : 0));
                double hard = idle[day] ? 0 : Math.max(0, rule.hard(days[start][day], day, ending, atHome[day]));
                cycles.addNights(start, atHome[day]);
                cycles.addDays(start, day, hard, idle[day] ? 0 : Math.max(0, rule.hardLitres(days[start][day], day)), ending);
            }
        }
        return cycles;
    }

    private static double[] times(double[][] matrix, double[] vector) {
        double[] product = new double[vector.length];
        for (int row = 0; row < product.length; row++) {
            for (int column = 0; column < vector.length; column++) {
                product[row] += matrix[row][column] * vector[column];
            }
        }
        return product;
    }
}
