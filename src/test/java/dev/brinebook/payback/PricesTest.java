// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.brinebook.Printed;
import dev.brinebook.quantity.Exact;
import org.junit.jupiter.api.Test;

class PricesTest {

    private static final Prices USUAL = Prices.unitedStates2023();

    /**
     * Source: U.S. Municipal Water and Sewer Annual Utility Rate Index, 2023, as corrected in December 2023: 49.53 water and 71.16
     * sewer, USD per month. By hand, 64.5 % of them over 11,000 gal: 2.904 and 4.173 USD per 1,000 gal.
     */
    @Test
    void waterIsWorthWhatAFurtherGallonCosts() {
        Printed.assertAgrees("2.904", null, USUAL.waterPerCubicMetre() * Exact.US_GALLON_LITRES);
        Printed.assertAgrees("4.173", null, USUAL.sewerPerCubicMetre() * Exact.US_GALLON_LITRES);
        assertEquals((49.53 + 71.16) / 11, (USUAL.waterPerCubicMetre() + USUAL.sewerPerCubicMetre()) * Exact.US_GALLON_LITRES
                / (1 - Prices.ASSUMED_FIXED_SHARE_OF_BILL), 1e-12, "the whole bill, with its fixed part");
    }

    /** Source: retail range of 7 to 13 USD per bag of 40 lb, common practice. */
    @Test
    void pricesABagOfSaltWithinTheRetailRange() {
        double perBag = USUAL.saltPerKilogram() * 40 * Exact.POUND_KILOGRAMS;
        assertTrue(perBag > 7 && perBag < 13, "per bag " + perBag);
    }

    /** Source: arithmetic, 1.03 * 1.025 - 1. */
    @Test
    void discountsAtANominalRate() {
        assertEquals(0.05575, NominalDiscount.fromReal(0.03, 0.025), 1e-15);
        assertEquals(NominalDiscount.fromReal(NominalDiscount.REAL_DISCOUNT_SHARE_PER_YEAR,
                NominalDiscount.ASSUMED_INFLATION_SHARE_PER_YEAR), USUAL.discountSharePerYear());
        assertThrows(IllegalArgumentException.class, () -> NominalDiscount.fromReal(-1, 0));
        assertThrows(IllegalArgumentException.class, () -> NominalDiscount.fromReal(0, Double.NaN));
    }

    /** The three readings that the Javadoc of {@link NominalDiscount} argues, on its worked number. */
    @Test
    void documentsWhatMixingRealAndNominalDoes() {
        double saving = 113.472;
        double[] nominal = CashFlows.growing(saving, 0.04, 10);
        double[] real = CashFlows.growing(saving / 1.025, 1.04 / 1.025 - 1, 10);
        double fitting = CashFlows.netPresentValue(0.05575, CashFlows.of(350, nominal));
        Printed.assertAgrees("655.44", null, fitting);
        assertEquals(fitting, CashFlows.netPresentValue(0.03, CashFlows.of(350, real)), 1e-9);
        Printed.assertAgrees("801.07", null, CashFlows.netPresentValue(0.03, CashFlows.of(350, nominal)));
        Printed.assertAgrees("3.31", null, Payback.discountedYears(350, 0.05575, nominal).value());
        Printed.assertAgrees("3.14", null, Payback.discountedYears(350, 0.03, nominal).value());
    }

    @Test
    void refusesPricesOutsideTheirRange() {
        assertThrows(IllegalArgumentException.class, () -> new Prices(-1, 1, 1, 1, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Prices(1, Double.NaN, 1, 1, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Prices(1, 1, 1e10, 1, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Prices(1, 1, 1, -1, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Prices(1, 1, 1, 1, 0.6, 0));
        assertThrows(IllegalArgumentException.class, () -> new Prices(1, 1, 1, 1, 0, -0.01));
    }
}
