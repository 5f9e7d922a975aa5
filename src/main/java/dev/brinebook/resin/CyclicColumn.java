// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.CancellationToken;
import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.quantity.Exact;
import java.util.Objects;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * The equilibrium-stage column in use: service to an end point, brine, slow rinse, fast rinse, again and again until one
 * cycle is like the one before. That is the working state, and it holds less than a fresh bed.
 *
 * <p>The fresh bed holds nothing but the cation of the salt. Whatever passes, passes in plug flow, by the shifts of
 * {@link StagedBed}; after each, resin and water are in exchange equilibrium in every stage (see {@link Selectivity}).
 *
 * <p>Validity: equilibrium only. Film and pores slow the exchange, water finds channels, resin ages: a real bed gives a
 * share of this, {@link ResinEfficiency}.
 * Source: [HELFFERICH] chapter 9 for the staged column; [PHREEQC] for its shifts.
 * Deviation: service makes many shifts at once, so that a column takes a millisecond or two; of single shifts the capacity
 * is within 0.02 %, the leakage at the start within 0.3 % and the mean leakage within 0.6 %. Brine that is no whole number
 * of shifts ends with part of one. Of the published columns of [PHREEQC] with 5 to 10 stages the capacity is within
 * 0.15 %, and the mean leakage within 0.4 % if three rows of feed water count in the printed means, as it seems; else it is 6
 * to 26 % lower.
 */
public final class CyclicColumn {

    public static final double MIN_END_POINT_MG_PER_L = 1;
    public static final double MAX_END_POINT_MG_PER_L = 200;
    /** Grains per US gallon above which water is no longer called soft. Source: [NSF-ANSI-44]. */
    public static final double DEFAULT_END_POINT_GPG = 1;
    /** The same in mg/L. */
    public static final double DEFAULT_END_POINT_MG_PER_L = DEFAULT_END_POINT_GPG * Exact.GRAIN_MILLIGRAMS / Exact.US_GALLON_LITRES;
    /** Feed hardness below which there is no front to wait for, in end points. */
    static final double LEAST_HARDNESS_IN_END_POINTS = 2;

    /** Two successive cycles agree when their capacities differ by no more than this share. */
    static final double AGREEMENT = 1e-4;
    private static final int MAX_CYCLES = 60;
    private static final int MAX_END_POINT_EVALUATIONS = 100;
    /** Share of a stage by which the front of hardness moves on in a step of service. */
    static final double FRONT_STEP = 0.1;
    /** Rise of hardness in a step, in end points, from which on the front is coming out. */
    private static final double FRONT_RISE = 0.02;
    private static final double SHORTER_AT_THE_FRONT = 4;
    /** Of the end of service, as a share of the last step and of the end point. */
    private static final double END_POINT_ACCURACY = 1e-6;
    /** A step whose hardness rises by less than this, in its logarithm, is treated as level. */
    private static final double LEAST_RISE = 1e-4;

    private final Resin resin;
    private final Brining brining;
    private final double[] feed;
    private final double[] brine;
    private final double hardness;
    private final double endPoint;
    /** Shifts made at once, where the water in the pores is as strong as the water behind it. */
    private final double shiftsAtOnce;
    private final StagedBed bed;
    private final StagedBed before;

    private double hardnessOut;
    private double hardnessIn;
    private double leaked;

    /** A fresh bed; of {@code brining} the amount of brine is not used here. */
    CyclicColumn(Resin resin, FeedWater water, Brining brining, double endPointMgPerL, double frontStep) {
        this.resin = resin;
        this.brining = brining;
        FeedWater salt = FeedWater.brine(brining.salt(), brining.brineEquivalentsPerLitre());
        feed = water.ions();
        brine = salt.ions();
        hardness = water.hardnessEquivalentsPerLitre();
        endPoint = endPointMgPerL / FeedWater.MG_PER_EQUIVALENT;
        bed = StagedBed.inEquilibriumWith(resin, salt);
        double bedVolumesAtOnce = frontStep * StagedBed.inEquilibriumWith(resin, water).heldHardness() / hardness
                / resin.stages();
        shiftsAtOnce = Math.max(1, bedVolumesAtOnce / bed.bedVolumesPerShift());
        before = bed.copy();
    }

