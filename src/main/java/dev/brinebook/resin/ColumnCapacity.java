// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import dev.brinebook.resin.ColumnResult.Settled;
import java.util.Objects;
import java.util.Optional;
import org.hipparchus.analysis.solvers.BrentSolver;

/**
 * The capacity of one resin in one water, by the {@link CapacityCurve} of cyclic columns and {@link ResinEfficiency}.
 *
 * <p>A dose whose leakage alone breaks the end point does not hold it. An existing bed with such a dose still has a
 * capacity: that up to the lowest of the looser end points, each half as high again as the one before, that it does hold.
 * Never used to recommend a dose.
 */
public final class ColumnCapacity implements CapacityModel {

    private static final double LOOSER = 1.5;
    private static final double DOSE_ACCURACY_GRAMS_PER_LITRE = 0.01;
    private static final int MAX_EVALUATIONS = 60;

    private final Resin resin;
    private final FeedWater water;
    private final Brining.Direction direction;
    private final double efficiency;
    private final double endPointMgPerL;
    private final Columns columns;
    /** By salt, once it is asked for. Two threads that ask at once find the same. */
    private final CapacityCurve[] curves = new CapacityCurve[Salt.values().length];

    /**
     * A resin in a water.
     *
     * @param resin the resin, with the sites that age has left
     * @param water the water it softens
     * @param direction the way of the brine
     * @param efficiency what a real bed gives of the column's capacity, a share
     * @param endPointMgPerL hardness at which a service run ends, as CaCO₃
     * @param columns where curves and columns come from
     */
    public ColumnCapacity(Resin resin, FeedWater water, Brining.Direction direction, double efficiency, double endPointMgPerL,
            Columns columns) {
        this.resin = Objects.requireNonNull(resin, "resin");
        this.water = Objects.requireNonNull(water, "water");
        this.direction = Objects.requireNonNull(direction, "direction");
        this.efficiency = Guard.within(efficiency, ResinEfficiency.MIN_EFFICIENCY, ResinEfficiency.MAX_EFFICIENCY, "efficiency");
        this.endPointMgPerL = Guard.within(endPointMgPerL, CyclicColumn.MIN_END_POINT_MG_PER_L, CyclicColumn.MAX_END_POINT_MG_PER_L,
                "endPointMgPerL");
        this.columns = Objects.requireNonNull(columns, "columns");
    }

    /** The resin, with the sites that age has left. */
    public Resin resin() {
        return resin;
    }

    /** What a real bed gives of the column's capacity, a share. */
    public double efficiency() {
        return efficiency;
    }

    /** The way of the brine. */
    public Brining.Direction direction() {
        return direction;
    }

    /** Hardness at which a service run ends, as CaCO₃. */
    public double endPointMgPerL() {
        return endPointMgPerL;
    }

    /** The same resin in the same water, with the brine against the service. */
    public ColumnCapacity counterCurrent() {
        return new ColumnCapacity(resin, water, Brining.Direction.COUNTER_CURRENT, efficiency, endPointMgPerL, columns);
    }

    /** Whether a water is hard enough for the end point: a column needs a front to wait for. */
    public static boolean isFor(FeedWater water, double endPointMgPerL) {
        return water.hardnessMgPerL() >= CyclicColumn.LEAST_HARDNESS_IN_END_POINTS * endPointMgPerL;
    }

    @Override
    public CapacityModel ofNewResin() {
        return new ColumnCapacity(Resin.STANDARD, water, direction, efficiency, endPointMgPerL, columns);
    }

    /** Source of the staged column; the efficiencies have sources of their own. */
    @Override
    public String sourceKey() {
        return "HELFFERICH";
    }

    @Override
    public double capacityGramsPerLitre(Salt salt, double saltDoseGramsPerLitre) {
        Settled cycle = cycle(salt, saltDoseGramsPerLitre).orElseThrow(() -> new IllegalArgumentException(
                "no end point is held at a saltDoseGramsPerLitre of " + saltDoseGramsPerLitre));
        return ResinEfficiency.capacityGramsPerLitre(cycle, efficiency);
    }

