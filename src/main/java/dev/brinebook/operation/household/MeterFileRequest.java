// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.household.Country;
import dev.brinebook.household.Demand;
import dev.brinebook.request.household.MeterRequest;

@SchemaDescription("Facts that a file of readings does not contain.")
public record MeterFileRequest(
        @Property(value = "The meter.", required = true) MeterRequest meter,
        @Property(value = "Number of residents. They make the forecast more certain, most of all with few days, and the use is "
                + "compared with the usual use of as many people.", min = 1, max = Demand.MAX_PEOPLE, example = "4") Integer people,
        @Property(value = "Country, for the usual use per person. No effect unless people are given.",
                defaultCode = "unitedStates", example = "\"germany\"") Country country,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units) {
}