    /** The cycle that the column settles into with a water, a regeneration and an end point of hardness, as CaCO₃. */
    public static ColumnResult of(Resin resin, FeedWater water, Brining brining, double endPointMgPerL) {
        return of(resin, water, brining, endPointMgPerL, FRONT_STEP);
    }

    static ColumnResult of(Resin resin, FeedWater water, Brining brining, double endPointMgPerL, double frontStep) {
        Objects.requireNonNull(resin, "resin");
        Objects.requireNonNull(brining, "brining");
        Guard.within(endPointMgPerL, MIN_END_POINT_MG_PER_L, MAX_END_POINT_MG_PER_L, "endPointMgPerL");
        if (!(water.hardnessMgPerL() >= LEAST_HARDNESS_IN_END_POINTS * endPointMgPerL)) {
            return new ColumnResult.NotSettled(NoResultReason.NOTHING_TO_SOFTEN);
        }
        return new CyclicColumn(resin, water, brining, endPointMgPerL, frontStep).settle(brining.brineBedVolumes());
    }

    /** The bed as it is now, at rest. */
    StagedBed state() {
        return bed.copy();
    }

    /** Makes the bed another. */
    void startFrom(StagedBed other) {
        bed.copyFrom(other);
    }

    /** Makes the bed a weighted sum of others, by {@link StagedBed#blend}. */
    boolean startFrom(StagedBed[] beds, double[] weights) {
        return bed.blend(beds, weights);
    }

    /** Runs cycles from a fresh bed until they repeat; {@code brineBedVolumes} is litres of brine per litre of resin. */
    ColumnResult settle(double brineBedVolumes) {
        return settle(brineBedVolumes, bed.copy(), 0);
    }

    /**
     * Runs cycles from the present state of the bed until they repeat. {@link CycleAcceleration} extrapolates the start of each from
     * the cycles before it.
     *
     * @param brineBedVolumes litres of brine per litre of resin
     * @param cleaner a bed with less hardness than the settled one: what starts dirtier may miss the end point although the settled
     *     one keeps it, and then settles from this without being accelerated
     * @param expected capacity that is expected of a bed put between others, in equivalents per litre; 0 for none
     */
    ColumnResult settle(double brineBedVolumes, StagedBed cleaner, double expected) {
        CycleAcceleration acceleration = new CycleAcceleration();
        boolean mayBeDirtier = expected > 0;
        double last = expected;
        for (int cycle = 1; cycle <= MAX_CYCLES; cycle++) {
            CancellationToken.obey();
            StagedBed began = bed.copy();
            ColumnResult result = cycle(brineBedVolumes, cycle);
            if (result instanceof ColumnResult.Settled settled) {
                double capacity = settled.capacityEquivalentsPerLitre();
                double change = Math.max(Math.abs(capacity - last), Math.abs(bed.heldHardness() - began.heldHardness()));
                if (change <= AGREEMENT * capacity) {
                    return settled;
                }
                last = capacity;
                mayBeDirtier |= acceleration.moveOn(bed, began);
            } else if (mayBeDirtier) {
                mayBeDirtier = false;
                acceleration.stop();
                bed.copyFrom(cleaner);
            } else {
                return result;
            }
        }
        return new ColumnResult.NotSettled(NoResultReason.CYCLES_DO_NOT_SETTLE);
    }

