// SPDX-License-Identifier: Apache-2.0
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
    /** US dollars a month, 2023, as corrected. Source: [METRO-WATER] */
    public static final double WATER_BILL_USD_PER_MONTH = 49.53;
    /** US dollars a month, 2023. Source: [METRO-WATER] */
    public static final double SEWER_BILL_USD_PER_MONTH = 71.16;
    /** Thousands of US gallons that those bills are for. The source says "average household consumption" and no number. */
    public static final double ASSUMED_1000_US_GALLONS_PER_MONTH = 11;
    /**
     * Part of a bill that is paid whatever is used, so that saved water does not save it. No marginal price of those cities is at
     * hand: this is the median of 78 utilities that another survey found, of their costs and not of bills. [RATE-SURVEY]
     */
    public static final double ASSUMED_FIXED_SHARE_OF_BILL = 0.355;
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

    /**
     * The default prices of the United States in 2023, in US dollars: about 0.45 per kg of salt, 0.77 and 1.10 per m3. Those of
     * water are what a further cubic metre costs, without the fixed part of the bill.
     */
    public static Prices unitedStates2023() {
        return new Prices(SALT_USD_PER_KILOGRAM, perCubicMetre(WATER_BILL_USD_PER_MONTH),
                perCubicMetre(SEWER_BILL_USD_PER_MONTH),
                ASSUMED_USD_PER_SERVICE_VISIT, GROWTH_SHARE_PER_YEAR, NominalDiscount.DEFAULT_SHARE_PER_YEAR);
    }

    private static double perCubicMetre(double billPerMonth) {
        return billPerMonth * (1 - ASSUMED_FIXED_SHARE_OF_BILL) / (ASSUMED_1000_US_GALLONS_PER_MONTH * Exact.US_GALLON_LITRES);
    }
}
