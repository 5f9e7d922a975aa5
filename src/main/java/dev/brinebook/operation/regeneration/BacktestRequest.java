// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.request.household.SeriesRequest;
import dev.brinebook.request.softener.CaseRequest;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.request.water.WaterRequest;

@SchemaDescription("Settings of a softener, the household as known when they were chosen, and measured days to test them.")
public record BacktestRequest(
        @Property(value = "The water test.", required = true) WaterRequest water,
        @Property(value = "The household as known when the settings were chosen: people, a mean use, or earlier days as "
                + "dailySeries. The prediction is based on it.", required = true) HouseholdRequest household,
        @Property(value = "The softener and its control settings.", required = true) SoftenerRequest softener,
        @Property(value = "The days to test the settings on: indoor use. Unsoftened branches and "
                + "softened outdoor use are those of household. Use other days than those from "
                + "which the settings were chosen, because any setting does better on these.", required = true) SeriesRequest days,
        @Property("Preferences: the capacity table, and the service standard that sets the reserve if the control has none.")
        PreferencesRequest preferences,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units,
        @Property(value = "No effect: nothing is simulated. Accepted so that the same case can be sent to every operation.",
                min = 0, max = PreferencesRequest.MAX_SEED, byDefault = PreferencesRequest.DEFAULT_SEED,
                example = "1") Long seed) implements CaseRequest, Checked {

    @Override
    public void check(Violations at) {
        CaseRequest.requireControl(softener, at);
    }
}
