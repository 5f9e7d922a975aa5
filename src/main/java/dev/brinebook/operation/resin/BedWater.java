package dev.brinebook.operation.resin;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.TemperatureQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.water.WaterProperties;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;

@About("The water as the hydraulics need it.")
public record BedWater(
        @Property("Its temperature.") TemperatureQuantity temperature,
        @Property(value = "Its density.", min = 0, example = "999.498", unit = "kg/m3")
        BigDecimal densityKilogramsPerCubicMetre,
        @Property(value = "Its dynamic viscosity.", min = 0, example = "1.23397", unit = "mPa s")
        BigDecimal viscosityMillipascalSeconds) {

    static BedWater of(double celsius, AnswerUnits units) {
        WaterProperties water = WaterProperties.at(celsius);
        return new BedWater(units.temperature(celsius), Rounding.answer(water.densityKilogramsPerCubicMetre()),
                Rounding.answer(1000 * water.viscosityPascalSeconds()));
    }

    static void explain(Explanation explanation) {
        explanation.given("/water/temperature");
        explanation.because("/water/densityKilogramsPerCubicMetre", Message.of("density of water at the pressure of the"
                + " air"), "KELL-1975");
        explanation.because("/water/viscosityMillipascalSeconds", Message.of("viscosity of water at the pressure of the"
                + " air"), "IAPWS-SR6-08");
    }
}
