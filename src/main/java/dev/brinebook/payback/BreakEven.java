package dev.brinebook.payback;

import dev.brinebook.guard.Figure;
import dev.brinebook.guard.NoAnswer;
import dev.brinebook.household.Days;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** Where a way just pays: the factor on an input, or the interval of a clock, at which its net present value is zero. */
public final class BreakEven {

    public static final double LEAST_FACTOR = 0.05;
    public static final double MOST_FACTOR = 20;
    public static final double LEAST_CLOCK_DAYS = 1;
    public static final double MOST_CLOCK_DAYS = 60;

    private static final int STEPS = 200;
    private static final int MAX_EVALUATIONS = 200;
    private static final double ACCURACY = 1e-12;

    private BreakEven() {
    }

    /**
     * The factor on an input at which a way is worth as much as the baseline: of several, the one nearest 1; none where it
     * is never so from {@value #LEAST_FACTOR} to {@value #MOST_FACTOR}.
     */
    public static Figure factor(Comparison comparison, Way way, Input input) {
        return nearest(factor -> comparison.expectedNetPresentValue(way, new Factors(Map.of(input, factor))), LEAST_FACTOR,
                MOST_FACTOR, 1);
    }

    /**
     * The days between two regenerations of the baseline's clock at which a way is worth as much: of several, the nearest to
     * those set; none where it is never so from {@value #LEAST_CLOCK_DAYS} to {@value #MOST_CLOCK_DAYS}.
     *
     * <p>A clock regenerates 365/T times a year, whatever is used; T need not be whole here.
     */
    public static Figure clockDays(Comparison comparison, Way way) {
        Way baseline = comparison.baseline();
        double told = baseline.expectedUse(comparison.duty(), Way.Circumstances.AS_TOLD).regenerationsPerYear();
        double set = Days.PER_YEAR / told;
        double other = LifeCycleCost.of(comparison.expected(way, Factors.AS_TOLD), comparison.horizonYears(),
                comparison.bills().prices());
        return nearest(days -> cost(comparison, baseline, set / days) - other, LEAST_CLOCK_DAYS, MOST_CLOCK_DAYS, set);
    }

    private static double cost(Comparison comparison, Way baseline, double share) {
        YearlyUse told = baseline.expectedUse(comparison.duty(), Way.Circumstances.AS_TOLD);
        YearlyUse use = new YearlyUse(share * told.regenerationsPerYear(), share * told.saltKilograms(),
                share * told.waterLitres(), told.serviceVisits());
        return LifeCycleCost.of(new Alternative(baseline.name(), baseline.outlay(), comparison.bills().of(use)),
                comparison.horizonYears(), comparison.bills().prices());
    }

    /**
     * The zero nearest to {@code told}, by their ratio, on a geometric grid fine enough that two zeros hardly hide in one
     * step. Both ends of the range belong to it.
     */
    static Figure nearest(DoubleUnaryOperator value, double least, double most, double told) {
        Figure found = Figure.none(NoAnswer.NEVER_BREAKS_EVEN);
        double ratio = StrictMath.pow(most / least, 1.0 / STEPS);
        double low = least;
        double atLow = value.applyAsDouble(low);
        for (int i = 1; i <= STEPS; i++) {
            double high = i == STEPS ? most : low * ratio;
            double atHigh = value.applyAsDouble(high);
            if (atLow * atHigh < 0 || atLow == 0) {
                double zero = atLow == 0 ? low : new BracketingNthOrderBrentSolver(ACCURACY, ACCURACY, 0, 5)
                        .solve(MAX_EVALUATIONS, value::applyAsDouble, low, high);
                found = nearer(found, zero, told);
            }
            low = high;
            atLow = atHigh;
        }
        return atLow == 0 ? nearer(found, most, told) : found;
    }

    private static Figure nearer(Figure found, double zero, double told) {
        return !found.exists() || distance(zero, told) < distance(found.value(), told) ? Figure.of(zero) : found;
    }

    private static double distance(double one, double other) {
        return Math.abs(StrictMath.log(one / other));
    }
}
