package dev.brinebook.operation.softener;

import dev.brinebook.answer.water.SoftenedWaterAnswer;
import dev.brinebook.api.About;
import dev.brinebook.api.FigureAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.MassQuantity;

@About("What softening takes and adds.")
public record SofteningEffort(
        @Property("Hardness that a mean day loads on the resin, iron and manganese at their chemical equivalents.")
        CapacityQuantity dailyLoad,
        @Property("What it adds to the water.") SoftenedWaterAnswer water,
        @Property(value = "Days of mean use that the capacity of the softener lasts.", optional = "when no softener is given")
        FigureAnswer daysBetweenRegenerations,
        @Property(value = "Salt of a year in proportion to the load, by mean days: not tried day by day.",
                optional = "when no softener is given") MassQuantity saltPerYear) {
}
