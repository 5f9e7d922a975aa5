package dev.brinebook.operation.resin;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.resin.ServiceFlow;
import dev.brinebook.wording.Message;
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

    static void explain(AnswerUnits units, Explanation explanation) {
        Message ofPressure = Message.of("the flow that loses {0} in the bed",
                Text.of(units.pressure(ServiceFlow.GUIDE_PRESSURE_DROP_PASCALS / 1000)));
        explanation.because("/lasting/bounds", Message.of("{0} times the cross-section of the tank",
                Text.of(units.surfaceFlow(ServiceFlow.GUIDE_HIGH_VELOCITY_METRES_PER_HOUR))), "LIN");
        explanation.because("/lasting/bounds", Message.of("{0} times the resin",
                Text.of(units.bedFlow(ServiceFlow.GUIDE_HIGH_BED_VOLUMES_PER_HOUR))), "DAVIS");
        explanation.because("/lasting/bounds", ofPressure, "NSF-ANSI-44");
        explanation.because("/peaks/bounds", Message.of("{0} times the resin",
                Text.of(units.bedFlow(ServiceFlow.GUIDE_PEAK_BED_VOLUMES_PER_HOUR))), "CP-HYDRAULICS");
        explanation.because("/peaks/bounds", ofPressure, "NSF-ANSI-44");
        for (String part : List.of("/lasting", "/peaks")) {
            explanation.because(part + "/flow", Message.of("the least of the limits"), "CP-HYDRAULICS");
            explanation.because(part + "/crushedFlow", Message.of("the same, the pressure lost in the bed with crushed beads"),
                    "ERGUN-1952");
        }
    }
}
