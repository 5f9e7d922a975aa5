// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.prices;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.household.Country;
import dev.brinebook.payback.NominalDiscount;
import dev.brinebook.payback.Prices;
import dev.brinebook.payback.UsualPrices;
import dev.brinebook.quantity.VolumeUnit;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.text.Message;
import java.util.Currency;

/**
 * Prices as given, with the usual ones of a country for those that are not.
 *
 * @param given the prices of the request
 * @param usual the defaults
 */
public record LocalPrices(PricesRequest given, UsualPrices usual) {

    private static final String PERCENT_A_YEAR = "%/year";
    private static final Message OWN_WELL = Message.of("localPrices.of0PrivateWellWithout");
    private static final Message OWN_SEWAGE = Message.of("localPrices.of0PrivateSepticSystem");

    /** Both may be null. */
    public static LocalPrices of(PricesRequest given, HouseholdRequest household) {
        return new LocalPrices(given == null ? PricesRequest.NONE : given,
                UsualPrices.of(Country.orAssumed(household == null ? null : household.country())));
    }

    /** The same by a country; both may be null. */
    public static LocalPrices of(PricesRequest given, Country country) {
        return new LocalPrices(given == null ? PricesRequest.NONE : given, UsualPrices.of(Country.orAssumed(country)));
    }

    /** Reports prices of another currency than that of the country, unless they are all given. {@code at} is the whole request. */
    public static void check(PricesRequest prices, HouseholdRequest household, Violations at) {
        if (prices == null || at.at("prices").here()) {
            return;
        }
        check(prices, household == null ? null : household.country(), at);
    }

    /** The same by a country, which may be null. */
    public static void check(PricesRequest prices, Country country, Violations at) {
        if (prices == null || at.at("prices").here()) {
            return;
        }
        LocalPrices local = of(prices, country);
        boolean whole = prices.saltBag() != null && prices.water() != null && prices.sewer() != null;
        if (!whole && !local.isLocal()) {
            at.add("prices", Code.INCONSISTENT, Message.of("problem.prices.giveSaltbagWaterSewer",
                    local.usual.currency().getCurrencyCode()));
        }
    }

    /** The one currency of all amounts. */
    public Currency currency() {
        return given.given().values().stream().findFirst().map(money -> money.currency()).orElse(usual.currency());
    }

    private boolean isLocal() {
        return currency().equals(usual.currency());
    }

    /** Salt in a bag, with its default recorded in {@code explanation}. */
    public double bagKilograms(Explanation explanation) {
        return explanation.resolve(given.saltBag() == null ? null : given.saltBag().mass(), usual.bagKilograms(),
                Resolved.of("/prices/saltBag/mass", AnswerUnits.of(explanation).mass(usual.bagKilograms()))
                        .byCountry(usual.saltSourceKey()));
    }

    /**
     * The prices per kilogram, cubic metre and visit, with every default recorded in {@code explanation}.
     *
     * @param ownWell whether the water comes from a well, so that none is billed unless a price is given
     * @param ownSewage whether the waste water stays on the ground, as that of a private well mostly does, so that none is billed
     *     unless a price is given
     */
    public Prices toDomain(boolean ownWell, boolean ownSewage, Explanation explanation) {
        Prices prices = usual.prices();
        double salt = saltPerKilogram(explanation);
        double waterPrice = waterPerCubicMetre(ownWell, explanation);
        double sewerPrice = sewerPerCubicMetre(ownSewage, explanation);
        Money visitPrice = given.serviceVisit();
        double visit = explanation.resolve(visitPrice == null ? null : visitPrice.value(), prices.perServiceVisit(),
                Resolved.of("/prices/serviceVisit", prices.perServiceVisit(), currency().getCurrencyCode()).byDefault("OWN-ASSUMPTION"));
        explanation.assume(priceYear());
        double growth = explanation.resolve(given.growthPercentPerYear(), 100 * prices.growthSharePerYear(), Resolved.of(
                "/prices/growthPercentPerYear", 100 * prices.growthSharePerYear(), PERCENT_A_YEAR).byDefault("METRO-WATER"));
        double discount = explanation.resolve(given.discountPercentPerYear(), 100 * NominalDiscount.DEFAULT_SHARE_PER_YEAR, Resolved.of(
                "/prices/discountPercentPerYear", 100 * NominalDiscount.DEFAULT_SHARE_PER_YEAR, PERCENT_A_YEAR).byDefault("CFR-436")
                .noting(Message.of("localPrices.year3Real2")));
        return new Prices(salt, waterPrice, sewerPrice, visit, growth / 100, discount / 100);
    }

