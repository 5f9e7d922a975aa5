package dev.brinebook.operation.regeneration;

import dev.brinebook.api.About;
import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.request.household.SeriesRequest;
import dev.brinebook.request.softener.CaseRequest;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.request.water.WaterRequest;

@About("Settings of a softener, what was known of the household when they were chosen, and days to try them on.")
public record BacktestRequest(
        @Property(value = "The water test.", required = true) WaterRequest water,
        @Property(value = "The household as it was known when the settings were chosen: people, a mean use, or earlier days as"
                + " dailySeries. The prediction is made from it.", required = true) HouseholdRequest household,
        @Property(value = "The softener with its control as set.", required = true) SoftenerRequest softener,
        @Property(value = "The days to try the settings on: indoor use, of which the same branches and outdoor use are softened as"
                + " household has it. Take other days than those that the settings were chosen from, on which any setting does"
                + " better.", required = true) SeriesRequest days,
        @Property("Preferences: the capacities to count with; where the control has no reserve, the service standard that sets it.")
        PreferencesRequest preferences,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units,
        @Property(value = "Without effect: nothing is drawn. Taken so that the same case may be sent to every operation.",
                min = 0, max = PreferencesRequest.MAX_SEED, fallback = "1", example = "1") Long seed) implements CaseRequest, Checked {

    @Override
    public void check(Violations at) {
        CaseRequest.requireControl(softener, at);
    }
}
