// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.request.prices.PricesRequest;
import dev.brinebook.request.softener.CaseRequest;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.RetrofitRequest;
import dev.brinebook.request.softener.SiteRequest;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.request.water.WaterRequest;

@SchemaDescription("The whole case: the water, the household, the existing softener and the cost of converting it.")
public record AssessmentRequest(
        @Property(value = "The water test.", required = true) WaterRequest water,
        @Property(value = "The household.", required = true) HouseholdRequest household,
        @Property(value = "The existing softener and its controller.", required = true) SoftenerRequest softener,
        @Property(value = "Cost of converting it to a metered controller.",
                fallback = "unknown: the answer has the saving, but no payback") RetrofitRequest retrofit,
        @Property(value = "Conditions seen at the site.", fallback = "none: every condition is to check on site")
        SiteRequest site,
        @Property("Prices of salt, water and service.") PricesRequest prices,
        @Property("Preferences of the practitioner.") PreferencesRequest preferences,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units,
        @Property(value = "Seed of the example days in answers with dates. No setting, verdict or expected figure depends on "
                + "it.", min = 0,
                max = PreferencesRequest.MAX_SEED, byDefault = PreferencesRequest.DEFAULT_SEED,
                        example = "1") Long seed,
        @Property("Texts for the printed sheets.") JobRequest job) implements CaseRequest, Checked {

    @Override
    public void check(Violations at) {
        CaseRequest.requireControl(softener, at);
        RetrofitRequest.checkCurrency(retrofit, prices, household, at);
        SiteRequest.checkPrices(site, retrofit, prices, household, at);
    }
}