    /** The price of a kilogram of salt, with a default recorded. */
    public double saltPerKilogram(Explanation explanation) {
        double salt = given.saltBag() == null ? usual.prices().saltPerKilogram()
                : given.saltBag().price().value().doubleValue() / given.saltBag().mass().inBase();
        assume("/prices/saltBag", salt, "kg", given.saltBag() == null, usual.saltSourceKey(), explanation);
        return salt;
    }

    /** The price of a cubic metre of water, with a default recorded; of an own well none unless it is given. */
    public double waterPerCubicMetre(boolean ownWell, Explanation explanation) {
        return perCubicMetre("/prices/water", given.water(), ownWell ? OWN_WELL : null, usual.prices().waterPerCubicMetre(), explanation);
    }

    /** The price of a cubic metre of waste water, with a default recorded; where it stays on the ground none unless it is given. */
    public double sewerPerCubicMetre(boolean ownSewage, Explanation explanation) {
        return perCubicMetre("/prices/sewer", given.sewer(), ownSewage ? OWN_SEWAGE : null, usual.prices().sewerPerCubicMetre(),
                explanation);
    }

    private Resolved priceYear() {
        String pointer = "/prices/priceYear";
        if (given.priceYear() == null) {
            return Resolved.of(pointer, usual.year(), null).byCountry(usual.waterSourceKey())
                    .noting(Message.of("localPrices.pricesGivenYearYour"));
        }
        Resolved year = Resolved.of(pointer, given.priceYear(), null);
        return given.given().size() < 3 ? year.noting(Message.of("localPrices.pricesGiven", year(usual.year()))) : year;
    }

    /** The price given, else none for the reason {@code whyNone}, where there is one, else {@code usually}. */
    private double perCubicMetre(String pointer, WaterPrice price, Message whyNone, double usually, Explanation explanation) {
        if (price == null && whyNone != null) {
            explanation.assume(Resolved.of(pointer, 0, per("m3")).estimated("OWN-ASSUMPTION").noting(whyNone));
            return 0;
        }
        double perCubicMetre = price == null ? usually : price.perCubicMetre();
        assume(pointer, perCubicMetre, "m3", price == null, usual.waterSourceKey(), explanation);
        if (price == null && usual.withoutFixedCharges()) {
            explanation.assume(Resolved.of("fixedShareOfBill", 100 * Prices.ASSUMED_FIXED_SHARE_OF_BILL, "%").byDefault("RATE-SURVEY")
                    .noting(Message.of("localPrices.billFixedSavedRest")));
            explanation.assume(Resolved.of("billedWaterPerMonth", AnswerUnits.of(explanation).volume(VolumeUnit.US_GALLON.toBase(
                    1000 * Prices.ASSUMED_1000_US_GALLONS_PER_MONTH))).byDefault("OWN-ASSUMPTION"));
        }
        return perCubicMetre;
    }

    private String per(String unit) {
        return currency().getCurrencyCode() + "/" + unit;
    }

    /** A year, in which thousands are not set apart. */
    private static String year(int year) {
        return Integer.toString(year);
    }

    private void assume(String pointer, double price, String per, boolean isUsual, String sourceKey, Explanation explanation) {
        Resolved resolved = Resolved.of(pointer, price, per(per));
        explanation.assume(isUsual ? resolved.byCountry(sourceKey).noting(Message.of("assumed.prices.perUsualPricePrice",
                Message.of(usual.country()), year(usual.year()))) : resolved);
    }
}
