// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.cycle;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.api.quantity.TemperatureQuantity;
import dev.brinebook.household.Country;
import dev.brinebook.regeneration.Brine;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.water.WaterAnalysis;
import java.math.BigDecimal;

@SchemaDescription("A softener whose regeneration is calculated step by step.")
public record CycleDesignRequest(
        @Property(value = "The softener: resin, tank, salt, dose and flows of the valve. "
                + "Control, minutes and stock of salt are not needed here.", required = true) SoftenerRequest softener,
        @Property(value = "Lowest water temperature in use.", min = WaterAnalysis.MIN_TEMPERATURE_CELSIUS,
                max = WaterAnalysis.MAX_TEMPERATURE_CELSIUS, unit = "C", byDefault = WaterAnalysis.ASSUMED_TEMPERATURE_CELSIUS)
        TemperatureQuantity waterTemperature,
        @Property(value = "Temperature in the brine tank. It determines the salt dissolved by the refill.",
                min = Brine.MIN_TEMPERATURE_CELSIUS, max = Brine.MAX_TEMPERATURE_CELSIUS, unit = "C",
                fallback = "that of the water") TemperatureQuantity brineTankTemperature,
        @Property(value = "Whether a second backwash follows the brine.", defaultCode = "false", example = "false")
        Boolean secondBackwash,
        @Property(value = "Regenerations per year, for the salt and water per year.", min = 0,
                max = CycleDesignRequest.MAX_REGENERATIONS_PER_YEAR, example = "80", fallback = "none: no totals per year")
        BigDecimal regenerationsPerYear,
        @Property("Preferences. Only the capacity table is used.") PreferencesRequest preferences,
        @Property(value = HomeCountry.DESCRIPTION, defaultCode = "unitedStates", example = "\"germany\"") Country country,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units) {

    /** More than five a day is no softener that works. */
    static final double MAX_REGENERATIONS_PER_YEAR = 2000;
}
