package dev.brinebook.payback;

import dev.brinebook.guard.Figure;
import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoAnswer;
import java.util.Comparator;
import java.util.List;

/**
 * The internal rate of return, with the warning that belongs to it: flows that change sign more than once may have
 * several rates, or none, and then the rate says little. The net present value does not have this flaw.
 *
 * <p>Which of several rates: the one nearest zero, as numeric libraries for finance choose. The flows -100, 100, 0, -7
 * have the rates -8.33 % and -67.89 %; a search that starts at a guess finds one or the other by luck of the guess.
 *
 * @param rate share per year; none when the flows never change sign, or when no rate lies in the range searched
 * @param signChanges how often the flows change sign
 */
public record RateOfReturn(Figure rate, int signChanges) {

    /** True when there is a rate and, by the rule of signs, there can be no other. */
    public boolean unique() {
        return rate.exists() && signChanges == 1;
    }

    /**
     * The discount rate at which the flows are worth nothing today.
     * <pre>0 = sum over t from 0 of F(t) / (1 + r)^t</pre>
     * F(t) flow at the end of year t, any currency; r rate, share per year.
     * <p>Valid for up to {@link CashFlows#MAX_YEARS} years; rates from
     * {@link CashFlows#MIN_RATE_SHARE_PER_YEAR} to {@link CashFlows#MAX_RATE_SHARE_PER_YEAR}.
     * <p>Source: [NIST-HB135] internal rate of return
     * <p>Deviation: the handbook leaves the choice among several rates open; here it is the one nearest zero.
     */
    public static RateOfReturn of(double... flows) {
        int changes = CashFlows.signChanges(flows);
        if (changes == 0) {
            return new RateOfReturn(Figure.none(NoAnswer.NO_SIGN_CHANGE), 0);
        }
        Figure nearestZero = all(flows).stream().min(Comparator.comparingDouble(Math::abs)).map(Figure::of)
                .orElse(Figure.none(NoAnswer.NO_RATE_IN_RANGE));
        return new RateOfReturn(nearestZero, changes);
    }

    /** Every rate in the range at which the flows are worth nothing today, ascending; two within 1e-6 may count as one. */
    public static List<Double> all(double... flows) {
        Guard.within(flows.length, 1, CashFlows.MAX_YEARS + 1, "number of flows");
        double largest = 0;
        for (double flow : flows) {
            largest = Math.max(largest, Math.abs(Guard.finite(flow, "flow")));
        }
        double[] scaled = new double[flows.length];
        for (int year = 0; year < flows.length; year++) {
            scaled[year] = largest == 0 ? 0 : flows[year] / largest;
        }
        return PresentValueRoots.logGrowthFactors(scaled).stream().map(StrictMath::expm1).toList();
    }
}
