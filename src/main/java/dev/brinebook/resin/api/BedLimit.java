package dev.brinebook.resin.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.quantity.api.FlowQuantity;
import dev.brinebook.resin.ServiceFlow;
import java.util.List;

@About("The most flow that the bed takes, and which limit binds first.")
public record BedLimit(
        @Property("The most flow with the bed clean.") FlowQuantity flow,
        @Property(value = "The limit that sets it.", example = "\"surfaceVelocity\"") ServiceFlow.Limit binding,
        @Property("The most flow with crushed beads.") FlowQuantity crushedFlow,
        @Property(value = "The limit that sets that.", example = "\"pressureDrop\"") ServiceFlow.Limit crushedBinding,
        @Property("Every limit, with the bed clean the one that binds first.") List<BedBound> bounds) {

    static BedLimit of(List<ServiceFlow.Bound> clean, List<ServiceFlow.Bound> crushed, AnswerUnits units) {
        return new BedLimit(units.flow(clean.get(0).flowLitresPerMinute()), clean.get(0).limit(),
                units.flow(crushed.get(0).flowLitresPerMinute()), crushed.get(0).limit(),
                clean.stream().map(bound -> new BedBound(bound.limit(), units.flow(bound.flowLitresPerMinute()),
                        units.flow(crushed.stream().filter(other -> other.limit() == bound.limit()).findAny().orElseThrow()
                                .flowLitresPerMinute()))).toList());
    }

    static void explain(Explanation explanation) {
        explanation.because("/lasting/bounds", "8 gpm per square foot times the cross-section of the tank", "LIN");
        explanation.because("/lasting/bounds", "5 gpm per cubic foot times the resin", "DAVIS");
        explanation.because("/lasting/bounds", "the flow that loses 15 psi in the bed", "CP-HYDRAULICS");
        explanation.because("/lasting/flow", "the least of the limits", "CP-HYDRAULICS");
        explanation.because("/lasting/crushedFlow", "the same, the pressure lost in the bed with crushed beads",
                "ERGUN-1952");
        explanation.because("/peaks/bounds", "10 gpm per cubic foot times the resin; the flow that loses 15 psi in the bed",
                "CP-HYDRAULICS");
        explanation.because("/peaks/flow", "the least of the limits", "CP-HYDRAULICS");
        explanation.because("/peaks/crushedFlow", "the same, the pressure lost in the bed with crushed beads", "ERGUN-1952");
    }
}