    /** One cycle from the present state of the bed, whether settled or not. */
    private ColumnResult cycle(double brineBedVolumes, int number) {
        double held = bed.heldHardness();
        hardnessIn = 0;
        hardnessOut = 0;
        regenerate(brineBedVolumes);
        double start = bed.exitHardness();
        if (!(start < endPoint)) {
            return new ColumnResult.NotSettled(NoResultReason.END_POINT_NOT_HELD);
        }
        double rinsedIn = hardnessIn;
        leaked = 0;
        serve();
        double throughput = (hardnessIn - rinsedIn) / hardness;
        double capacity = hardnessIn - rinsedIn - leaked;
        double dose = brineBedVolumes * brining.brineEquivalentsPerLitre();
        return new ColumnResult.Settled(capacity, throughput, start * FeedWater.MG_PER_EQUIVALENT,
                leaked / throughput * FeedWater.MG_PER_EQUIVALENT, bed.exitHardness() * FeedWater.MG_PER_EQUIVALENT, capacity / dose,
                Math.abs(held + hardnessIn - hardnessOut - bed.heldHardness()) / dose, number);
    }

    private void regenerate(double brineBedVolumes) {
        boolean upwards = brining.direction() == Brining.Direction.COUNTER_CURRENT;
        pass(brine, brineBedVolumes, upwards);
        pass(feed, brining.slowRinseBedVolumes(), upwards);
        pass(feed, brining.fastRinseBedVolumes(), false);
    }

    private void pass(double[] water, double bedVolumes, boolean upwards) {
        double left = bedVolumes / bed.bedVolumesPerShift();
        while (left > 0) {
            double step = Math.min(left, water == feed && bed.isAsStrongAs(feed) ? shiftsAtOnce : 1);
            move(water, step, upwards);
            left -= step;
        }
    }

    /** Steps get short where the front comes out, since most of the hardness that leaks comes with it. */
    private void serve() {
        double most = 2 * resin.totalEquivalentsPerLitre() / hardness / bed.bedVolumesPerShift();
        double least = Math.max(1, shiftsAtOnce / SHORTER_AT_THE_FRONT);
        double step = shiftsAtOnce;
        for (double served = 0; served < most; served += step) {
            before.copyFrom(bed);
            bed.advance(feed, step, false);
            if (step > least && bed.exitHardness() - before.exitHardness() > FRONT_RISE * endPoint) {
                step = least;
                bed.copyFrom(before);
                bed.advance(feed, step, false);
            }
            if (bed.exitHardness() >= endPoint) {
                double last = new BrentSolver(END_POINT_ACCURACY, END_POINT_ACCURACY * step).solve(MAX_END_POINT_EVALUATIONS,
                        this::excessAfter, 0, step);
                excessAfter(last);
                count(feed, last);
                leaked += last * bed.bedVolumesPerShift() * served(last);
                return;
            }
            count(feed, step);
            leaked += step * bed.bedVolumesPerShift() * served(step);
        }
        throw new IllegalStateException("no end of service in sight");
    }

    /** Hardness above the end point after a step, as a share of it. */
    private double excessAfter(double shifts) {
        bed.copyFrom(before);
        bed.advance(feed, shifts, false);
        return bed.exitHardness() / endPoint - 1;
    }

    /**
     * Mean hardness that leaves in a step of service, when that of the last stage rises by the same factor with each shift.
     *
     * <pre>h = (b − a) / (n ((b / a)^(1/n) − 1))</pre>
     *
     * <p>a, b hardness of the last stage before and after the step of n shifts; a shift takes out what was there before it.
     */
    private double served(double shifts) {
        double rise = StrictMath.log(bed.exitHardness() / before.exitHardness());
        return shifts > 1 && rise > LEAST_RISE
                ? (bed.exitHardness() - before.exitHardness()) / (shifts * StrictMath.expm1(rise / shifts)) : bed.outflowHardness();
    }

    private void move(double[] water, double shifts, boolean upwards) {
        bed.advance(water, shifts, upwards);
        count(water, shifts);
    }

    private void count(double[] water, double shifts) {
        double bedVolumes = shifts * bed.bedVolumesPerShift();
        hardnessIn += bedVolumes * (water[StageEquilibrium.CALCIUM] + water[StageEquilibrium.MAGNESIUM]);
        hardnessOut += bedVolumes * bed.outflowHardness();
    }
}
