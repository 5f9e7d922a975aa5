// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.household.Days;
import dev.brinebook.request.prices.LocalPrices;
import dev.brinebook.savings.SavingsEstimate;
import java.util.Currency;
import java.util.function.ToDoubleFunction;

/**
 * Water and money of a saving.
 *
 * @param estimate of the salt
 * @param waterBefore of a regeneration, litres; NaN where it is not known for both periods
 * @param waterAfter likewise
 * @param saltPerKilogram price
 * @param waterPerLitre price of water and waste water, 0 where no water is known
 * @param currency of both
 */
record SavedCost(SavingsEstimate estimate, double waterBefore, double waterAfter, double saltPerKilogram, double waterPerLitre,
        Currency currency) {

    private static final double LITRES_PER_CUBIC_METRE = 1000;

    static SavedCost of(SavingsVerificationRequest request, VerifiedHome home, LocalPrices prices, Explanation explanation) {
        VolumeQuantity before = request.before().waterPerRegeneration();
        VolumeQuantity after = request.after().waterPerRegeneration();
        boolean known = before != null && after != null;
        double water = known ? (prices.waterPerCubicMetre(false, explanation) + prices.sewerPerCubicMetre(false, explanation))
                / LITRES_PER_CUBIC_METRE : 0;
        double salt = request.after().saltBag() == null ? prices.saltPerKilogram(explanation) : saltPrice(request.after(), 0);
        return new SavedCost(home.estimate(), known ? before.inBase() : Double.NaN, known ? after.inBase() : Double.NaN, salt, water,
                prices.currency());
    }

    /** Price of a kilogram of salt in a period. */
    static double saltPrice(SavingsPeriodRequest period, double usual) {
        return period.saltBag() == null ? usual : period.saltBag().price().value().doubleValue() / period.saltBag().mass().inBase();
    }

    /** Null where the water is not known. */
    SavedWater water(AnswerUnits units) {
        return Double.isNaN(waterBefore) ? null : new SavedWater(units.volume(litres(SavingsEstimate::share)),
                units.volume(litres(SavingsEstimate::low)), units.volume(litres(SavingsEstimate::high)));
    }

    SavedMoney money() {
        return new SavedMoney(money(SavingsEstimate::share), money(SavingsEstimate::low), money(SavingsEstimate::high));
    }

    /** Litres a year; the regenerations after are as uncertain as the salt after. */
    private double litres(ToDoubleFunction<SavingsEstimate> share) {
        double off = (1 - share.applyAsDouble(estimate)) / (1 - estimate.share());
        return Days.PER_YEAR * (estimate.regenerationsBefore() * waterBefore - off * estimate.regenerationsAfter() * waterAfter);
    }

    private Money money(ToDoubleFunction<SavingsEstimate> share) {
        double water = Double.isNaN(waterBefore) ? 0 : waterPerLitre * litres(share);
        return Money.of(Days.PER_YEAR * saltPerKilogram * estimate.before() * share.applyAsDouble(estimate) + water, currency);
    }
}
