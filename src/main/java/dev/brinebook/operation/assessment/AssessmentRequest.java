package dev.brinebook.operation.assessment;

import dev.brinebook.api.About;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.request.prices.PricesRequest;
import dev.brinebook.request.softener.CaseRequest;
import dev.brinebook.request.softener.ConversionRequest;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.SiteRequest;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.request.water.WaterRequest;

@About("The whole case: the water, the household, the softener that stands there, and what converting it would cost.")
public record AssessmentRequest(
        @Property(value = "The water test.", required = true) WaterRequest water,
        @Property(value = "The household.", required = true) HouseholdRequest household,
        @Property(value = "The softener that stands there, with its control.", required = true) SoftenerRequest softener,
        @Property(value = "What converting it to a metered controller would cost.",
                fallback = "unknown: the saving is told, but no payback") ConversionRequest conversion,
        @Property(value = "What was seen where it stands.", fallback = "nothing: every condition is to check on site")
        SiteRequest site,
        @Property("Prices of salt, water and service.") PricesRequest prices,
        @Property("Preferences where there is a choice.") PreferencesRequest preferences,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units,
        @Property(value = "Sets example days, where dates are given; no setting, verdict or expected figure depends on it.", min = 0,
                max = PreferencesRequest.MAX_SEED, fallback = "1", example = "1") Long seed) implements CaseRequest, Checked {

    @Override
    public void check(Violations at) {
        CaseRequest.requireControl(softener, at);
        ConversionRequest.checkCurrency(conversion, prices, household, at);
        SiteRequest.checkPrices(site, conversion, prices, household, at);
    }
}
