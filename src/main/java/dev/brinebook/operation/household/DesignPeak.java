// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.guard.OptionalResult;
import dev.brinebook.household.BuildingType;
import dev.brinebook.household.PeakFlowEstimate;
import dev.brinebook.text.Message;

@SchemaDescription("Peak flow by the German standard: the sum of the design flows, reduced by building type.")
public record DesignPeak(
        @Property("The flow.") PeakFigure peak,
        @Property(value = "Total design flow of all connections, cold and hot.",
                optional = "when a fixture has none") FlowQuantity designFlow,
        @Property("Building type.") BuildingType buildingType) {

    static DesignPeak of(PeakFlowEstimate estimate, AnswerUnits units) {
        OptionalResult sum = estimate.schedule().designLitresPerSecond();
        return new DesignPeak(PeakFigure.of(estimate.designLitresPerMinute(), units),
                sum.exists() ? units.flow(60 * sum.value()) : null, estimate.building());
    }

    static void explain(Explanation explanation) {
        explanation.because("/design/designFlow", Message.of("formula.household.sumDesignFlowsTable"), "DIN-1988-300");
        explanation.because("/design/peak", Message.of("formula.household.sumBCL"),
                "DIN-1988-300");
    }
}
