// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.prices;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.payback.NominalDiscount;
import dev.brinebook.payback.Prices;
import dev.brinebook.payback.UsualPrices;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;

@SchemaDescription("Prices of salt, water and service, all in one currency. Missing prices default to the usual prices of the "
        + "household's country. With another currency, give salt, water and sewer.")
public record PricesRequest(
        @Property(value = "Price of salt, per bag.", fallback = Prices.SALT_USD_PER_KILOGRAM + " USD/kg, in bags of "
                + UsualPrices.US_BAG_POUNDS + " lb; elsewhere the usual price of the country") SaltBag saltBag,
        @Property(value = "Price of each additional volume of water. Leave out fixed charges, which are not saved.",
                fallback = "2.90 USD per 1,000 gal; elsewhere the usual price of the country; 0 for a private well") WaterPrice water,
        @Property(value = "Price of each additional volume of waste water.",
                fallback = "4.17 USD per 1,000 gal; elsewhere the usual price of the country; 0 with a septic system, "
                + "which is assumed for a private well unless the request says otherwise") WaterPrice sewer,
        @Property(value = "Price of a service visit.", min = 0, max = PricesRequest.MAX_AMOUNT,
                fallback = (int) Prices.ASSUMED_USD_PER_SERVICE_VISIT
                + " in the currency; visits cost only if the request gives their number")
        Money serviceVisit,
        @Property(value = "Year of the prices. Prices are not converted between years, so give all for the same year.", min = 1990,
                max = 2100, fallback = "the year of the usual prices", example = "2026")
        Integer priceYear,
        @Property(value = "Nominal growth of all prices.", min = 100 * Prices.MIN_GROWTH_SHARE_PER_YEAR,
                max = 100 * Prices.MAX_GROWTH_SHARE_PER_YEAR, unit = "percent a year",
                byDefault = 100 * Prices.GROWTH_SHARE_PER_YEAR, example = "4")
        BigDecimal growthPercentPerYear,
        @Property(value = "Nominal discount rate. Do not use a real rate, because the growth is nominal.",
                min = 100 * Prices.MIN_DISCOUNT_SHARE_PER_YEAR, max = 100 * Prices.MAX_DISCOUNT_SHARE_PER_YEAR,
                unit = "percent a year", byDefault = 100 * NominalDiscount.DEFAULT_SHARE_PER_YEAR,
                example = "5.575") BigDecimal discountPercentPerYear)
        implements Checked {

    static final PricesRequest NONE = new PricesRequest(null, null, null, null, null, null, null);
    /** With the least bag and volume accepted, no price passes {@link Prices#MAX_PRICE}. */
    public static final double MAX_AMOUNT = 1_000_000;

    @Override
    public void check(Violations at) {
        Map<String, Money> given = given();
        String first = given.values().stream().map(Money::unit).findFirst().orElse(null);
        given.forEach((pointer, money) -> {
            if (!money.unit().equals(first)) {
                at.add(pointer, Code.INCONSISTENT, Message.of("problem.prices.mustLikeOtherPrices", first));
            }
        });
    }

    /** The amounts that are given, by their names. */
    Map<String, Money> given() {
        Map<String, Money> given = new LinkedHashMap<>();
        put(given, "saltBag", saltBag == null ? null : saltBag.price());
        put(given, "water", water == null ? null : water.price());
        put(given, "sewer", sewer == null ? null : sewer.price());
        put(given, "serviceVisit", serviceVisit);
        return given;
    }

    private static void put(Map<String, Money> given, String name, Money money) {
        if (money != null && money.unit() != null) {
            given.put(name, money);
        }
    }
}
