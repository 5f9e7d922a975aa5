// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * When to buy salt and how much.
 *
 * @param purchases each purchase, in order
 * @param bags bags bought in all
 * @param leftKilograms salt in the tank after the last regeneration
 */
public record SaltPlan(List<SaltPurchase> purchases, int bags, double leftKilograms) {

    /**
     * Regenerations for which salt stays in the tank when it is time to buy, beside the next one: no source settles it,
     * one leaves a whole interval in which to go shopping.
     */
    public static final double ASSUMED_SPARE_REGENERATIONS = 1;

    /** Kilograms are subtracted over and over, so a bag fits that is too big by a rounding. */
    private static final double ROUNDING_BAGS = 1e-9;

    /** Keeps its own copy. */
    public SaltPlan {
        purchases = List.copyOf(purchases);
    }

    /** Bags bought on one date, and the salt in the tank once they are in it. */
    public record SaltPurchase(LocalDate date, int bags, double filledToKilograms) {
    }

    /**
     * The purchases that keep the regenerations in salt. On the first day and after each regeneration, when the tank
     * holds less than the next one and the spare need, as many whole bags are bought as fit.
     *
     * @param start first day
     * @param events the regenerations
     * @param saltGrams salt that each of them uses
     * @param store the tank and the bags
     * @return empty when the tank is too small, {@link SaltStore#takesWholeBags(double)}
     */
    public static Optional<SaltPlan> of(LocalDate start, List<RegenerationEvent> events, double saltGrams,
                                        SaltStore store) {
        double salt = Guard.notNegative(saltGrams, "saltGrams") / 1000;
        if (!store.takesWholeBags(saltGrams)) {
            return Optional.empty();
        }
        List<SaltPurchase> purchases = new ArrayList<>();
        double left = buyIfLow(purchases, start, store.atStartKilograms(), salt, store);
        for (RegenerationEvent event : events) {
            left = buyIfLow(purchases, event.date(), left - salt, salt, store);
        }
        return Optional.of(new SaltPlan(purchases, purchases.stream().mapToInt(SaltPurchase::bags).sum(), left));
    }

    private static double buyIfLow(List<SaltPurchase> purchases, LocalDate date, double left, double salt,
                                   SaltStore store) {
        int fit = (int) Math.floor((store.capacityKilograms() - left) / store.bagKilograms() + ROUNDING_BAGS);
        if (!(left < (1 + ASSUMED_SPARE_REGENERATIONS) * salt && fit > 0)) {
            return left;
        }
        double filled = left + fit * store.bagKilograms();
        purchases.add(new SaltPurchase(date, fit, filled));
        return filled;
    }
}
