// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.upkeep;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.request.softener.CaseRequest;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.request.water.WaterRequest;

@SchemaDescription("A softener to keep going, from a date on.")
public record UpkeepRequest(
        @Property(value = "The water test.", required = true) WaterRequest water,
        @Property(value = "The household.", required = true) HouseholdRequest household,
        @Property(value = "The softener. Age or a test of its resin sets when it is to be replaced.", required = true)
        SoftenerRequest softener,
        @Property(value = "Years to plan.", min = 1, max = UpkeepRequest.MAX_YEARS, unit = "years",
                byDefault = UpkeepRequest.ASSUMED_YEARS, example = "2") Integer years,
        @Property(value = "Whether rock salt is used, which leaves dirt in the brine tank.", defaultCode = "false", example = "false")
        Boolean rockSalt,
        @Property(value = "Whether a sediment filter is fitted before the softener.", defaultCode = "false", example = "true")
        Boolean sedimentFilter,
        @Property("Preferences: the first day in startDate, on which all is taken as done.") PreferencesRequest preferences,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units,
        @Property(value = "Seed of example days. No date depends on it.", min = 0, max = PreferencesRequest.MAX_SEED,
                byDefault = PreferencesRequest.DEFAULT_SEED, example = "1") Long seed) implements CaseRequest {

    static final int MAX_YEARS = 10;
    static final int ASSUMED_YEARS = 2;
}
