package dev.brinebook.operation.household;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.guard.Figure;
import dev.brinebook.household.BuildingType;
import dev.brinebook.household.PeakFlowEstimate;
import dev.brinebook.wording.Message;

@About("Peak flow by the German standard: the sum of the design flows, lessened for the kind of building.")
public record DesignPeak(
        @Property("The flow.") PeakFigure peak,
        @Property(value = "Design flows of all connections together, cold and hot.",
                optional = "when a fixture has none") FlowQuantity designFlow,
        @Property("The kind of building.") BuildingType buildingType) {

    static DesignPeak of(PeakFlowEstimate estimate, AnswerUnits units) {
        Figure sum = estimate.schedule().designLitresPerSecond();
        return new DesignPeak(PeakFigure.of(estimate.designLitresPerMinute(), units),
                sum.exists() ? units.flow(60 * sum.value()) : null, estimate.building());
    }

    static void explain(Explanation explanation) {
        explanation.because("/design/designFlow", Message.of("sum of the design flows of table 2, of a mixing tap for its cold"
                + " and its hot side"), "DIN-1988-300");
        explanation.because("/design/peak", Message.of("a times the sum to the power b, less c, in L/s, never above the sum: 1.48,"
                + " 0.19, 0.94 of a dwelling, 0.70, 0.48, 0.13 of a hotel, 0.91, 0.31, 0.38 of a school or office"),
                "DIN-1988-300");
    }
}
