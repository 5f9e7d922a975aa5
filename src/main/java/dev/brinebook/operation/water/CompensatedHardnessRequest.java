package dev.brinebook.operation.water;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.household.Country;
import dev.brinebook.request.water.WaterRequest;

@About("A water whose iron and manganese are to be counted as hardness.")
public record CompensatedHardnessRequest(
        @Property(value = "The water test.", required = true) WaterRequest water,
        @Property(value = "One step of the hardness on the controller, with the unit that it is set in.", min = 0, aboveMin = true,
                max = 200, unit = "mg/L", fallback = "1 gpg, and in metric answers 1 dH") HardnessQuantity hardnessStep,
        @Property(value = HomeCountry.DESCRIPTION, fallback = "unitedStates", example = "\"germany\"") Country country,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units) {
}
