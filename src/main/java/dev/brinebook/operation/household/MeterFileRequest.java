package dev.brinebook.operation.household;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.household.Country;
import dev.brinebook.household.Demand;

@About("What a file of readings cannot say itself.")
public record MeterFileRequest(
        @Property(value = "The meter.", required = true) MeterRequest meter,
        @Property(value = "People living there: they make the forecast surer, the more the fewer the days are, and the use is"
                + " compared with theirs.", min = 1, max = Demand.MAX_PEOPLE, example = "4") Integer people,
        @Property(value = "Where they live, for what a person uses. Without effect unless people are given.",
                fallback = "unitedStates", example = "\"germany\"") Country country,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units) {
}
