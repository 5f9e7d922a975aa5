// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.guard.Guard;

/**
 * Cost, or saving, of one year by item, at today's prices and in the currency of the prices. A
 * difference of two may be negative line by line.
 */
public record YearlyCost(double salt, double water, double sewer, double service) {

    private static final double LITRES_PER_CUBIC_METRE = 1_000;

    public YearlyCost {
        Guard.finite(salt, "salt");
        Guard.finite(water, "water");
        Guard.finite(sewer, "sewer");
        Guard.finite(service, "service");
    }

    /**
     * Cost of one year's use at these prices.
     *
     * <pre>salt = m p_s,   water = V p_w,   sewer = V p_d,   service = n p_n</pre>
     *
     * <p>m salt, kg per year; V regeneration water, m³ per year; n visits per year; p prices per kg, m³ and visit.
     * Validity: that of {@link YearlyUse} and {@link Prices}.
     * Source: what a bill is, by definition.
     * Deviation: all regeneration water is taken as bought and as sent to the sewer.
     */
    public static YearlyCost of(YearlyUse use, Prices prices) {
        double waterCubicMetres = use.waterLitres() / LITRES_PER_CUBIC_METRE;
        return new YearlyCost(use.saltKilograms() * prices.saltPerKilogram(),
                waterCubicMetres * prices.waterPerCubicMetre(), waterCubicMetres * prices.sewerPerCubicMetre(),
                use.serviceVisits() * prices.perServiceVisit());
    }

    /** Line by line, this less {@code other}. */
    public YearlyCost minus(YearlyCost other) {
        return new YearlyCost(salt - other.salt, water - other.water, sewer - other.sewer, service - other.service);
    }

    /** All lines together. */
    public double total() {
        return salt + water + sewer + service;
    }
}
