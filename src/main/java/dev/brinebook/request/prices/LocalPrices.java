// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.prices;

import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Text;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.household.Country;
import dev.brinebook.payback.NominalDiscount;
import dev.brinebook.payback.Prices;
import dev.brinebook.payback.UsualPrices;
import dev.brinebook.quantity.VolumeUnit;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.Currency;

/**
 * Prices as given, with the usual ones of a country for those that are not.
 *
 * @param given the prices of the request
 * @param usual the defaults
 */
public record LocalPrices(PricesRequest given, UsualPrices usual) {

    private static final Message OWN_WELL = Message.of("localPrices.of0PrivateWellWithout");
    private static final Message OWN_SEWAGE = Message.of("localPrices.of0PrivateSepticSystem");

    /** Both may be null. */
    public static LocalPrices of(PricesRequest given, HouseholdRequest household) {
        return new LocalPrices(given == null ? PricesRequest.NONE : given,
                UsualPrices.of(Country.orAssumed(household == null ? null : household.country())));
    }

    /** Reports prices of another currency than that of the country, unless they are all given. {@code at} is the whole request. */
    public static void check(PricesRequest prices, HouseholdRequest household, Violations at) {
        if (prices == null || at.at("prices").here()) {
            return;
        }
        LocalPrices local = of(prices, household);
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
        return explanation.orDefault("prices.saltBag.mass", given.saltBag() == null ? null : given.saltBag().mass(), usual.bagKilograms(),
                explanation.inUnits(Text.of(AnswerUnits.US.mass(usual.bagKilograms())),
                        Text.of(AnswerUnits.METRIC.mass(usual.bagKilograms()))));
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
        double salt = given.saltBag() == null ? prices.saltPerKilogram()
                : given.saltBag().price().value().doubleValue() / given.saltBag().mass().inBase();
        note("prices.saltBag", salt, "kg", given.saltBag() == null, explanation);
        double waterPrice = perCubicMetre("prices.water", given.water(), ownWell ? OWN_WELL : null, prices.waterPerCubicMetre(),
                explanation);
        double sewerPrice = perCubicMetre("prices.sewer", given.sewer(), ownSewage ? OWN_SEWAGE : null, prices.sewerPerCubicMetre(),
                explanation);
        double visit = given.serviceVisit() == null ? prices.perServiceVisit() : given.serviceVisit().value().doubleValue();
        explanation.assume("prices.serviceVisit", given.serviceVisit() == null ? Message.of("assumed.prices.perVisitAssumed",
                money(visit)) : Message.of("assumed.prices.perVisit", money(visit)),
                given.serviceVisit() == null ? Origin.DEFAULT : Origin.CALLER);
        explanation.assume("prices.priceYear", priceYearInWords(), given.priceYear() == null ? Origin.DEFAULT : Origin.CALLER);
        double growth = explanation.orDefault("prices.growthPercentPerYear", given.growthPercentPerYear(),
                100 * prices.growthSharePerYear(), percent -> Message.of("localPrices.year", percent));
        double discount = explanation.orDefault("prices.discountPercentPerYear", given.discountPercentPerYear(),
                100 * NominalDiscount.DEFAULT_SHARE_PER_YEAR, this::discountInWords);
        return new Prices(salt, waterPrice, sewerPrice, visit, growth / 100, discount / 100);
    }

    private Message priceYearInWords() {
        if (given.priceYear() == null) {
            return Message.of("localPrices.pricesGivenYearYour", year(usual.year()));
        }
        return given.given().size() < 3 ? Message.of("localPrices.pricesGiven", year(given.priceYear()), year(usual.year()))
                : Message.of("pattern.value", year(given.priceYear()));
    }

    private Message discountInWords(BigDecimal percent) {
        return given.discountPercentPerYear() == null ? Message.of("localPrices.year3Real2", percent)
                : Message.of("localPrices.year", percent);
    }

    /** The price given, else none for the reason {@code whyNone}, where there is one, else {@code usually}. */
    private double perCubicMetre(String name, WaterPrice price, Message whyNone, double usually, Explanation explanation) {
        if (price == null && whyNone != null) {
            explanation.assume(name, whyNone, Origin.DERIVED);
            return 0;
        }
        double perCubicMetre = price == null ? usually : price.perCubicMetre();
        note(name, perCubicMetre, "m3", price == null, explanation);
        if (price == null && usual.withoutFixedCharges()) {
            double gallons = 1000 * Prices.ASSUMED_1000_US_GALLONS_PER_MONTH;
            BigDecimal fixed = Text.number(100 * Prices.ASSUMED_FIXED_SHARE_OF_BILL);
            explanation.assume(name + ".fixedShare", Message.of("localPrices.billFixedSavedRest", fixed, explanation.inUnits(
                    Text.measure(Text.number(gallons), VolumeUnit.US_GALLON.symbol()),
                    Text.of(AnswerUnits.METRIC.volume(VolumeUnit.US_GALLON.toBase(gallons))))), Origin.DEFAULT);
        }
        return perCubicMetre;
    }

    private Message money(double amount) {
        return Text.measure(Text.number(amount), currency().getCurrencyCode());
    }

    /** A year, in which thousands are not set apart. */
    private static String year(int year) {
        return Integer.toString(year);
    }

    private void note(String name, double price, String per, boolean isDefault, Explanation explanation) {
        explanation.assume(name, isDefault ? Message.of("assumed.prices.perUsualPricePrice", money(price), per,
                Message.of(usual.country()), year(usual.year()))
                : Message.of("assumed.prices.per", money(price), per),
                isDefault ? Origin.DEFAULT : Origin.CALLER);
    }
}
