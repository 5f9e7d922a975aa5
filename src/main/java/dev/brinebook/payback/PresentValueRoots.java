// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.analysis.solvers.AllowedSolution;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Finds every zero of a present value: its range is cut into intervals in which it can cross zero only once.
 *
 * <p>This is the proof of Descartes' rule of signs, run as an algorithm. With u = ln(1 + r) and a pivot p that lies
 * between the two flows of a sign change,
 * <pre>h(u) = sum of F(t) exp(-(t - p) u)</pre>
 * has the zeros of the present value, and its slope has the same form with F(t)(t - p) for flows: one sign change fewer.
 * So the zeros of the slope are found first, in the same way, down to flows without a sign change; h is monotonic
 * between them.
 */
final class PresentValueRoots {

    private static final double LOW = StrictMath.log1p(CashFlows.MIN_RATE_SHARE_PER_YEAR);
    private static final double HIGH = StrictMath.log1p(CashFlows.MAX_RATE_SHARE_PER_YEAR);
    private static final int MAX_EVALUATIONS = 1_000;
    private static final double ROUNDING_SHARE = 1e-13;

    private PresentValueRoots() {
    }

    /** The values of u = ln(1 + r), ascending, where the present value is zero. */
    static List<Double> logGrowthFactors(double... flows) {
        if (CashFlows.signChanges(flows) == 0) {
            return List.of();
        }
        double pivot = pivot(flows);
        double[] slope = new double[flows.length];
        for (int year = 0; year < flows.length; year++) {
            slope[year] = flows[year] * (year - pivot);
        }
        List<Double> ends = new ArrayList<>();
        ends.add(LOW);
        ends.addAll(logGrowthFactors(slope));
        ends.add(HIGH);
        return zerosBetween(ends, flows, pivot);
    }

    private static List<Double> zerosBetween(List<Double> ends, double[] flows, double pivot) {
        List<Double> zeros = new ArrayList<>();
        for (int i = 0; i < ends.size(); i++) {
            double sign = sign(flows, pivot, ends.get(i));
            if (sign == 0) {
                zeros.add(ends.get(i));
            } else if (i + 1 < ends.size() && sign * sign(flows, pivot, ends.get(i + 1)) < 0) {
                zeros.add(new BracketingNthOrderBrentSolver(1e-14, 1e-14, 0, 5).solve(MAX_EVALUATIONS,
                        u -> balanced(flows, pivot, u), ends.get(i), ends.get(i + 1), AllowedSolution.ANY_SIDE));
            }
        }
        return zeros;
    }

    /** Half a year before the flow that first has another sign than those before it. */
    private static double pivot(double[] flows) {
        int year = 0;
        for (double first = 0; first * flows[year] >= 0; year++) {
            first = first == 0 ? Math.signum(flows[year]) : first;
        }
        return year - 0.5;
    }

    private static double balanced(double[] flows, double pivot, double u) {
        double sum = 0;
        for (int year = 0; year < flows.length; year++) {
            sum += flows[year] * StrictMath.exp(-(year - pivot) * u);
        }
        return sum;
    }

    /** The sign of the present value, 0 when it is lost in rounding: so a value that only touches zero is found too. */
    private static double sign(double[] flows, double pivot, double u) {
        double[] magnitudes = new double[flows.length];
        for (int year = 0; year < flows.length; year++) {
            magnitudes[year] = Math.abs(flows[year]);
        }
        double value = balanced(flows, pivot, u);
        return Math.abs(value) <= ROUNDING_SHARE * balanced(magnitudes, pivot, u) ? 0 : Math.signum(value);
    }
}
