// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.regeneration;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.regeneration.SaltPlan;
import dev.brinebook.regeneration.SaltStore;
import dev.brinebook.regeneration.SimulationResult;
import dev.brinebook.text.Message;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

@SchemaDescription("Purchases of salt.")
public record SaltPurchases(
        @Basis(formula = "formula.regeneration.wholeBagsBoughtWhen", source = "CP-CYCLE")
        @Property(value = "Number of bags in total.", min = 0, example = "24") Integer bags,
        @Basis
        @Property("Mass of salt in a bag.") MassQuantity bag,
        @Basis(formula = "formula.regeneration.wholeBagsBoughtWhen", source = "CP-CYCLE")
        @Property(value = "The purchases, at most 400.", maxItems = SaltPurchases.MAX_LISTED) List<SaltPurchase> purchases,
        @Basis(formula = "formula.regeneration.wholeBagsBoughtWhen", source = "CP-CYCLE")
        @Property(value = "Number of purchases not listed.", optional = "when all are listed", min = 1,
                example = "12") Integer purchasesOmitted,
        @Basis(formula = "formula.regeneration.saltStartSaltBags", source = "CP-CYCLE")
        @Property(value = "Salt left in the brine tank after the last regeneration.", optional = "if no purchases are given")
        MassQuantity leftAtEnd,
        @Property(value = "Reason why no purchases are given.", optional = "when purchases are given",
                example = "\"The brine tank is too small.\"") Message missingBecause,
        @Basis(formula = "formula.regeneration.oneBagSaltPer", source = "CP-CYCLE")
        @Property(value = "Salt capacity that the brine tank would need.", optional = "when purchases are given")
        MassQuantity leastBrineTankCapacity) {

    /** Most entries of a list of dates: a regeneration every night for a year fits, the longest calendars do not. */
    public static final int MAX_LISTED = 400;

    @SchemaDescription("A purchase of salt.")
    public record SaltPurchase(
            @Property(value = "Date of the purchase.", example = "\"2026-03-01\"") LocalDate date,
            @Property(value = "Number of bags.", min = 1, example = "2") Integer bags) {
    }

    /** The purchases that an outcome asks for. */
    public static SaltPurchases of(SimulationResult outcome, SaltStore store, AnswerUnits units) {
        MassQuantity bag = units.mass(store.bagKilograms());
        double saltGrams = outcome.trial().regeneration().saltGrams();
        Optional<SaltPlan> plan = SaltPlan.of(outcome.trial().days().firstDate(), outcome.events(), saltGrams, store);
        if (plan.isEmpty()) {
            MassQuantity least = units.mass(store.leastCapacityKilograms(saltGrams));
            return new SaltPurchases(0, bag, List.of(), null, null, Message.of("saltPurchases.brineTankCannotHold", Text.of(least)), least);
        }
        List<SaltPurchase> listed = plan.get().purchases().stream().limit(MAX_LISTED)
                .map(purchase -> new SaltPurchase(purchase.date(), purchase.bags())).toList();
        int omitted = plan.get().purchases().size() - listed.size();
        return new SaltPurchases(plan.get().bags(), bag, listed, omitted == 0 ? null : omitted,
                units.mass(plan.get().leftKilograms()), null, null);
    }
}
