// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/**
 * Long-run results of delayed meters whose beds outlast their counts, on a lattice of counts and of spare litres: calculated
 * once for a household, each point when it is first needed, and interpolated for any bed, dose and reserve.
 *
 * <pre>U(c,k) = regenerations Σ share(s) Σ f(s,n-1)(k) over the days n of class c
 * hard days(T,S) = Σ U(c,k) c(k) (1 - F(c; T + S - kh)),   hard litres(T,S) = Σ U(c,k) c(k) M(c; T + S - kh)</pre>
 *
 * <p>T count at which the controller calls; S = B - T spare litres of the bed; s state in which a cycle starts; the rest as in
 * {@link RenewalTable}. Only the last few days of use before T matter, since F is 1 beyond.
 * Validity: T of {@value #LEAST_CALL_DAYS} mean days of the busiest weekday or more, S of 0 or more, scatter from {@value #LEAST_CV}.
 * Source: [FELLER] renewal theory.
 * Deviation: cubics through four points each way, of hard days and litres in their logarithm: hard days within 0.5 % of
 * {@link RenewalTable#cycles}, 2 % where T is less than a mean day; regenerations within 0.05 %. Not thread-safe.
 */
final class MeterRates {

    /** Below this the density near no use at all may be too steep for the lattice. */
    static final double LEAST_CALL_DAYS = 0.4;
    /** Below this a lattice point is too far from the next. */
    static final double LEAST_CV = 0.25;
    /** Above this most days use next to nothing, which needs a finer lattice. */
    static final double LARGEST_CV = 0.9;
    /** With absences a longer cycle needs more rows than it is worth. */
    static final int MOST_NIGHTS_WITH_ABSENCES = 31;
    private static final double ENDED = 1e-12;
    private static final int FIRST_POINTS = 128;
    private static final int MARGIN = 3;

    /** One night of the cycles of some states: the use before it, and the use on it. */
    private record Drawn(LatticeNight day, RenewalTable.Row before, double[] sums) {

        /** Chance to be at home and still waiting after it, where the controller calls at this lattice point. */
        double waits(int point) {
            int from = Math.max(before.first(), point - day.width() + 1);
            int below = Math.min(from - before.first(), sums.length - 1);
            double sum = below > 0 ? sums[below] : 0;
            int end = Math.min(before.end(), point + 1);
            for (int k = from; k < end; k++) {
                sum += before.values()[k - before.first()] * day.below(point - k);
            }
            return sum;
        }
    }

    /** What is known of one count: the cycles, and the days before they end by how far each is below the count. */
    private static final class RateColumn {
        private final Cycles.Rates rates;
        /** By class; from one point above the count downwards. */
        private final double[][] ends;
        private final double[] hardDays;
        private final double[] hardLitres;

        RateColumn(Cycles.Rates rates, double[][] ends, int points) {
            this.rates = rates;
            this.ends = ends;
            hardDays = new double[points];
            hardLitres = new double[points];
            Arrays.fill(hardDays, Double.NaN);
            Arrays.fill(hardLitres, Double.NaN);
        }
    }

    private final RenewalTable table;
    private final double cv;
    private final double meanLitres;
    private final int overrideDays;
    private final LatticeNight[] days;
    private final int width;
    private int points;
    private int mostNights;
    /** Use on all the nights that differ. */
    private final List<Drawn> drawn = new ArrayList<>();
    /** Their places, by weekday on which a cycle starts and day of the cycle. */
    private final int[][] nights;
    private final boolean absences;
    /** By state and class: expected days at home, by the litres used before them. */
    private double[][][] before;
    private RateColumn[] columns = new RateColumn[0];

    MeterRates(RenewalTable table, double cv, double meanLitres, int overrideDays) {
        this.cv = cv;
        this.meanLitres = meanLitres;
        this.table = table;
        this.overrideDays = overrideDays;
        days = LatticeNight.of(table);
        width = LatticeNight.width(days);
        nights = new int[table.weekdays()][];
        absences = table.states() > nights.length;
    }

    /**
     * The rates of a rule.
     *
     * @param callLitres count at which the controller calls
     * @param spareLitres what the bed softens beyond it
     * @param litres whether to calculate hard litres
     */
    Cycles.Rates of(double callLitres, double spareLitres, boolean litres) {
        Place at = place(callLitres, spareLitres);
        double regenerations = 0;
        double overrides = 0;
        double hardDays = 0;
        double hardLitres = 0;
        for (int i = 0; i < Cubic.POINTS; i++) {
            RateColumn column = column((at.first + i) * at.stride);
            double weight = at.along.weight(i);
            regenerations += weight * column.rates.regenerations();
            overrides += weight * column.rates.overrides();
            hardDays += weight * logHardDays(column, at);
            hardLitres += litres ? weight * at.across.sum(at.from, point -> hardLitres(column, point)) : 0;
        }
        return new Cycles.Rates(regenerations, Cubic.fromLog(hardDays), litres ? Cubic.fromLog(hardLitres) : 0,
                Math.max(0, overrides), 1);
    }

    /** The hard days of {@link #of} alone, for searches. */
    double hardDays(double callLitres, double spareLitres) {
        Place at = place(callLitres, spareLitres);
        double log = 0;
        for (int i = 0; i < Cubic.POINTS; i++) {
            log += at.along.weight(i) * logHardDays(column((at.first + i) * at.stride), at);
        }
        return Cubic.fromLog(log);
    }

    private double logHardDays(RateColumn column, Place at) {
        Cubic across = at.across;
        return across.a() * hardDays(column, at.from) + across.b() * hardDays(column, at.from + 1)
                + across.c() * hardDays(column, at.from + 2) + across.d() * hardDays(column, at.from + 3);
    }

    /** The points around a rule, once they are reached. */
    private Place place(double callLitres, double spareLitres) {
        int stride = stride(callLitres);
        double count = callLitres / table.step() / stride;
        int first = (int) count - 1;
        int last = (first + MARGIN) * stride;
        if (last >= points) {
            prepare(Math.max(FIRST_POINTS, 2 * last));
        }
        double spare = Math.min(spareLitres / table.step(), width + MARGIN);
        int from = Math.min(Math.max(0, (int) spare - 1), width);
        return new Place(first, stride, Cubic.at(count - first), from, Cubic.at(spare - from));
    }

    /**
     * Where a rule lies between the points.
     *
     * @param first of four counts at which the controller calls, in strides
     * @param stride points from one to the next
     * @param along between them
     * @param from first of four spare volumes, in points
     * @param across between these
     */
    private record Place(int first, int stride, Cubic along, int from, Cubic across) {
    }

    /** The more days add up to the count, the smoother all is along it: points a quarter of a standard deviation apart are enough. */
    private int stride(double callLitres) {
        double deviation = cv * Math.sqrt(callLitres * meanLitres);
        double fits = deviation / 4 / table.step();
        return fits >= 4 ? 4 : fits >= 2 ? 2 : 1;
    }

    private double hardDays(RateColumn column, int spare) {
        if (Double.isNaN(column.hardDays[spare])) {
            column.hardDays[spare] = Cubic.log(sum(column, spare, true));
        }
        return column.hardDays[spare];
    }

    private double hardLitres(RateColumn column, int spare) {
        if (Double.isNaN(column.hardLitres[spare])) {
            column.hardLitres[spare] = Cubic.log(sum(column, spare, false));
        }
        return column.hardLitres[spare];
    }

    private double sum(RateColumn column, int spare, boolean ofDays) {
        double sum = 0;
        for (int of = 0; of < days.length; of++) {
            double[] ends = column.ends[of];
            double[] beyond = ofDays ? days[of].above() : days[of].excess();
            int last = Math.min(ends.length, beyond.length - spare);
            for (int m = 0; m < last; m++) {
                sum += ends[m] * beyond[spare + m];
            }
        }
        return sum;
    }

    private void prepare(int wanted) {
        points = wanted;
        columns = new RateColumn[points];
        table.reach(points + MARGIN);
        drawn.clear();
        Map<RenewalTable.Row, int[]> known = new IdentityHashMap<>();
        mostNights = 0;
        for (int weekday = 0; weekday < nights.length; weekday++) {
            nights[weekday] = nights(weekday, known);
            mostNights = Math.max(mostNights, nights[weekday].length);
        }
        before = absences ? eitherWay() : atHome();
    }

    /** Indexes into the list of nights; equal nights share one entry. */
    private int[] nights(int weekday, Map<RenewalTable.Row, int[]> known) {
        int most = overrideDays == Policy.NO_OVERRIDE ? WaitingRule.MOST_NIGHTS : overrideDays;
        int[] places = new int[Math.min(most, 16)];
        int n = 0;
        for (double left = 1; n < most && (left > ENDED || overrideDays != Policy.NO_OVERRIDE); n++) {
            int kind = table.classOf(weekday, n + 1);
            RenewalTable.Row row = table.row(weekday, n + 1);
            int[] made = known.computeIfAbsent(row, r -> new int[days.length]);
            if (made[kind] == 0) {
                drawn.add(new Drawn(days[kind], row, sums(row)));
                made[kind] = drawn.size();
            }
            places = n == places.length ? Arrays.copyOf(places, 2 * n) : places;
            places[n] = made[kind] - 1;
            left = drawn.get(places[n]).sums()[row.values().length];
        }
        return Arrays.copyOf(places, n);
    }

    /** Of cycles that start at home, by weekday and class. */
    private double[][][] atHome() {
        double[][][] sums = new double[nights.length][days.length][points + MARGIN];
        for (int weekday = 0; weekday < nights.length; weekday++) {
            for (int n = 1; n <= nights[weekday].length; n++) {
                add(sums[weekday], weekday, n, 1);
            }
        }
        return sums;
    }

    private void add(double[][] to, int weekday, int n, double share) {
        RenewalTable.Row row = drawn.get(nights[weekday][n - 1]).before();
        double[] sum = to[table.classOf(weekday, n)];
        int end = Math.min(row.end(), sum.length);
        for (int k = row.first(); k < end; k++) {
            sum[k] += share * row.values()[k - row.first()];
        }
    }

    /** The same of cycles that start after a day at home, then after a vacant one. */
    private double[][][] eitherWay() {
        int weekdays = nights.length;
        double[][][] home = new double[weekdays][days.length][points + MARGIN];
        double[][][] afterVacant = new double[weekdays][days.length][points + MARGIN];
        for (int n = 1; n <= overrideDays; n++) {
            boolean last = n == overrideDays;
            double[][][] longer = new double[weekdays][][];
            double[][][] all = new double[2 * weekdays][][];
            for (int weekday = 0; weekday < weekdays; weekday++) {
                add(home[weekday], weekday, n, 1);
                double[][] later = afterVacant[(weekday + 1) % weekdays];
                longer[weekday] = mixed(home[weekday], table.homeAfter(false), later);
                all[weekday] = last ? mixed(home[weekday], table.homeAfter(true), later) : null;
                all[weekdays + weekday] = longer[weekday];
            }
            if (last) {
                return all;
            }
            afterVacant = longer;
        }
        throw new IllegalStateException("an override is needed with absences");
    }

    private static double[][] mixed(double[][] home, double share, double[][] other) {
        double[][] mixed = new double[home.length][home[0].length];
        for (int of = 0; of < home.length; of++) {
            for (int k = 0; k < mixed[of].length; k++) {
                mixed[of][k] = share * home[of][k] + (1 - share) * other[of][k];
            }
        }
        return mixed;
    }

    private static double[] sums(RenewalTable.Row row) {
        double[] sums = new double[row.values().length + 1];
        for (int k = 0; k < row.values().length; k++) {
            sums[k + 1] = sums[k] + row.values()[k];
        }
        return sums;
    }

    private RateColumn column(int point) {
        if (columns[point] == null) {
            Cycles cycles = cycles(point);
            double[] shares = cycles.shares();
            Cycles.Rates rates = cycles.rates(shares);
            double[][] ends = new double[days.length][Math.min(point, width) + 2];
            for (int of = 0; of < days.length; of++) {
                for (int m = 0; days[of].mean() > 0 && m < ends[of].length; m++) {
                    double sum = 0;
                    for (int state = 0; state < shares.length; state++) {
                        sum += shares[state] * before[state][of][point + 1 - m];
                    }
                    ends[of][m] = rates.regenerations() * sum * endWeight(m);
                }
            }
            columns[point] = new RateColumn(rates, ends, width + 2 * MARGIN);
        }
        return columns[point];
    }

    /** Weights that integrate up to a lattice point, from the one above it downwards. */
    private static double endWeight(int below) {
        return below == 0 ? -1 / 24.0 : below == 1 ? 0.5 : below == 2 ? 25 / 24.0 : 1;
    }

    private Cycles cycles(int point) {
        int weekdays = nights.length;
        Cycles cycles = new Cycles(weekdays, absences ? 2 : 1, false);
        double[] waits = new double[drawn.size()];
        for (int i = 0; i < waits.length; i++) {
            waits[i] = drawn.get(i).waits(point);
        }
        double[] home = new double[weekdays * cycles.states() / weekdays];
        double[] away = new double[home.length];
        double[] afterVacant = new double[weekdays];
        Arrays.fill(home, 0, weekdays, 1);
        Arrays.fill(away, weekdays, away.length, 1);
        for (int n = 1; n <= mostNights; n++) {
            double[] later = afterVacant.clone();
            for (int weekday = 0; weekday < weekdays; weekday++) {
                double own = n <= nights[weekday].length ? waits[nights[weekday][n - 1]] : 0;
                boolean idle = days[table.classOf(weekday, n)].mean() == 0;
                double next = later[(weekday + 1) % weekdays];
                add(cycles, weekday, n, idle, absences ? table.homeAfter(true) * own + (1 - table.homeAfter(true)) * next : own,
                        home, away);
                if (absences) {
                    afterVacant[weekday] = table.homeAfter(false) * own + (1 - table.homeAfter(false)) * next;
                    add(cycles, weekdays + weekday, n, idle, afterVacant[weekday], home, away);
                }
            }
        }
        return cycles;
    }

    /** The next night of the cycles that start in a state. */
    private void add(Cycles cycles, int state, int n, boolean idle, double waits, double[] home, double[] away) {
        double waiting = home[state] + away[state];
        if (waiting <= ENDED) {
            return;
        }
        double homeToday = home[state] * table.homeAfter(true) + away[state] * table.homeAfter(false);
        double awayToday = waiting - homeToday;
        double homeWaits = idle ? homeToday : Math.max(0, Math.min(homeToday, waits));
        boolean last = n == overrideDays;
        cycles.add(state, waiting, 0, last ? homeWaits + awayToday : 0, 0, 0, last ? homeToday : homeToday - homeWaits,
                last ? awayToday : 0);
        home[state] = homeWaits;
        away[state] = awayToday;
    }
}
