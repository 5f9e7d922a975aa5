// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.softener;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.request.prices.LocalPrices;
import dev.brinebook.request.prices.PricesRequest;
import dev.brinebook.request.softener.CandidateRequest;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.SaltDoseRange;
import dev.brinebook.request.water.WaterRequest;
import dev.brinebook.resin.CapacityTable;
import dev.brinebook.resin.Salt;
import dev.brinebook.text.Message;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

@SchemaDescription("A water and a household that need a softener.")
public record SizingRequest(
        @Property(value = "The water test.", required = true) WaterRequest water,
        @Property(value = "The household.", required = true) HouseholdRequest household,
        @Property(value = "The softeners to choose from.", minItems = 1, maxItems = SizingRequest.MAX_CANDIDATES,
                fallback = "the standard sizes of the trade") List<CandidateRequest> candidates,
        @Property(value = "The salt.", defaultCode = "sodiumChloride", example = "\"sodiumChloride\"") Salt salt,
        @Property(value = "Salt dose for every candidate.", min = CapacityTable.MIN_SALT_DOSE_GRAMS_PER_LITRE,
                max = CapacityTable.MAX_SALT_DOSE_GRAMS_PER_LITRE, unit = "g/L",
                fallback = "the cheapest dose for each candidate") SaltDoseQuantity saltDose,
        @Property("Prices of salt and water, for the running cost.") PricesRequest prices,
        @Property("Preferences: the target interval, the reserve and the capacity table.")
        PreferencesRequest preferences,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units,
        @Property(value = "Seed of the example days in answers with dates. No setting, verdict or expected figure depends on "
                + "it.", min = 0,
                max = PreferencesRequest.MAX_SEED, byDefault = PreferencesRequest.DEFAULT_SEED,
                example = "1") Long seed) implements Checked {

    /** Dose and reserve are chosen for each, which takes some milliseconds. */
    static final int MAX_CANDIDATES = 250;

    @Override
    public void check(Violations at) {
        LocalPrices.check(prices, household, at);
        checkNames(at);
        for (int i = 0; candidates != null && i < candidates.size(); i++) {
            CandidateRequest candidate = candidates.get(i);
            String currency = candidate == null || candidate.price() == null ? null : candidate.price().unit();
            if (currency != null && !at.here() && !currency.equals(LocalPrices.of(prices, household).currency()
                    .getCurrencyCode())) {
                at.at("candidates").at(i).add("price", Code.INCONSISTENT, Message.of("problem.softener.mustCurrencyPrices"));
            }
        }
        if (!at.at("salt").here()) {
            SaltDoseRange.check(saltDose, CapacityTable.minSaltDoseGramsPerLitre(salt == null ? Salt.SODIUM_CHLORIDE : salt),
                    CapacityTable.MAX_SALT_DOSE_GRAMS_PER_LITRE, at.at("saltDose"));
        }
    }

    /** The answer names a candidate by its sku, so each has another. */
    private void checkNames(Violations at) {
        Set<String> names = new HashSet<>();
        for (int i = 0; candidates != null && i < candidates.size(); i++) {
            String sku = candidates.get(i) == null ? null : candidates.get(i).sku();
            if (sku != null && !names.add(sku)) {
                at.at("candidates").at(i).add("sku", Code.INCONSISTENT, Message.of("problem.softener.skuGivenTwice"));
            }
        }
    }
}
