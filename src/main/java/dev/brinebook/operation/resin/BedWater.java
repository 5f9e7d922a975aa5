// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.TemperatureQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.text.Message;
import dev.brinebook.water.WaterProperties;
import java.math.BigDecimal;

@SchemaDescription("Properties of the water for the hydraulics.")
public record BedWater(
        @Property("Temperature.") TemperatureQuantity temperature,
        @Property(value = "Density.", min = 0, example = "999.498", unit = "kg/m3")
        BigDecimal densityKilogramsPerCubicMetre,
        @Property(value = "Dynamic viscosity.", min = 0, example = "1.23397", unit = "mPa s")
        BigDecimal viscosityMillipascalSeconds) {

    static BedWater of(double celsius, AnswerUnits units) {
        WaterProperties water = WaterProperties.at(celsius);
        return new BedWater(units.temperature(celsius), Rounding.answer(water.densityKilogramsPerCubicMetre()),
                Rounding.answer(1000 * water.viscosityPascalSeconds()));
    }

    static void explain(Explanation explanation) {
        explanation.given("/water/temperature");
        explanation.because("/water/densityKilogramsPerCubicMetre", Message.of("formula.resin.densityWaterAirPressure"), "KELL-1975");
        explanation.because("/water/viscosityMillipascalSeconds", Message.of("formula.resin.viscosityWaterAirPressure"), "IAPWS-SR6-08");
    }
}
