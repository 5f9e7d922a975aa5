package dev.brinebook.regeneration.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.quantity.api.MassQuantity;
import dev.brinebook.regeneration.Outcome;
import dev.brinebook.regeneration.SaltPlan;
import dev.brinebook.regeneration.SaltStore;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

@About("Bags of salt to buy, and when.")
public record SaltPurchases(
        @Property(value = "Bags in all.", example = "24") Integer bags,
        @Property("Each purchase.") List<SaltPurchase> purchases,
        @Property(value = "Why no purchases are told.", optional = "when they are",
                example = "\"The brine tank is too small.\"") String missingBecause) {

    @About("A purchase of salt.")
    public record SaltPurchase(
            @Property(value = "When to buy.", example = "\"2026-03-01\"") LocalDate date,
            @Property(value = "How many bags.", example = "2") Integer bags) {
    }

    /** The purchases that an outcome asks for, with their basis told below {@code pointer}. */
    public static SaltPurchases of(Outcome outcome, SaltStore store, AnswerUnits units, String pointer, Explanation explanation) {
        explanation.because(pointer, "whole bags, bought when less than two doses are left, as many as the brine tank takes",
                "CP-CYCLE");
        double saltGrams = outcome.trial().regeneration().saltGrams();
        Optional<SaltPlan> plan = SaltPlan.of(outcome.trial().days().firstDate(), outcome.events(), saltGrams, store);
        if (plan.isEmpty()) {
            MassQuantity least = units.mass(store.leastCapacityKilograms(saltGrams));
            return new SaltPurchases(0, List.of(), "The brine tank cannot take a whole bag beside the salt of a"
                    + " regeneration: it would have to hold at least " + Text.of(least) + ".");
        }
        return new SaltPurchases(plan.get().bags(), plan.get().purchases().stream()
                .map(purchase -> new SaltPurchase(purchase.date(), purchase.bags())).toList(), null);
    }
}
