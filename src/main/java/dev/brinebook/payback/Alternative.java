// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import java.util.Objects;
import java.util.function.IntToDoubleFunction;

/**
 * One alternative, with what it costs to have and to run.
 *
 * @param name the name the caller gave it
 * @param outlay what it costs to have
 * @param yearly what its salt, water and service cost in the first year, at today's prices
 */
public record Alternative(String name, Outlay outlay, YearlyCost yearly) {

    public Alternative {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(outlay, "outlay");
        Objects.requireNonNull(yearly, "yearly");
    }

    /**
     * All payments, today first: the outlay and the running costs.
     *
     * <pre>P_t = O_t + R (1 + g)^(t − 1),   P_0 = O_0</pre>
     *
     * <p>P payment of year t, in the currency of the prices; O {@link Outlay#payments}; R running costs of the first year; g growth
     * of prices, share per year.
     * Validity: 1 to {@link CashFlows#MAX_YEARS} years.
     * Source: as {@link Outlay} and {@link CashFlows#growing}.
     * Deviation: as there.
     */
    public double[] payments(int horizonYears, Prices prices) {
        return payments(horizonYears, prices, Outlay.priceLevels(prices.growthSharePerYear()));
    }

    /** The same, by the {@link Outlay#priceLevels} of the prices. */
    double[] payments(int horizonYears, Prices prices, IntToDoubleFunction priceLevels) {
        double[] payments = outlay.payments(horizonYears, priceLevels);
        CashFlows.addGrowing(payments, 1, yearly.total(), prices.growthSharePerYear());
        return payments;
    }
}
