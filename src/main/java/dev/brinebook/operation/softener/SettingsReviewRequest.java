package dev.brinebook.operation.softener;

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

@About("A softener with the settings found on it, and what it is there to do.")
public record SettingsReviewRequest(
        @Property(value = "The water test.", required = true) WaterRequest water,
        @Property(value = "The household.", required = true) HouseholdRequest household,
        @Property(value = "The softener with its control, minutes and flows as found.", required = true)
        SoftenerRequest softener,
        @Property("Preferences: the reserve that is wanted, the capacities to count with.")
        PreferencesRequest preferences,
        @Property("Prices of salt and water, for the verdict.") PricesRequest prices,
        @Property(value = "What converting would cost, for the verdict.", fallback = "unknown") ConversionRequest conversion,
        @Property(value = "What was seen on site, for the verdict.", fallback = "nothing: every condition is to check on site")
        SiteRequest site,
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
