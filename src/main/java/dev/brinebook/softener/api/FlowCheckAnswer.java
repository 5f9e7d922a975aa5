package dev.brinebook.softener.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.quantity.api.BedFlowQuantity;
import dev.brinebook.quantity.api.FlowQuantity;
import dev.brinebook.quantity.api.PressureQuantity;
import dev.brinebook.quantity.api.SurfaceFlowQuantity;
import dev.brinebook.resin.ServiceFlow;
import dev.brinebook.softener.Fit;

@About("A flow against what the bed takes.")
public record FlowCheckAnswer(
        @Property("Flow of the household.") FlowQuantity flow,
        @Property("The most that the bed takes.") FlowQuantity limit,
        @Property(value = "What sets that limit.", optional = "when the maker's rating does") ServiceFlow.Limit binding,
        @Property(value = "Whether the flow is within the limit.", example = "true") Boolean withinLimit,
        @Property("Velocity over the cross-section of the tank.") SurfaceFlowQuantity surfaceFlow,
        @Property("Flow per volume of resin.") BedFlowQuantity bedFlow,
        @Property("Pressure that the flow loses in a clean bed.") PressureQuantity pressureDrop) {

    /** The check in the units of the answer. */
    public static FlowCheckAnswer of(Fit.FlowCheck check, AnswerUnits units) {
        return new FlowCheckAnswer(units.flow(check.flowLitresPerMinute()), units.flow(check.limitLitresPerMinute()),
                check.binding(), check.withinLimit(), units.surfaceFlow(check.velocityMetresPerHour()),
                units.bedFlow(check.bedVolumesPerHour()), units.pressure(check.pressureDropPascals() / 1000));
    }
}
