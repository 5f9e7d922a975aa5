package dev.brinebook.resin;

import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoAnswer;
import dev.brinebook.guard.StopSign;
import dev.brinebook.quantity.Exact;
import java.util.Objects;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * The equilibrium-stage column in use: service to an end point, brine, slow rinse, fast rinse, again and again until one
 * cycle is like the one before. That is the working state, and it holds less than a fresh bed.
 *
 * <p>The fresh bed holds nothing but the cation of the salt. Each stage is a stirred vessel
 * in which resin and water are in exchange equilibrium (see {@link Selectivity}).
 *
 * <p>Validity: equilibrium only. Film and pores slow the exchange, water finds channels, resin ages: a real bed gives a
 * share of this, {@link ResinEfficiency}.
 * Source: [HELFFERICH] chapter 9 for the staged column.
 * Deviation: steps far longer than the pores hold, so that a column takes milliseconds; of the finest steps
 * the capacity is within 0.1 %, the leakage at the start within 1 % and the mean leakage within 0.05 mg/L.
 */
public final class CyclicColumn {

    public static final double MIN_END_POINT_MG_PER_L = 1;
    public static final double MAX_END_POINT_MG_PER_L = 200;
    /** One grain per US gallon, where softened water ceases to be called soft. Source: [NSF-ANSI-44]. */
    public static final double DEFAULT_END_POINT_MG_PER_L =
            Exact.GRAIN_MILLIGRAMS / Exact.US_GALLON_LITRES;
    /** Feed hardness below which there is no front to wait for, in end points. */
    static final double LEAST_HARDNESS_IN_END_POINTS = 2;

    /** Two successive cycles agree when their capacities differ by no more than this share. */
    static final double AGREEMENT = 1e-4;
    private static final int MAX_CYCLES = 60;
    private static final int MAX_END_POINT_EVALUATIONS = 100;
    private static final double WASHED_OUT = 0.01;

    /**
     * Length of a step: the share of a stage that the front of hardness moves on, and the share of its pores that a brine
     * fills.
     */
    record Steps(double ofFront, double ofPores) {
        static final Steps USUAL = new Steps(0.1, 1);
    }

    private final Resin resin;
    private final Brining brining;
    private final double[] feed;
    private final double[] brine;
    private final double hardness;
    private final double endPoint;
    private final double longStep;
    private final double shortStep;
    private final StagedBed bed;
    private final StagedBed before;

    private double hardnessOut;
    private double hardnessIn;

    private CyclicColumn(Resin resin, FeedWater water, Brining brining, double endPointMgPerL, Steps steps) {
        this.resin = resin;
        this.brining = brining;
        FeedWater salt = FeedWater.brine(brining.salt(), brining.brineEquivalentsPerLitre());
        feed = water.ions();
        brine = salt.ions();
        hardness = water.hardnessEquivalentsPerLitre();
        endPoint = endPointMgPerL / FeedWater.MG_PER_EQUIVALENT;
        longStep = steps.ofFront() * StagedBed.inEquilibriumWith(resin, water).heldHardness() / hardness / resin.stages();
        shortStep = Math.min(longStep, steps.ofPores() * resin.voidShare() / resin.stages());
        bed = StagedBed.inEquilibriumWith(resin, salt);
        before = bed.copy();
    }

    /** The cycle that the column comes to with a water, a regeneration and an end point of hardness, as CaCO₃. */
    public static ColumnResult of(Resin resin, FeedWater water, Brining brining, double endPointMgPerL) {
        return of(resin, water, brining, endPointMgPerL, Steps.USUAL);
    }

    static ColumnResult of(Resin resin, FeedWater water, Brining brining, double endPointMgPerL, Steps steps) {
        Objects.requireNonNull(resin, "resin");
        Objects.requireNonNull(brining, "brining");
        Guard.within(endPointMgPerL, MIN_END_POINT_MG_PER_L, MAX_END_POINT_MG_PER_L, "endPointMgPerL");
        if (!(water.hardnessMgPerL() >= LEAST_HARDNESS_IN_END_POINTS * endPointMgPerL)) {
            return new ColumnResult.NotSettled(NoAnswer.NOTHING_TO_SOFTEN);
        }
        return new CyclicColumn(resin, water, brining, endPointMgPerL, steps).settle();
    }

    private ColumnResult settle() {
        double last = 0;
        for (int cycle = 1; cycle <= MAX_CYCLES; cycle++) {
            StopSign.obey();
            double held = bed.heldHardness();
            hardnessIn = 0;
            hardnessOut = 0;
            regenerate();
            double start = bed.exitHardness();
            if (!(start < endPoint)) {
                return new ColumnResult.NotSettled(NoAnswer.END_POINT_NOT_HELD);
            }
            double rinsedIn = hardnessIn;
            double rinsedOut = hardnessOut;
            serve();
            double throughput = (hardnessIn - rinsedIn) / hardness;
            double leaked = hardnessOut - rinsedOut;
            double capacity = hardnessIn - rinsedIn - leaked;
            if (Math.abs(capacity - last) <= AGREEMENT * capacity) {
                double dose = brining.doseEquivalentsPerLitre();
                return new ColumnResult.Settled(capacity, throughput, start * FeedWater.MG_PER_EQUIVALENT,
                        leaked / throughput * FeedWater.MG_PER_EQUIVALENT,
                        bed.exitHardness() * FeedWater.MG_PER_EQUIVALENT, capacity / dose,
                        Math.abs(held + hardnessIn - hardnessOut - bed.heldHardness()) / dose, cycle);
            }
            last = capacity;
        }
        return new ColumnResult.NotSettled(NoAnswer.CYCLES_DO_NOT_SETTLE);
    }

    private void regenerate() {
        boolean upwards = brining.direction() == Brining.Direction.COUNTER_CURRENT;
        pass(brine, brining.brineBedVolumes(), upwards);
        pass(feed, brining.slowRinseBedVolumes(), upwards);
        pass(feed, brining.fastRinseBedVolumes(), false);
    }

    private void pass(double[] water, double bedVolumes, boolean upwards) {
        double left = bedVolumes;
        while (left > 0) {
            boolean even = water == feed && bed.isWashedOut(feed, WASHED_OUT, upwards);
            double step = Math.min(left, even ? longStep : shortStep);
            move(water, step, upwards);
            left -= step;
        }
    }

    private void serve() {
        for (double served = 0; served < 2 * resin.totalEquivalentsPerLitre() / hardness; served += longStep) {
            before.copyFrom(bed);
            bed.flow(feed, longStep, false);
            if (bed.exitHardness() >= endPoint) {
                double step = new BrentSolver(1e-12, 1e-9 * longStep, 0).solve(MAX_END_POINT_EVALUATIONS,
                        this::excessAfter, 0, longStep);
                bed.copyFrom(before);
                move(feed, step, false);
                return;
            }
            count(feed, longStep);
        }
        throw new IllegalStateException("no end of service in sight");
    }

    /** Hardness above the end point after a step, as a share of it. */
    private double excessAfter(double bedVolumes) {
        bed.copyFrom(before);
        bed.flow(feed, bedVolumes, false);
        return bed.exitHardness() / endPoint - 1;
    }

    private void move(double[] water, double bedVolumes, boolean upwards) {
        bed.flow(water, bedVolumes, upwards);
        count(water, bedVolumes);
    }

    private void count(double[] water, double bedVolumes) {
        hardnessIn += bedVolumes * (water[StageEquilibrium.CALCIUM] + water[StageEquilibrium.MAGNESIUM]);
        hardnessOut += bedVolumes * bed.outflowHardness();
    }
}
