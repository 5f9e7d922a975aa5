package dev.brinebook.payback;

import dev.brinebook.guard.Figure;
import dev.brinebook.guard.NoAnswer;
import dev.brinebook.household.Days;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** Where a way just pays: the factor on an input, or the interval of a clock, at which its net present value is zero. */
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
    /** Of a factor at each value of which settings are chosen anew: that of the digits which are said. */
    private static final double CHOSEN_ACCURACY = 1e-6;
    /** More than this share of what the worth changes over a whole step cannot pass within the accuracy but by a jump. */
    private static final double JUMP_SHARE = 1e-4;

    /**
     * Where a way just pays.
     *
     * @param at the factor or the number of days; none where there is no such place
     * @param within worth at most this far from zero there
     * @param paysAbove whether the way is worth something above it rather than below
     * @param jumps whether the settings chosen change there, so that the worth jumps over zero and is zero nowhere
     */
    public record Place(Figure at, double within, boolean paysAbove, boolean jumps) {

        static final Place NONE = new Place(Figure.none(NoAnswer.NEVER_BREAKS_EVEN), 0, false, false);
    }

    private BreakEven() {
    }

    /**
     * The factor on an input at which a way is worth as much as the baseline: of several, the one nearest 1; none where it
     * is never so from {@value #LEAST_FACTOR} to {@value #MOST_FACTOR}. Settings are chosen anew at each factor, but for those
     * that the caller fixes.
     */
    public static Place factor(Comparison comparison, Way way, Input input) {
        return nearest(factor -> comparison.expectedNetPresentValue(way, new Factors(Map.of(input, factor))), LEAST_FACTOR,
                MOST_FACTOR, 1, CHOSEN_ANEW.contains(input) ? CHOSEN_ACCURACY : ACCURACY);
    }

    /**
     * The days between two regenerations of the baseline's clock at which a way is worth as much: of several, the nearest to
     * those set; none where it is never so from {@value #LEAST_CLOCK_DAYS} to {@value #MOST_CLOCK_DAYS}.
     *
     * <p>A clock regenerates 365/T times a year, whatever is used; T need not be whole here.
     */
    public static Place clockDays(Comparison comparison, Way way) {
        YearlyUse told = comparison.use(comparison.baseline(), Factors.AS_TOLD);
        double set = Days.PER_YEAR / told.regenerationsPerYear();
        double other = LifeCycleCost.of(comparison.expected(way, Factors.AS_TOLD), comparison.horizonYears(),
                comparison.bills().prices());
        return nearest(days -> cost(comparison, told, set / days) - other, LEAST_CLOCK_DAYS, MOST_CLOCK_DAYS, set, ACCURACY);
    }

    private static double cost(Comparison comparison, YearlyUse told, double share) {
        YearlyUse use = new YearlyUse(share * told.regenerationsPerYear(), share * told.saltKilograms(),
                share * told.waterLitres(), told.serviceVisits());
        return LifeCycleCost.of(comparison.priced(comparison.baseline(), use, Factors.AS_TOLD), comparison.horizonYears(),
                comparison.bills().prices());
    }

    /**
     * The zero nearest to {@code told}, by their ratio: looked for in steps from there outwards, above and below in turn. Both
     * ends of the range belong to it.
     */
    static Place nearest(DoubleUnaryOperator value, double least, double most, double told, double accuracy) {
        double ratio = StrictMath.pow(most / least, 1.0 / STEPS);
        double start = Math.max(least, Math.min(most, told));
        double above = start;
        double below = start;
        double atAbove = value.applyAsDouble(start);
        double atBelow = atAbove;
        if (atAbove == 0) {
            return new Place(Figure.of(start), 0, value.applyAsDouble(Math.min(most, start * ratio)) > 0,
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
                    return higher == null || distance(lower, told) <= distance(higher, told) ? lower : higher;
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

    private static double distance(Place place, double told) {
        return Math.abs(StrictMath.log(place.at().value() / told));
    }

    private static Place between(DoubleUnaryOperator value, double from, double atFrom, double to, double atTo,
            double accuracy) {
        boolean paysAbove = atTo > atFrom;
        if (atFrom == 0 || atTo == 0) {
            return new Place(Figure.of(atFrom == 0 ? from : to), 0, paysAbove, false);
        }
        var bracket = new BracketingNthOrderBrentSolver(accuracy, LEAST_ACCURACY, 0, ORDER)
                .solveInterval(MAX_EVALUATIONS, value::applyAsDouble, from, to);
        double atLow = Math.abs(bracket.getLeftValue());
        double atHigh = Math.abs(bracket.getRightValue());
        return new Place(Figure.of(atLow <= atHigh ? bracket.getLeftAbscissa() : bracket.getRightAbscissa()),
                Math.max(atLow, atHigh), paysAbove, atLow + atHigh > JUMP_SHARE * Math.abs(atTo - atFrom));
    }
}
