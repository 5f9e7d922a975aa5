// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.household.Country;
import dev.brinebook.request.water.WaterRequest;

@SchemaDescription("A water, to compensate its hardness for iron and manganese.")
public record CompensatedHardnessRequest(
        @Property(value = "The water test.", required = true) WaterRequest water,
        @Property(value = "Step of the hardness setting on the controller, in the unit of the setting.", min = 0, aboveMin = true,
                max = 200, unit = "mg/L", fallback = "1 gpg, and in metric answers 1 dH") HardnessQuantity hardnessStep,
        @Property(value = HomeCountry.DESCRIPTION, defaultCode = "unitedStates", example = "\"germany\"") Country country,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units) {
}
