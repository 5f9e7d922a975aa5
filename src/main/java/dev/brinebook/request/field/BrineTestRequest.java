// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.field;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.TemperatureQuantity;
import dev.brinebook.field.BrineStrength;
import java.math.BigDecimal;

@SchemaDescription("Strength of the brine by hydrometer, two hours or more after the refill.")
public record BrineTestRequest(
        @Property(value = "Reading of the hydrometer in degrees: 100 is saturated sodium chloride, 26.395 % by weight, at 60 F.",
                required = true, min = 0, max = BrineTestRequest.MAX_DEGREES, unit = "degrees", example = "97") BigDecimal degrees,
        @Property(value = "How far the reading may be off either way.", min = 0.01, max = BrineTestRequest.MOST_DEGREES_OFF,
                unit = "degrees", example = "1", byDefault = 1) BigDecimal degreesPlusMinus,
        @Property(value = "Temperature of the brine when it was read. The reading is corrected to 60 F.",
                min = FieldMeasurementsRequest.MIN_CELSIUS, max = FieldMeasurementsRequest.MAX_CELSIUS, unit = "C", byDefault = 60,
                defaultUnit = "F") TemperatureQuantity temperature) {

    static final double MOST_DEGREES_OFF = 5;
    static final double MAX_DEGREES = BrineStrength.MAX_DEGREES - MOST_DEGREES_OFF;
}
