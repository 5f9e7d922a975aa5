// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.household.Country;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterAnalysis.Supply;

@SchemaDescription("What a table of results does not contain.")
public record ReportFileRequest(
        @Property(value = "Source of the water.", defaultCode = "publicSupply", example = "\"privateWell\"") Supply supply,
        @Property(value = "What the water looks like.", fallback = "not seen") ReportAppearance appearance,
        @Property(value = "Sodium of the raw water.", min = 0, max = WaterAnalysis.MAX_SODIUM_MG_PER_L, unit = "mg/L",
                fallback = "11.5 mg/L, known to 5 mg/L") ConcentrationQuantity naturalSodium,
        @Property(value = HomeCountry.DESCRIPTION, defaultCode = "unitedStates", example = "\"germany\"") Country country,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units) {
}
