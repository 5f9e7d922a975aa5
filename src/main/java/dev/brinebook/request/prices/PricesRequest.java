package dev.brinebook.request.prices;

import dev.brinebook.api.About;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.payback.Prices;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;

@About("What salt, water and service cost, all in one currency. Usual prices of the household's country stand in where none are given,"
        + " so with another currency give salt, water and sewer.")
public record PricesRequest(
        @Property(value = "Salt by the bag.", fallback = "8.16 USD for 40 lb, which is 0.45 USD/kg; elsewhere the usual"
                + " price of the country") SaltBag saltBag,
        @Property(value = "Water, by the price of a further gallon: fixed charges are not saved.",
                fallback = "2.90 USD per 1,000 gal,"
                + " elsewhere the usual price of the country; 0 from a private well") WaterPrice water,
        @Property(value = "Sewer, by the price of a further gallon.",
                fallback = "4.17 USD per 1,000 gal, elsewhere"
                + " the usual price of the country; 0 where there is a septic system, as is taken of a private well unless the request"
                + " says otherwise") WaterPrice sewer,
        @Property(value = "A service visit.", fallback = "100 of the currency; visits are counted only where a request gives them")
        Money serviceVisit,
        @Property(value = "Year whose prices these are. Nothing is carried from one year's prices to another's: give all of"
                + " one year.", min = 1990, max = 2100, fallback = "that of the usual prices for those that are left out", example = "2026")
        Integer priceYear,
        @Property(value = "Growth of all prices, nominal.", min = 100 * Prices.MIN_GROWTH_SHARE_PER_YEAR,
                max = 100 * Prices.MAX_GROWTH_SHARE_PER_YEAR, unit = "percent a year", fallback = "4", example = "4")
        BigDecimal growthPercentPerYear,
        @Property(value = "Discount rate, nominal: it must not be a real rate while growth is nominal.",
                min = 100 * Prices.MIN_DISCOUNT_SHARE_PER_YEAR, max = 100 * Prices.MAX_DISCOUNT_SHARE_PER_YEAR,
                unit = "percent a year", fallback = "5.575", example = "5.575") BigDecimal discountPercentPerYear)
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
                at.add(pointer, Code.INCONSISTENT, Message.of("must be in {0} like the other prices", first));
            }
            if (money.value() != null && !(money.value().signum() >= 0 && money.value().doubleValue() <= MAX_AMOUNT)) {
                at.add(pointer, Code.OUT_OF_RANGE, Message.of("must be from 0 to {0}", Text.number(MAX_AMOUNT)));
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
