// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import dev.brinebook.household.Days;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** Break-even of an alternative: the factor on an input, or the interval of a clock, at which its net present value is zero. */
public final class BreakEven {

    public static final double LEAST_FACTOR = 0.05;
    public static final double MOST_FACTOR = 20;
    public static final double LEAST_CLOCK_DAYS = 1;
    public static final double MOST_CLOCK_DAYS = 60;

    /** Steps between the ends, geometric. */
    private static final int STEPS = 12;
    private static final Set<Input> CHOSEN_ANEW = EnumSet.of(Input.HARDNESS, Input.DAILY_USE, Input.CAPACITY);
    private static final int MAX_EVALUATIONS = 200;
    private static final int ORDER = 5;
    private static final double ACCURACY = 1e-10;
    private static final double LEAST_ACCURACY = 1e-12;
    /** Accuracy of a factor at which settings are chosen again: that of the digits reported. */
    private static final double CHOSEN_ACCURACY = 1e-6;
    /** A larger share of the change over a whole step, within the accuracy, can only be a jump. */
    private static final double JUMP_SHARE = 1e-4;

    /**
     * The break-even point of an alternative.
     *
     * @param at the factor or the number of days; none where there is no break-even
     * @param within bound on the distance of the net present value from zero at that point
     * @param paysAbove whether the alternative pays above that point rather than below it
     * @param jumps whether the chosen settings change there, so that the net present value jumps over zero and is nowhere zero
     */
    public record Place(OptionalResult at, double within, boolean paysAbove, boolean jumps) {

        static final Place NONE = new Place(OptionalResult.none(NoResultReason.NEVER_BREAKS_EVEN), 0, false, false);
    }

    private BreakEven() {
    }

    /**
     * The factor on an input at which an alternative breaks even with the baseline.
     *
     * <pre>NPV(f) = LCC(baseline, f) − LCC(alternative, f) = 0</pre>
     *
     * <p>f factor on the input; LCC {@link LifeCycleCost}. Settings are chosen again at each factor, except those that the caller
     * fixes. Of several factors the one nearest 1 is returned.
     * Validity: f from {@value #LEAST_FACTOR} to {@value #MOST_FACTOR}; none where the net present value does not change sign.
     * Source: break-even, by definition.
     * Deviation: where the chosen settings change, the net present value may jump over zero, see {@link Place#jumps}.
     */
    public static Place factor(Comparison comparison, AlternativePlan way, Input input) {
        return nearest(factor -> comparison.expectedNetPresentValue(way, new Factors(Map.of(input, factor))), LEAST_FACTOR,
                MOST_FACTOR, 1, CHOSEN_ANEW.contains(input) ? CHOSEN_ACCURACY : ACCURACY);
    }

    /**
     * The days between two regenerations of the baseline's clock at which an alternative breaks even with it.
     *
     * <pre>LCC(clock of T days) = LCC(alternative),   regenerations = 365 / T a year</pre>
     *
     * <p>T days between regenerations; LCC {@link LifeCycleCost}. Of several intervals the one nearest to the set one is returned.
     * Validity: T from {@value #LEAST_CLOCK_DAYS} to {@value #MOST_CLOCK_DAYS}; none without a break-even in it.
     * Source: break-even, by definition; a clock regenerates whatever is used.
     * Deviation: T need not be whole here.
     */
    public static Place clockDays(Comparison comparison, AlternativePlan way) {
        YearlyUse given = comparison.use(comparison.baseline(), Factors.AS_GIVEN);
        double set = Days.PER_YEAR / given.regenerationsPerYear();
        double other = LifeCycleCost.of(comparison.expected(way, Factors.AS_GIVEN), comparison.horizonYears(),
                comparison.bills().prices());
        return nearest(days -> cost(comparison, given, set / days) - other, LEAST_CLOCK_DAYS, MOST_CLOCK_DAYS, set, ACCURACY);
    }

    private static double cost(Comparison comparison, YearlyUse given, double share) {
        YearlyUse use = new YearlyUse(share * given.regenerationsPerYear(), share * given.saltKilograms(),
                share * given.waterLitres(), given.serviceVisits());
        return LifeCycleCost.of(comparison.priced(comparison.baseline(), use, Factors.AS_GIVEN), comparison.horizonYears(),
                comparison.bills().prices());
    }

    /**
     * The zero whose ratio to the start value is nearest to 1, searched outwards from there in steps, above and below in turn.
     * Both ends of the range belong to it.
     */
    static Place nearest(DoubleUnaryOperator value, double least, double most, double given, double accuracy) {
        double ratio = StrictMath.pow(most / least, 1.0 / STEPS);
        double start = Math.max(least, Math.min(most, given));
        double above = start;
        double below = start;
        double atAbove = value.applyAsDouble(start);
        double atBelow = atAbove;
        if (atAbove == 0) {
            return new Place(OptionalResult.of(start), 0, value.applyAsDouble(Math.min(most, start * ratio)) > 0,
                    false);
        }
        while (above < most || below > least) {
            Place higher = null;
            if (above < most) {
                double next = Math.min(most, above * ratio);
                double atNext = value.applyAsDouble(next);
                if (atAbove * atNext <= 0) {
                    higher = between(value, above, atAbove, next, atNext, accuracy);
                }
                above = next;
                atAbove = atNext;
            }
            if (below > least) {
                double next = Math.max(least, below / ratio);
                double atNext = value.applyAsDouble(next);
                if (atBelow * atNext <= 0) {
                    Place lower = between(value, next, atNext, below, atBelow, accuracy);
                    return higher == null || distance(lower, given) <= distance(higher, given) ? lower : higher;
                }
                below = next;
                atBelow = atNext;
            }
            if (higher != null) {
                return higher;
            }
        }
        return Place.NONE;
    }

    private static double distance(Place place, double given) {
        return Math.abs(StrictMath.log(place.at().value() / given));
    }

    private static Place between(DoubleUnaryOperator value, double from, double atFrom, double to, double atTo,
            double accuracy) {
        boolean paysAbove = atTo > atFrom;
        if (atFrom == 0 || atTo == 0) {
            return new Place(OptionalResult.of(atFrom == 0 ? from : to), 0, paysAbove, false);
        }
        var bracket = new BracketingNthOrderBrentSolver(accuracy, LEAST_ACCURACY, 0, ORDER)
                .solveInterval(MAX_EVALUATIONS, value::applyAsDouble, from, to);
        double atLow = Math.abs(bracket.getLeftValue());
        double atHigh = Math.abs(bracket.getRightValue());
        return new Place(OptionalResult.of(atLow <= atHigh ? bracket.getLeftAbscissa() : bracket.getRightAbscissa()),
                Math.max(atLow, atHigh), paysAbove, atLow + atHigh > JUMP_SHARE * Math.abs(atTo - atFrom));
    }
}
