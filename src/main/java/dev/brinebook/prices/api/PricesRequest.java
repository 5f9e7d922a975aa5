package dev.brinebook.prices.api;

import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.payback.NominalDiscount;
import dev.brinebook.payback.Prices;
import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.VolumeUnit;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.quantity.api.Money;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.Map;

@About("What salt, water and service cost, all in one currency. Prices of the United States stand in where none are given,"
        + " so with another currency give salt, water and sewer.")
public record PricesRequest(
        @Property(value = "Salt by the bag.", fallback = "8.16 USD for 40 lb, which is 0.45 USD/kg") SaltBag saltBag,
        @Property(value = "Water, by the price of a further gallon: fixed charges are not saved.",
                fallback = "2.90 USD per 1,000 gal; 0 from a private well") WaterPrice water,
        @Property(value = "Sewer, by the price of a further gallon.",
                fallback = "4.17 USD per 1,000 gal; 0 where there is a septic system, as is taken of a private well unless the"
                + " request says otherwise") WaterPrice sewer,
        @Property(value = "A service visit.", fallback = "100 USD; visits are counted only where a request gives them")
        Money serviceVisit,
        @Property(value = "Year whose prices these are. Nothing is carried from one year's prices to another's: give all of"
                + " one year.", min = 1990, max = 2100, fallback = "2023 for the prices that are left out", example = "2026")
        Integer priceYear,
        @Property(value = "Growth of all prices, nominal.", min = 100 * Prices.MIN_GROWTH_SHARE_PER_YEAR,
                max = 100 * Prices.MAX_GROWTH_SHARE_PER_YEAR, unit = "percent a year", fallback = "4", example = "4")
        BigDecimal growthPercentPerYear,
        @Property(value = "Discount rate, nominal: it must not be a real rate while growth is nominal.",
                min = 100 * Prices.MIN_DISCOUNT_SHARE_PER_YEAR, max = 100 * Prices.MAX_DISCOUNT_SHARE_PER_YEAR,
                unit = "percent a year", fallback = "5.575", example = "5.575") BigDecimal discountPercentPerYear)
        implements Checked {

    private static final PricesRequest NONE = new PricesRequest(null, null, null, null, null, null, null);
    /** A bag of 40 lb, the usual size of the US trade. Source: [CP-PRICES]. */
    private static final double DEFAULT_BAG_KILOGRAMS = 40 * Exact.POUND_KILOGRAMS;
    /** With the least bag and volume accepted, no price passes {@link Prices#MAX_PRICE}. */
    public static final double MAX_AMOUNT = 1_000_000;
    /** Year of the defaults. Source: [CP-PRICES] and [METRO-WATER]. */
    private static final int DEFAULT_PRICE_YEAR = 2023;
    private static final Message OWN_WELL = Message.of("0, a well of one's own; pumping is left out");
    private static final Message OWN_SEWAGE = Message.of("0, a septic system of one's own");
    private static final Currency DEFAULT_CURRENCY = Currency.getInstance("USD");

    /** {@code given}, or prices left to their defaults. */
    public static PricesRequest orNone(PricesRequest given) {
        return given == null ? NONE : given;
    }

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
        boolean whole = saltBag != null && water != null && sewer != null;
        if (first != null && !first.equals(DEFAULT_CURRENCY.getCurrencyCode()) && !whole && !at.here()) {
            at.add(Code.INCONSISTENT, Message.of("must give saltBag, water and sewer when they are not in USD: the"
                    + " defaults are"));
        }
    }

    private Map<String, Money> given() {
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

    /** The one currency of all amounts. */
    public Currency currency() {
        return given().values().stream().map(Money::currency).findFirst().orElse(DEFAULT_CURRENCY);
    }

    /** Salt in a bag, with its default told to {@code explanation}. */
    public double bagKilograms(Explanation explanation) {
        return explanation.orDefault("prices.saltBag.mass", saltBag == null ? null : saltBag.mass(), DEFAULT_BAG_KILOGRAMS,
                explanation.inUnits(Message.of("{0} {1}", 40, "lb"), Text.of(AnswerUnits.METRIC.mass(DEFAULT_BAG_KILOGRAMS))));
    }

    private double bagKilograms() {
        return saltBag == null ? DEFAULT_BAG_KILOGRAMS : saltBag.mass().inBase();
    }

    /**
     * The prices per kilogram, cubic metre and visit, with every default told to {@code explanation}.
     *
     * @param ownWell whether the water comes from a well, so that none is billed unless a price is given
     * @param ownSewage whether the waste water stays on the ground, as that of a private well mostly does, so that none is billed
     *     unless a price is given
     */
    public Prices toDomain(boolean ownWell, boolean ownSewage, Explanation explanation) {
        Prices usual = Prices.unitedStates2023();
        double salt = saltBag == null ? usual.saltPerKilogram() : saltBag.price().value().doubleValue() / bagKilograms();
        note("prices.saltBag", salt, Message.verbatim("kg"), saltBag == null, explanation);
        double waterPrice = perCubicMetre("prices.water", water, ownWell ? OWN_WELL : null, usual.waterPerCubicMetre(),
                explanation);
        double sewerPrice = perCubicMetre("prices.sewer", sewer, ownSewage ? OWN_SEWAGE : null, usual.sewerPerCubicMetre(),
                explanation);
        double visit = serviceVisit == null ? usual.perServiceVisit() : serviceVisit.value().doubleValue();
        note("prices.serviceVisit", visit, Message.of("visit"), serviceVisit == null, explanation);
        explanation.assume("prices.priceYear", priceYearInWords(), priceYear == null ? Origin.DEFAULT : Origin.CALLER);
        double growth = explanation.orDefault("prices.growthPercentPerYear", growthPercentPerYear,
                100 * usual.growthSharePerYear(), percent -> Message.of("{0} percent a year", percent));
        double discount = explanation.orDefault("prices.discountPercentPerYear", discountPercentPerYear,
                100 * NominalDiscount.DEFAULT_SHARE_PER_YEAR, this::discountInWords);
        return new Prices(salt, waterPrice, sewerPrice, visit, growth / 100, discount / 100);
    }

    private Message priceYearInWords() {
        if (priceYear == null) {
            return Message.of("{0} where they are left out, as the caller's elsewhere", DEFAULT_PRICE_YEAR);
        }
        return given().size() < 3 ? Message.of("{0}, and {1} for what is left out", priceYear, DEFAULT_PRICE_YEAR)
                : Message.of("{0}", priceYear);
    }

    private Message discountInWords(BigDecimal percent) {
        return discountPercentPerYear == null ? Message.of("{0} percent a year, 3 % real and 2.5 % inflation", percent)
                : Message.of("{0} percent a year", percent);
    }

    /** The price given, else none for the reason {@code whyNone}, where there is one, else {@code usual}. */
    private double perCubicMetre(String name, WaterPrice given, Message whyNone, double usual, Explanation explanation) {
        if (given == null && whyNone != null) {
            explanation.assume(name, whyNone, Origin.DERIVED);
            return 0;
        }
        double price = given == null ? usual : given.perCubicMetre();
        note(name, price, Message.verbatim("m3"), given == null, explanation);
        if (given == null) {
            double gallons = 1000 * Prices.ASSUMED_1000_US_GALLONS_PER_MONTH;
            BigDecimal fixed = Text.number(100 * Prices.ASSUMED_FIXED_SHARE_OF_BILL);
            explanation.assume(name + ".fixedShare", explanation.inUnits(Message.of("{0} % of the bill is fixed and not saved, the"
                    + " rest is for {1} US gallons a month", fixed, Text.number(gallons)), Message.of("{0} % of the bill is fixed and"
                    + " not saved, the rest is for {1} a month", fixed, Text.of(AnswerUnits.METRIC.volume(
                    VolumeUnit.US_GALLON.toBase(gallons))))), Origin.DEFAULT);
        }
        return price;
    }

    private void note(String name, double price, Message per, boolean isDefault, Explanation explanation) {
        explanation.assume(name, isDefault ? usual(Text.number(price), per)
                : Message.of("{0} {1} per {2}", Text.number(price), currency().getCurrencyCode(), per),
                isDefault ? Origin.DEFAULT : Origin.CALLER);
    }

    private Message usual(BigDecimal price, Message per) {
        String code = currency().getCurrencyCode();
        return currency().equals(DEFAULT_CURRENCY)
                ? Message.of("{0} {1} per {2}, United States, price level of 2023", price, code, per)
                : Message.of("{0} {1} per {2}, the number of the United States in USD, not converted", price, code, per);
    }
}
