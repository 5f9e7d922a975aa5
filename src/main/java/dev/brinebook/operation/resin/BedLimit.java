// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.From;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.resin.ServiceFlow;
import dev.brinebook.text.Message;
import java.util.List;

@SchemaDescription("Maximum flow of the bed, and the limit that sets it.")
public record BedLimit(
        @Basis(formula = "formula.resin.smallestLimits", source = "CP-HYDRAULICS")
        @From("bounds/*/flow")
        @Property("Maximum flow with a clean bed.") FlowQuantity flow,
        @Property(value = "Limit that sets it.", example = "\"surfaceVelocity\"") ServiceFlow.Limit binding,
        @Basis(formula = "formula.resin.sameLimitsPressureDrop", source = "ERGUN-1952")
        @Property("Maximum flow with crushed beads.") FlowQuantity crushedFlow,
        @Property(value = "Limit that sets the flow with crushed beads.", example = "\"pressureDrop\"") ServiceFlow.Limit crushedBinding,
        @Property(value = "All limits, by their flow with a clean bed, lowest first.", eachOf = ServiceFlow.Limit.class)
        List<BedBound> bounds) {

    static BedLimit of(List<ServiceFlow.Bound> clean, List<ServiceFlow.Bound> crushed, AnswerUnits units) {
        return new BedLimit(units.flow(clean.get(0).flowLitresPerMinute()), clean.get(0).limit(),
                units.flow(crushed.get(0).flowLitresPerMinute()), crushed.get(0).limit(),
                clean.stream().map(bound -> new BedBound(bound.limit(), units.flow(bound.flowLitresPerMinute()),
                        units.flow(crushed.stream().filter(other -> other.limit() == bound.limit()).findAny().orElseThrow()
                                .flowLitresPerMinute()))).toList());
    }

    static void explain(AnswerUnits units, Explanation explanation) {
        Message ofPressure = Message.of("bedLimit.flowPressureDropBed",
                Text.rounded(units.pressure(ServiceFlow.GUIDE_PRESSURE_DROP_PASCALS / 1000)));
        explanation.because("/lasting/bounds", Message.of("formula.resin.crossSectionTank",
                Text.of(units.surfaceFlow(ServiceFlow.GUIDE_HIGH_VELOCITY_METRES_PER_HOUR))), "LIN");
        explanation.because("/lasting/bounds", Message.of("formula.resin.resinVolume",
                Text.of(units.bedFlow(ServiceFlow.GUIDE_HIGH_BED_VOLUMES_PER_HOUR))), "DAVIS");
        explanation.because("/lasting/bounds", ofPressure, "NSF-ANSI-44");
        explanation.because("/peaks/bounds", Message.of("formula.resin.resinVolume",
                Text.of(units.bedFlow(ServiceFlow.GUIDE_PEAK_BED_VOLUMES_PER_HOUR))), "CP-HYDRAULICS");
        explanation.because("/peaks/bounds", ofPressure, "NSF-ANSI-44");
    }
}
