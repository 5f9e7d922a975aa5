package dev.brinebook.household.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.household.Demand;
import dev.brinebook.quantity.api.AnswerUnits;

@About("What a file of readings cannot say itself.")
public record MeterFileRequest(
        @Property(value = "The meter.", required = true) MeterRequest meter,
        @Property(value = "People living there, to compare with usual use.", min = 1, max = Demand.MAX_PEOPLE, example = "4")
        Integer people,
        @Property(value = "The units of the answer.", fallback = "us", example = "\"us\"") AnswerUnits units) {
}
