// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.TemperatureQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.water.WaterProperties;
import java.math.BigDecimal;

@SchemaDescription("Properties of the water for the hydraulics.")
public record BedWater(
        @Basis
        @Property("Temperature.") TemperatureQuantity temperature,
        @Basis(formula = "formula.resin.densityWaterAirPressure", source = "KELL-1975")
        @Property(value = "Density.", min = 0, example = "999.498", unit = "kg/m3")
        BigDecimal densityKilogramsPerCubicMetre,
        @Basis(formula = "formula.resin.viscosityWaterAirPressure", source = "IAPWS-SR6-08")
        @Property(value = "Dynamic viscosity.", min = 0, example = "1.23397", unit = "mPa s")
        BigDecimal viscosityMillipascalSeconds) {

    static BedWater of(double celsius, AnswerUnits units) {
        WaterProperties water = WaterProperties.at(celsius);
        return new BedWater(units.temperature(celsius), Rounding.answer(water.densityKilogramsPerCubicMetre()),
                Rounding.answer(1000 * water.viscosityPascalSeconds()));
    }
}
