// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.household.Country;
import dev.brinebook.quantity.Exact;
import dev.brinebook.source.Table;
import java.util.Currency;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Default prices where only the country is known.
 *
 * <p>Source: United States [CP-PRICES] and [METRO-WATER]; others [USUAL-PRICES].
 *
 * @param country the country
 * @param currency its money
 * @param prices prices and how money is carried through the years
 * @param bagKilograms salt in a usual bag
 * @param year whose prices these are
 * @param withoutFixedCharges whether the fixed part of bills is left out, which nobody saves
 */
public record UsualPrices(Country country, Currency currency, Prices prices, double bagKilograms, int year,
        boolean withoutFixedCharges) {

    /** Source: [CP-PRICES]. */
    public static final int US_BAG_POUNDS = 40;
    private static final UsualPrices UNITED_STATES = new UsualPrices(Country.UNITED_STATES, Country.UNITED_STATES.currency(),
            Prices.unitedStates2023(), US_BAG_POUNDS * Exact.POUND_KILOGRAMS, 2023, true);
    private static final Map<Country, UsualPrices> OTHERS = Table.read("/prices/usual-prices.csv", ',', 6).stream()
            .map(UsualPrices::of).collect(Collectors.toMap(UsualPrices::country, Function.identity()));

    /** Those of a country. */
    public static UsualPrices of(Country country) {
        return country == Country.UNITED_STATES ? UNITED_STATES : OTHERS.get(country);
    }

    /** Key of the source of the price of salt. */
    public String saltSourceKey() {
        return country == Country.UNITED_STATES ? "CP-PRICES" : "USUAL-PRICES";
    }

    /** Key of the source of the prices of water. */
    public String waterSourceKey() {
        return country == Country.UNITED_STATES ? "METRO-WATER" : "USUAL-PRICES";
    }

    private static UsualPrices of(String[] row) {
        Prices usual = Prices.unitedStates2023();
        Country country = Country.valueOf(row[0]);
        return new UsualPrices(country, country.currency(), new Prices(Double.parseDouble(row[1]),
                Double.parseDouble(row[2]), Double.parseDouble(row[3]), usual.perServiceVisit(), usual.growthSharePerYear(),
                usual.discountSharePerYear()), Double.parseDouble(row[4]), Integer.parseInt(row[5]), false);
    }
}
