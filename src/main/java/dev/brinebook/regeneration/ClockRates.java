// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Hard days under a clock with a fixed interval in days, on a lattice of beds: calculated once for a household and interpolated
 * for any bed.
 *
 * <pre>hard days of a day(N,B) = 1/N Σ (share at home - Σ R(n,c,k) F(c; B - kh)),   n = 1 to N</pre>
 *
 * <p>N days; B litres that the bed softens; R(n,c,k) distribution of the use before day n of a cycle that starts on any weekday, with
 * somebody at home in the long-run share; the rest as in {@link RenewalTable}.
 * Validity: B of {@value MeterRates#LEAST_CALL_DAYS} mean days of the busiest weekday or more, scatter from {@value MeterRates#LEAST_CV}.
 * Source: [FELLER] renewal theory.
 * Deviation: as {@link MeterRates}. Not thread-safe.
 */
final class ClockRates {

    private static final int FIRST_POINTS = 128;

    private final RenewalRows table;
    private final LatticeNight[] days;
    private final double homeShare;
    private int points;
    /** By day of the cycle and class: the use before it. */
    private final List<double[][]> before = new ArrayList<>();
    /** By day of the cycle: hard days up to it, by lattice point; not yet known where not a number. */
    private final List<double[]> known = new ArrayList<>();

    ClockRates(RenewalRows table, double homeShare) {
        this.table = table;
        this.homeShare = homeShare;
        days = LatticeNight.of(table);
    }

    /** Hard days of a day, regenerated every {@code interval} days. */
    double hardDays(int interval, double bedLitres) {
        double place = bedLitres / table.step();
        int first = (int) place - 1;
        if (first + Cubic.POINTS > points) {
            points = Math.max(FIRST_POINTS, 2 * (first + Cubic.POINTS));
            table.reach(points);
            before.clear();
            known.clear();
        }
        return Cubic.fromLog(Cubic.at(place - first).sum(first, point -> Cubic.log(until(interval, point) / interval)));
    }

    private double until(int day, int point) {
        if (day == 0) {
            return 0;
        }
        while (known.size() < day) {
            double[] values = new double[points];
            Arrays.fill(values, Double.NaN);
            known.add(values);
            before.add(drawnBefore(known.size()));
        }
        double[] sums = known.get(day - 1);
        if (Double.isNaN(sums[point])) {
            sums[point] = until(day - 1, point) + on(day, point);
        }
        return sums[point];
    }

    /** Chance that the bed is exhausted on a day of the cycle, of all that somebody is at home. */
    private double on(int day, int point) {
        double hard = 0;
        for (int of = 0; of < days.length; of++) {
            if (days[of].mean() > 0) {
                double[] drawn = before.get(day - 1)[of];
                for (int k = 0; k <= point; k++) {
                    hard -= drawn[k] * days[of].below(point - k);
                }
            }
        }
        for (int weekday = 0; weekday < table.weekdays(); weekday++) {
            hard += days[table.classOf(weekday, day)].mean() > 0 ? homeShare / table.weekdays() : 0;
        }
        return Math.max(0, hard);
    }

    /**
     * In the long run the share at home is the same on every day of the cycle, so a start after a vacant day is as likely as
     * any other to be preceded by a day at home.
     */
    private double[][] drawnBefore(int day) {
        double[][] drawn = new double[days.length][points];
        double fromHere = homeShare * table.homeAfter(true) + (1 - homeShare) * table.homeAfter(false);
        double vacantSoFar = 1 - fromHere;
        for (int first = 1; first <= day; first++) {
            // Cycles whose first day at home is this one: the use before the day is the use since then.
            double share = first == 1 ? fromHere : vacantSoFar * table.homeAfter(false);
            vacantSoFar *= first == 1 ? 1 : 1 - table.homeAfter(false);
            for (int weekday = 0; weekday < table.weekdays() && share > 0; weekday++) {
                LatticeRow row = table.row((weekday + first - 1) % table.weekdays(), day - first + 1);
                double[] to = drawn[table.classOf(weekday, day)];
                for (int k = row.first(); k < Math.min(points, row.end()); k++) {
                    to[k] += share / table.weekdays() * row.values()[k - row.first()];
                }
            }
        }
        return drawn;
    }
}
