// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Hard days and litres under a clock with a fixed interval in days, on a lattice of beds: calculated once for a household and interpolated
 * for any bed.
 *
 * <pre>hard days of a day(N,B) = 1/N Σ (share at home - Σ R(n,c,k) F(c; B - kh)),   n = 1 to N
 * hard litres of a day(N,B) = 1/N Σ (mean use - Σ R(n,c,k) (m(c) - M(c; B - kh)))</pre>
 *
 * <p>N days; B litres that the bed softens; R(n,c,k) distribution of the use before day n of a cycle that starts on any weekday, with
 * somebody at home in the long-run share; the rest as in {@link RenewalTable}.
 * Validity: B of {@value MeterRates#LEAST_CALL_DAYS} mean days of the busiest weekday or more, scatter from {@value MeterRates#LEAST_CV}.
 * Source: [FELLER] renewal theory.
 * Deviation: as {@link MeterRates}. Not thread-safe.
 */
final class ClockRates {

    /** Above this most days use next to nothing, which needs a finer lattice. */
    static final double LARGEST_CV = 1.1;
    private static final int FIRST_POINTS = 128;

    private final RenewalRows table;
    private final LatticeNight[] days;
    private final double homeShare;
    private int points;
    /** By day of the cycle and class: the use before it. */
    private final List<Before[]> before = new ArrayList<>();
    /** By weekday on which a cycle starts, the last day of it. */
    private final RenewalRows.Spell[] spells;
    private final Sums hardDays = new Sums(false);
    private final Sums hardLitres = new Sums(true);

    ClockRates(RenewalRows table, double homeShare) {
        this.table = table;
        this.homeShare = homeShare;
        days = LatticeNight.of(table);
        spells = new RenewalRows.Spell[table.weekdays()];
    }

    /** Hard days of a day, regenerated every {@code interval} days. */
    double hardDays(int interval, double bedLitres) {
        return at(hardDays, interval, bedLitres);
    }

    /** Hard litres of a day, regenerated every {@code interval} days. */
    double hardLitres(int interval, double bedLitres) {
        return at(hardLitres, interval, bedLitres);
    }

    private double at(Sums sums, int interval, double bedLitres) {
        double place = bedLitres / table.step();
        int first = (int) place - 1;
        if (first + Cubic.POINTS > points) {
            points = Math.max(FIRST_POINTS, 2 * (first + Cubic.POINTS));
            table.reach(points);
            before.clear();
            hardDays.clear();
            hardLitres.clear();
        }
        double[] logs = sums.logs(interval, first);
        Cubic between = Cubic.at(place - first);
        return Cubic.fromLog(between.a() * logs[first] + between.b() * logs[first + 1] + between.c() * logs[first + 2]
                + between.d() * logs[first + 3]);
    }

    /**
     * Chances of each use before a day of the cycle, on the lattice.
     *
     * @param first lattice point before which there is none
     * @param chances from there on
     */
    private record Before(int first, double[] chances) {

        int end() {
            return first + chances.length;
        }
    }

    /** The use before a day of the cycle, by class. */
    private Before[] before(int day) {
        while (before.size() < day) {
            before.add(drawnBefore(before.size() + 1));
        }
        return before.get(day - 1);
    }

    /** Hard days, or hard litres, up to a day of the cycle. */
    private final class Sums {

        private final boolean litres;
        /** By day of the cycle and lattice point. */
        private final List<KnownValues> known = new ArrayList<>();

        /** By length of the cycle: logarithm of their mean a day, by lattice point. */
        private final Map<Integer, double[]> logs = new HashMap<>();

        Sums(boolean litres) {
            this.litres = litres;
        }

        void clear() {
            known.clear();
            logs.clear();
        }

        /** Logarithms at the four points from a first one on. */
        double[] logs(int interval, int first) {
            double[] all = logs.computeIfAbsent(interval, days -> unknown());
            for (int point = first; point < first + Cubic.POINTS; point++) {
                if (Double.isNaN(all[point])) {
                    all[point] = Cubic.log(until(interval, point) / interval);
                }
            }
            return all;
        }

        private double[] unknown() {
            double[] values = new double[points];
            Arrays.fill(values, Double.NaN);
            return values;
        }

        double until(int day, int point) {
            if (day == 0) {
                return 0;
            }
            while (known.size() < day) {
                known.add(new KnownValues());
            }
            return known.get(day - 1).at(point, to -> until(day - 1, to) + on(day, to));
        }

        /** Chance that the bed is exhausted on a day of the cycle, of all that somebody is at home; or the litres beyond it. */
        private double on(int day, int point) {
            double hard = 0;
            for (int of = 0; of < days.length; of++) {
                if (days[of].mean() > 0) {
                    Before drawn = before(day)[of];
                    for (int k = drawn.first; k < Math.min(drawn.end(), point + 1); k++) {
                        hard -= drawn.chances[k - drawn.first] * (litres ? days[of].litresBelow(point - k) : days[of].below(point - k));
                    }
                }
            }
            for (int weekday = 0; weekday < table.weekdays(); weekday++) {
                double mean = days[table.classOf(weekday, day)].mean();
                hard += mean > 0 ? homeShare / table.weekdays() * (litres ? mean : 1) : 0;
            }
            return Math.max(0, hard);
        }
    }

    /**
     * In the long run the share at home is the same on every day of the cycle, so a start after a vacant day is as likely as
     * any other to be preceded by a day at home.
     */
    private Before[] drawnBefore(int day) {
        double[][] drawn = new double[days.length][points];
        int[] from = new int[days.length];
        Arrays.fill(from, points);
        int[] end = new int[days.length];
        for (int weekday = 0; weekday < table.weekdays(); weekday++) {
            LatticeRow row = table.absences() ? atHome(weekday, day) : table.row(weekday, day);
            int of = table.classOf(weekday, day);
            from[of] = Math.min(from[of], row.first());
            end[of] = Math.max(end[of], Math.min(points, row.end()));
            for (int k = row.first(); k < Math.min(points, row.end()); k++) {
                drawn[of][k] += row.values()[k - row.first()] / table.weekdays();
            }
        }
        Before[] before = new Before[days.length];
        Arrays.setAll(before, of -> new Before(from[of], from[of] < end[of] ? Arrays.copyOfRange(drawn[of], from[of], end[of])
                : new double[0]));
        return before;
    }

    /** The use before a day, together with the chance that somebody is at home on it; days come one after another. */
    private LatticeRow atHome(int weekday, int day) {
        spells[weekday] = day == 1 ? RenewalRows.first(homeShare) : table.next(weekday, spells[weekday]);
        return spells[weekday].home();
    }
}
