package dev.brinebook.payback;

import dev.brinebook.guard.Guard;

/**
 * What one year costs, or saves, by what it is paid for, at today's prices and in the currency of the prices. A
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

    /** The use of one year at these prices. All regeneration water is taken as bought and as sent to the sewer. */
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
