package dev.brinebook.payback;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.Exact;

/**
 * Prices of what a softener uses, all in one currency, and how money is carried through the years. Growth and discount
 * must both be nominal or both be real; the defaults are nominal, see {@link NominalDiscount}.
 *
 * <p>Not for money that is paid: amounts become decimals, rounded to the cent, at the edge only.
 *
 * @param saltPerKilogram of salt
 * @param waterPerCubicMetre of water bought
 * @param sewerPerCubicMetre of water sent to the sewer; 0 with a septic system
 * @param perServiceVisit of one paid visit
 * @param growthSharePerYear by which all these prices rise
 * @param discountSharePerYear by which money later counts for less than money now
 */
public record Prices(double saltPerKilogram, double waterPerCubicMetre, double sewerPerCubicMetre,
        double perServiceVisit, double growthSharePerYear, double discountSharePerYear) {

    /** US dollars; retail, 2023. Source: [CP-PRICES] */
    public static final double SALT_USD_PER_KILOGRAM = 0.45;
    /** US dollars for water and sewer together, 2023. Source: [METRO-WATER] */
    public static final double WATER_AND_SEWER_USD_PER_1000_US_GALLONS = 11;
    /** Water's part of the bill; the sewer's is the rest. Source: [METRO-WATER] 50.61 of 121.77 USD per month */
    public static final double WATER_SHARE = 0.42;
    /** Nominal, as bills are. Source: [METRO-WATER]; studies range from 4 to 8 % */
    public static final double GROWTH_SHARE_PER_YEAR = 0.04;
    /** US dollars. No source: it only counts where the two softeners differ in visits. */
    public static final double ASSUMED_USD_PER_SERVICE_VISIT = 100;

    /** In any currency, of which some count in millions. */
    public static final double MAX_PRICE = 1e9;
    public static final double MIN_GROWTH_SHARE_PER_YEAR = -0.2;
    public static final double MAX_GROWTH_SHARE_PER_YEAR = 0.5;
    public static final double MIN_DISCOUNT_SHARE_PER_YEAR = 0;
    public static final double MAX_DISCOUNT_SHARE_PER_YEAR = 0.5;

    public Prices {
        Guard.within(saltPerKilogram, 0, MAX_PRICE, "saltPerKilogram");
        Guard.within(waterPerCubicMetre, 0, MAX_PRICE, "waterPerCubicMetre");
        Guard.within(sewerPerCubicMetre, 0, MAX_PRICE, "sewerPerCubicMetre");
        Guard.within(perServiceVisit, 0, MAX_PRICE, "perServiceVisit");
        Guard.within(growthSharePerYear, MIN_GROWTH_SHARE_PER_YEAR, MAX_GROWTH_SHARE_PER_YEAR, "growthSharePerYear");
        Guard.within(discountSharePerYear, MIN_DISCOUNT_SHARE_PER_YEAR, MAX_DISCOUNT_SHARE_PER_YEAR,
                "discountSharePerYear");
    }

    /** The default prices of the United States in 2023, in US dollars: about 0.45 per kg of salt, 1.22 and 1.69 per m3. */
    public static Prices unitedStates2023() {
        double perCubicMetre = WATER_AND_SEWER_USD_PER_1000_US_GALLONS / Exact.US_GALLON_LITRES;
        return new Prices(SALT_USD_PER_KILOGRAM, perCubicMetre * WATER_SHARE, perCubicMetre * (1 - WATER_SHARE),
                ASSUMED_USD_PER_SERVICE_VISIT, GROWTH_SHARE_PER_YEAR, NominalDiscount.DEFAULT_SHARE_PER_YEAR);
    }
}
