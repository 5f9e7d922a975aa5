// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Long-run results of delayed meters whose beds outlast their counts, on a lattice of counts and of spare litres: calculated
 * once for a household, each point when it is first needed, and interpolated for any bed, dose and reserve.
 *
 * <pre>U(c,k) = regenerations Σ share(s) Σ f(s,n-1)(k) over the days n of class c
 * hard days(T,S) = Σ U(c,k) c(k) (1 - F(c; T + S - kh)),   hard litres(T,S) = Σ U(c,k) c(k) M(c; T + S - kh)
 * hard days(T,S) = share of days with use - Σ U(c,k) F(c; T + S - kh),   S &lt; 0</pre>
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
    static final double LARGEST_CV = 0.92;
    /** Counts of more mean days of the busiest weekday are summed up by themselves; without override, beyond a long wait. */
    static final double MOST_DAYS = 80;
    /** With absences a longer cycle needs more rows than it is worth. */
    static final int MOST_NIGHTS_WITH_ABSENCES = 31;
    /** The same of a bed that is exhausted before the controller calls: points around it must not come to nothing. */
    static final double LEAST_BED_DAYS = 1.5;
    private static final int FIRST_POINTS = 128;
    private static final int MARGIN = 3;
    private static final int LARGEST_STRIDE = 4;

    /** What is known of one count: the cycles, and the days before they end by how far each is below the count. */
    private static final class RateColumn {
        private final int point;
        private final Cycles.Rates rates;
        private final double[] shares;
        /** By class; from one point above the count downwards. */
        private final double[][] ends;
        private final KnownValues hardDays = new KnownValues();
        private final KnownValues hardLitres = new KnownValues();
        /** Of beds that are exhausted before the count, by how far below it. */
        private final KnownValues hardDaysBefore = new KnownValues();

        RateColumn(int point, Cycles.Rates rates, double[] shares, double[][] ends) {
            this.point = point;
            this.rates = rates;
            this.shares = shares;
            this.ends = ends;
        }
    }

    private final RenewalRows rows;
    private final double cv;
    private final double meanLitres;
    private final int overrideDays;
    private final LatticeNight[] days;
    private final int width;
    /** Share of the days in the long run on which water is used. */
    private final double usedShare;
    /** Points that the longest counts reach, which are looked at. */
    private final int mostPoints;
    private int points;
    private CycleNights nights;
    /** By lattice point and state, once asked for. */
    private double[][] softened;
    private RateColumn[] columns = new RateColumn[0];

    MeterRates(RenewalRows rows, double cv, double meanLitres, int overrideDays) {
        this.cv = cv;
        this.meanLitres = meanLitres;
        this.rows = rows;
        this.overrideDays = overrideDays;
        days = LatticeNight.of(rows);
        width = LatticeNight.width(days);
        double mostLitres = overrideDays == Policy.NO_OVERRIDE ? LongWait.LONG_WAIT_DAYS * meanLitres
                : MOST_DAYS * Arrays.stream(days).mapToDouble(LatticeNight::mean).max().orElseThrow();
        mostPoints = (int) (mostLitres / rows.step()) + 2 * MARGIN * LARGEST_STRIDE;
        double homeShare = rows.homeAfter(false) / (1 - rows.homeAfter(true) + rows.homeAfter(false));
        usedShare = homeShare * IntStream.range(0, rows.weekdays())
                .filter(weekday -> days[rows.classOf(weekday, 1)].mean() > 0).count() / rows.weekdays();
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

    /**
     * The hard days of {@link #of} alone, for searches.
     *
     * @param spareLitres below 0 where the bed is exhausted before the controller calls; the bed itself then no less than
     *     {@value #LEAST_BED_DAYS} mean days of the busiest weekday
     */
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
        return across.a() * logHardDays(column, at.from) + across.b() * logHardDays(column, at.from + 1)
                + across.c() * logHardDays(column, at.from + 2) + across.d() * logHardDays(column, at.from + 3);
    }

    /** The points around a rule, once they are reached. */
    private Place place(double callLitres, double spareLitres) {
        int stride = stride(callLitres);
        double count = callLitres / rows.step() / stride;
        int first = (int) count - 1;
        int last = (first + MARGIN) * stride;
        if (last >= points) {
            prepare(Math.max(Math.max(FIRST_POINTS, last + 1), Math.min(2 * last, mostPoints)));
        }
        double spare = Math.min(spareLitres / rows.step(), width + MARGIN);
        int from = spare < 0 ? (int) Math.floor(spare) - 1 : Math.min(Math.max(0, (int) spare - 1), width);
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
        double fits = deviation / 4 / rows.step();
        return fits >= LARGEST_STRIDE ? LARGEST_STRIDE : fits >= 2 ? 2 : 1;
    }

    private double logHardDays(RateColumn column, int spare) {
        return spare < 0 ? column.hardDaysBefore.at(Math.min(-spare, column.point), below -> logHardDaysBefore(column, below))
                : column.hardDays.at(spare, points -> Cubic.log(sum(column, points, true)));
    }

    /** Of a bed that lasts so many points less than the count: all days with use but those that end before it is exhausted. */
    private double logHardDaysBefore(RateColumn column, int below) {
        double[] ofState = softened(column.point - below, column.shares.length);
        double sum = 0;
        for (int state = 0; state < ofState.length; state++) {
            sum += column.shares[state] * ofState[state];
        }
        return Cubic.log(usedShare - column.rates.regenerations() * sum);
    }

    /**
     * By state, expected days at home of a cycle that end while its use has not come to a lattice point, below the count.
     *
     * @param point no less than 0
     */
    private double[] softened(int point, int states) {
        if (softened[point] == null) {
            softened[point] = new double[states];
            for (int state = 0; state < states; state++) {
                for (int of = 0; of < days.length; of++) {
                    softened[point][state] += days[of].mean() > 0 ? softened(nights.before(state, of), days[of], point) : 0;
                }
            }
        }
        return softened[point];
    }

    private static double softened(double[] before, LatticeNight day, int point) {
        double sum = 0;
        for (int k = 0; k <= point; k++) {
            sum += before[k] * day.below(point - k);
        }
        return sum;
    }

    private double hardLitres(RateColumn column, int spare) {
        return column.hardLitres.at(spare, points -> Cubic.log(sum(column, points, false)));
    }

    private double sum(RateColumn column, int spare, boolean ofDays) {
        double sum = 0;
        for (int of = 0; of < days.length; of++) {
            double[] ends = column.ends[of];
            double[] beyond = ofDays ? days[of].above() : days[of].excess();
            int last = Math.min(ends.length, beyond.length - spare);
            sum += last > 0 ? LatticeRow.dot(ends, 0, beyond, spare, last) : 0;
        }
        return sum;
    }

    private void prepare(int wanted) {
        points = wanted;
        columns = new RateColumn[points];
        nights = null; // As large as those that are made.
        softened = new double[points + MARGIN][];
        nights = overrideDays == Policy.NO_OVERRIDE ? new NightsWithoutOverride(rows, days, points + MARGIN)
                : new MeterNights(rows, days, overrideDays, points + MARGIN);
    }

    private RateColumn column(int point) {
        if (columns[point] == null) {
            Cycles cycles = nights.cycles(point);
            double[] shares = cycles.shares();
            Cycles.Rates rates = cycles.rates(shares);
            double[][] ends = new double[days.length][Math.min(point, width) + 2];
            for (int of = 0; of < days.length; of++) {
                if (days[of].mean() > 0) {
                    addEnds(ends[of], shares, of, point + 1);
                    for (int m = 0; m < ends[of].length; m++) {
                        ends[of][m] *= rates.regenerations() * endWeight(m);
                    }
                }
            }
            columns[point] = new RateColumn(point, rates, shares, ends);
        }
        return columns[point];
    }

    private void addEnds(double[] ends, double[] shares, int of, int top) {
        for (int state = 0; state < shares.length; state++) {
            double share = shares[state];
            double[] before = nights.before(state, of);
            for (int m = 0; m < ends.length; m++) {
                ends[m] += share * before[top - m];
            }
        }
    }

    /** Weights that integrate up to a lattice point, from the one above it downwards. */
    private static double endWeight(int below) {
        return below == 0 ? -1 / 24.0 : below == 1 ? 0.5 : below == 2 ? 25 / 24.0 : 1;
    }
}
