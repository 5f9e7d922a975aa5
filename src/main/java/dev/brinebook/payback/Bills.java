// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.guard.Guard;
import java.util.Arrays;
import java.util.Objects;

/**
 * Turns a year's use into bills: salt by weight or in whole bags, water and sewer by their tariffs on top of what the
 * household uses.
 *
 * @param prices prices of salt and visits, and how money is carried through the years
 * @param water tariff of water
 * @param sewer tariff of the sewer
 * @param householdCubicMetres water of the household in a year, on top of which the softener's comes
 * @param bags how salt is bought, none for by weight
 * @param horizonYears years over which whole bags are counted
 */
public record Bills(Prices prices, WaterTariff water, WaterTariff sewer, double householdCubicMetres, Bags bags,
        int horizonYears) {

    private static final double LITRES_PER_CUBIC_METRE = 1_000;

    /**
     * Salt in whole bags.
     *
     * @param kilograms salt in one
     * @param perTrip bought at a time
     */
    public record Bags(double kilograms, int perTrip) {
    }

    public Bills {
        Objects.requireNonNull(prices, "prices");
        Objects.requireNonNull(water, "water");
        Objects.requireNonNull(sewer, "sewer");
        Guard.within(householdCubicMetres, 0, WaterTariff.MAX_CUBIC_METRES, "householdCubicMetres");
        Guard.within(horizonYears, 1, CashFlows.MAX_YEARS, "horizonYears");
    }

    /** Salt by weight, and water at the one price of {@code prices}. */
    public Bills(Prices prices, int horizonYears) {
        this(prices, WaterTariff.flat(prices.waterPerCubicMetre()), WaterTariff.flat(prices.sewerPerCubicMetre()), 0, null,
                horizonYears);
    }

    /**
     * Cost of a year's use at today's prices.
     *
     * <pre>salt = m p_s,   water = c_w(H + V) − c_w(H),   sewer = c_d(H + V) − c_d(H),   service = n p_n</pre>
     *
     * <p>m salt bought, kg per year; p_s its price per kg; c_w, c_d yearly cost by the tariffs of water and sewer; H water of the
     * household and V of the softener, m³ per year; n visits per year; p_n price of one.
     * Validity: that of {@link WaterTariff} and {@link WholeBags}.
     * Source: what a bill is, by definition.
     * Deviation: whole bags enter as their mean over the horizon.
     */
    public YearlyCost of(YearlyUse use) {
        double cubicMetres = use.waterLitres() / LITRES_PER_CUBIC_METRE;
        return new YearlyCost(boughtKilogramsPerYear(use.saltKilograms()) * prices.saltPerKilogram(),
                water.addedCost(householdCubicMetres, cubicMetres), sewer.addedCost(householdCubicMetres, cubicMetres),
                use.serviceVisits() * prices.perServiceVisit());
    }

    private double boughtKilogramsPerYear(double usedKilograms) {
        return bags == null ? usedKilograms : bags.kilograms() * Arrays.stream(WholeBags.boughtPerYear(usedKilograms,
                bags.kilograms(), bags.perTrip(), horizonYears)).sum() / horizonYears;
    }
}
