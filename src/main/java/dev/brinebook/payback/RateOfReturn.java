// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import java.util.Comparator;
import java.util.List;

/**
 * The internal rate of return, with the warning that belongs to it: flows that change sign more than once may have
 * several rates, or none, and then the rate says little. The net present value does not have this flaw.
 *
 * <p>Which of several rates: the one nearest zero, as in numeric libraries for finance. The flows -100, 100, 0, -7
 * have the rates -8.33 % and -67.89 %; a search that starts at a guess finds one or the other depending on the guess.
 *
 * @param rate share per year; none when the flows never change sign, or when no rate lies in the range searched
 * @param signChanges how often the flows change sign
 */
public record RateOfReturn(OptionalResult rate, int signChanges) {

    /** True when there is a rate and, by the rule of signs, there can be no other. */
    public boolean unique() {
        return rate.exists() && signChanges == 1;
    }

    /**
     * Internal rate of return: the discount rate at which the net present value of the flows is zero.
     *
     * <pre>0 = sum over t from 0 of F(t) / (1 + r)^t</pre>
     *
     * <p>F(t) flow at the end of year t, any currency; r rate, share per year.
     * Validity: up to {@link CashFlows#MAX_YEARS} years; rates from
     * {@link CashFlows#MIN_RATE_SHARE_PER_YEAR} to {@link CashFlows#MAX_RATE_SHARE_PER_YEAR}.
     * Source: [NIST-HB135] internal rate of return.
     * Deviation: the handbook leaves the choice among several rates open; here it is the one nearest zero.
     */
    public static RateOfReturn of(double... flows) {
        int changes = CashFlows.signChanges(flows);
        if (changes == 0) {
            return new RateOfReturn(OptionalResult.none(NoResultReason.NO_SIGN_CHANGE), 0);
        }
        OptionalResult nearestZero = all(flows).stream().min(Comparator.comparingDouble(Math::abs)).map(OptionalResult::of)
                .orElse(OptionalResult.none(NoResultReason.NO_RATE_IN_RANGE));
        return new RateOfReturn(nearestZero, changes);
    }

    /** Every rate in the range at which the net present value is zero, ascending; two within 1e-6 may be reported as one. */
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
