package dev.brinebook.payback;

import java.util.Objects;

/**
 * One way of going on.
 *
 * @param name what the caller calls it
 * @param outlay what it costs to have
 * @param yearly what its salt, water and service cost in the first year, at today's prices
 */
public record Alternative(String name, Outlay outlay, YearlyCost yearly) {

    public Alternative {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(outlay, "outlay");
        Objects.requireNonNull(yearly, "yearly");
    }

    /** All that is paid, today first: the outlay and the running costs, which grow with the prices. */
    public double[] payments(int horizonYears, Prices prices) {
        double[] payments = outlay.payments(horizonYears, prices.growthSharePerYear());
        double[] running = CashFlows.growing(yearly.total(), prices.growthSharePerYear(), horizonYears);
        for (int year = 1; year <= horizonYears; year++) {
            payments[year] += running[year - 1];
        }
        return payments;
    }
}
