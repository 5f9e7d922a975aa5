// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.guard.OptionalResult;
import dev.brinebook.household.BuildingType;
import dev.brinebook.household.PeakFlowEstimate;

@SchemaDescription("Peak flow by the German standard: the sum of the design flows, reduced by building type.")
public record DesignPeak(
        @Basis(formula = "formula.household.sumBCL", source = "DIN-1988-300")
        @Property("The flow.") PeakFigure peak,
        @Basis(formula = "formula.household.sumDesignFlowsTable", source = "DIN-1988-300")
        @Property(value = "Total design flow of all connections, cold and hot.",
                optional = "when a fixture has none") FlowQuantity designFlow,
        @Property("Building type.") BuildingType buildingType) {

    static DesignPeak of(PeakFlowEstimate estimate, AnswerUnits units) {
        OptionalResult sum = estimate.schedule().designLitresPerSecond();
        return new DesignPeak(PeakFigure.of(estimate.designLitresPerMinute(), units),
                sum.exists() ? units.flow(60 * sum.value()) : null, estimate.building());
    }
}
