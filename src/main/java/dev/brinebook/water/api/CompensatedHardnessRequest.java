package dev.brinebook.water.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.quantity.api.AnswerUnits;

@About("A water whose iron and manganese are to be counted as hardness.")
public record CompensatedHardnessRequest(
        @Property(value = "The water test.", required = true) WaterRequest water,
        @Property(value = "The units of the answer.", fallback = "us", example = "\"us\"") AnswerUnits units) {
}
