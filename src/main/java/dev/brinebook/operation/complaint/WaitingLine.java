// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.complaint;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.complaint.CostOfWaiting;
import dev.brinebook.quantity.Rounding;
import java.math.BigDecimal;

@SchemaDescription("What the cause takes in a year while it is left, more than the same softener without it.")
public record WaitingLine(
        @Basis(formula = "formula.complaint.leftForAYear", source = "DAIAD")
        @Property("Salt per year. Negative where less is used.") MassQuantity saltPerYear,
        @Basis(formula = "formula.complaint.leftForAYear", source = "DAIAD")
        @Property("Water to the drain per year. Negative where less is used.") VolumeQuantity waterPerYear,
        @Basis(formula = "formula.complaint.leftForAYear", source = "DAIAD")
        @Property(value = "Hard days per year.", unit = "days a year", example = "120") BigDecimal hardDaysPerYear) {

    static WaitingLine of(CostOfWaiting cost, AnswerUnits units) {
        return new WaitingLine(units.mass(cost.saltKilograms()), units.volume(cost.waterLitres()),
                Rounding.toThousandth(cost.hardDays()));
    }
}