    @Override
    public boolean isKnownAt(Salt salt, double saltDoseGramsPerLitre) {
        return cycle(salt, saltDoseGramsPerLitre).isPresent();
    }

    @Override
    public boolean holdsEndPoint(Salt salt, double saltDoseGramsPerLitre) {
        return curve(salt).holds(saltDoseGramsPerLitre);
    }

    /** The cycle at the end point, or at the first looser one that the dose holds; none where it holds none. */
    @Override
    public Optional<Settled> cycle(Salt salt, double saltDoseGramsPerLitre) {
        CapacityCurve curve = curve(salt);
        if (curve.holds(saltDoseGramsPerLitre)) {
            return Optional.of(curve.at(saltDoseGramsPerLitre));
        }
        // The given end point is tried even where it exceeds the highest by the rounding of another unit.
        double most = Math.max(endPointMgPerL, Math.min(CyclicColumn.MAX_END_POINT_MG_PER_L,
                water.hardnessMgPerL() / CyclicColumn.LEAST_HARDNESS_IN_END_POINTS));
        for (double end = LOOSER * endPointMgPerL; end <= most; end *= LOOSER) {
            if (column(salt, saltDoseGramsPerLitre, end) instanceof Settled cycle) {
                return Optional.of(cycle);
            }
        }
        return Optional.empty();
    }

    /** The column at a dose and this end point, settled or not. */
    public ColumnResult column(Salt salt, double saltDoseGramsPerLitre) {
        if (!isFor(water, endPointMgPerL)) {
            return new ColumnResult.NotSettled(NoResultReason.NOTHING_TO_SOFTEN);
        }
        CapacityCurve curve = curve(salt);
        return curve.holds(saltDoseGramsPerLitre) ? curve.at(saltDoseGramsPerLitre)
                : new ColumnResult.NotSettled(NoResultReason.END_POINT_NOT_HELD);
    }

    private CapacityCurve curve(Salt salt) {
        if (curves[salt.ordinal()] == null) {
            curves[salt.ordinal()] = columns.of(new CurveCase(resin, water, salt, direction, endPointMgPerL));
        }
        return curves[salt.ordinal()];
    }

    private ColumnResult column(Salt salt, double saltDoseGramsPerLitre, double endMgPerL) {
        return columns.of(new ColumnCase(resin, water, Brining.of(salt, saltDoseGramsPerLitre, direction), endMgPerL));
    }

    @Override
    public OptionalResult leastSaltDoseGramsPerLitre(Salt salt) {
        return curve(salt).leastSaltDoseGramsPerLitre();
    }

    @Override
    public OptionalResult saltDoseGramsPerLitre(Salt salt, double capacityGramsPerLitre) {
        Guard.positive(capacityGramsPerLitre, "capacityGramsPerLitre");
        OptionalResult least = leastSaltDoseGramsPerLitre(salt);
        double most = CapacityTable.maxSaltDoseGramsPerLitre(salt);
        if (!least.exists()) {
            return least;
        }
        if (capacityGramsPerLitre > capacityOrNoneGramsPerLitre(salt, most)) {
            return OptionalResult.none(NoResultReason.CAPACITY_ABOVE_TABLE);
        }
        if (capacityGramsPerLitre < capacityGramsPerLitre(salt, least.value())) {
            return OptionalResult.none(NoResultReason.CAPACITY_BELOW_TABLE);
        }
        return OptionalResult.of(new BrentSolver(DOSE_ACCURACY_GRAMS_PER_LITRE).solve(MAX_EVALUATIONS,
                dose -> capacityOrNoneGramsPerLitre(salt, dose) - capacityGramsPerLitre, least.value(), most));
    }
}
