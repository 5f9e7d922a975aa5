package dev.brinebook.answer.regeneration;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.regeneration.Outcome;
import dev.brinebook.regeneration.SaltPlan;
import dev.brinebook.regeneration.SaltStore;
import dev.brinebook.wording.Message;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

@About("Bags of salt to buy, and when.")
public record SaltPurchases(
        @Property(value = "Bags in all.", min = 0, example = "24") Integer bags,
        @Property("Salt in a bag.") MassQuantity bag,
        @Property("Each purchase, 400 at most.") List<SaltPurchase> purchases,
        @Property(value = "How many more purchases there were than are listed.", optional = "when all are listed", min = 1,
                example = "12") Integer purchasesOmitted,
        @Property(value = "Salt left in the brine tank after the last regeneration.", optional = "when no purchases are told")
        MassQuantity leftAtEnd,
        @Property(value = "Why no purchases are told.", optional = "when they are",
                example = "\"The brine tank is too small.\"") Message missingBecause,
        @Property(value = "Salt that the brine tank would have to hold.", optional = "when purchases are told")
        MassQuantity leastBrineTankCapacity) {

    /** Most entries of a list of dates: a regeneration every night for a year fits, the longest calendars do not. */
    public static final int MAX_LISTED = 400;

    @About("A purchase of salt.")
    public record SaltPurchase(
            @Property(value = "When to buy.", example = "\"2026-03-01\"") LocalDate date,
            @Property(value = "How many bags.", min = 1, example = "2") Integer bags) {
    }

    /** The purchases that an outcome asks for, with their basis told below {@code pointer}. */
    public static SaltPurchases of(Outcome outcome, SaltStore store, AnswerUnits units, String pointer, Explanation explanation) {
        explanation.because(pointer, Message.of("whole bags, bought when less than two doses are left, as many as the brine"
                + " tank takes"), "CP-CYCLE");
        explanation.given(pointer + "/bag");
        MassQuantity bag = units.mass(store.bagKilograms());
        double saltGrams = outcome.trial().regeneration().saltGrams();
        Optional<SaltPlan> plan = SaltPlan.of(outcome.trial().days().firstDate(), outcome.events(), saltGrams, store);
        if (plan.isEmpty()) {
            explanation.because(pointer + "/leastBrineTankCapacity", Message.of("a bag and the salt of a regeneration"),
                    "CP-CYCLE");
            MassQuantity least = units.mass(store.leastCapacityKilograms(saltGrams));
            return new SaltPurchases(0, bag, List.of(), null, null, Message.of("The brine tank cannot take a whole bag beside"
                    + " the salt of a regeneration: it would have to hold at least {0}.", Text.of(least)), least);
        }
        explanation.because(pointer + "/leftAtEnd", Message.of("salt at the start and in the bags, less that of the"
                + " regenerations"), "CP-CYCLE");
        List<SaltPurchase> listed = plan.get().purchases().stream().limit(MAX_LISTED)
                .map(purchase -> new SaltPurchase(purchase.date(), purchase.bags())).toList();
        int omitted = plan.get().purchases().size() - listed.size();
        return new SaltPurchases(plan.get().bags(), bag, listed, omitted == 0 ? null : omitted,
                units.mass(plan.get().leftKilograms()), null, null);
    }
}
