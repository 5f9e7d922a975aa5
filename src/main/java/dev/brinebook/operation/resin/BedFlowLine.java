// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.resin;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.From;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.BedFlowQuantity;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.PressureQuantity;
import dev.brinebook.api.quantity.SurfaceFlowQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.ServiceFlow;
import dev.brinebook.softener.BedDuty;
import dev.brinebook.softener.BedHydraulics;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

@SchemaDescription("A flow through the bed, and its pressure drop.")
public record BedFlowLine(
        @Property(value = "Origin of the flow: the flow given, or a guide: 6 and 8 gpm per square foot of tank; 1 and 5 gpm, "
                + "and 10 gpm for peak flow, per cubic foot of resin.", example = "\"guideHighVelocity\"") BedFlowOrigin origin,
        @Basis(formula = "formula.resin.givenFlowOrFlow", source = "CP-HYDRAULICS")
        @Property("The flow.") FlowQuantity flow,
        @From("flow")
        @Property("Velocity over the empty cross-section of the tank.") SurfaceFlowQuantity surfaceFlow,
        @From("flow")
        @Property("The flow per volume of resin.") BedFlowQuantity bedFlow,
        @Property(value = "The same in bed volumes an hour.", min = 0, example = "40.1") BigDecimal bedVolumesPerHour,
        @Basis(formula = "formula.resin.resinVolumeFlowEquals", source = "DAVIS")
        @From("bedVolumesPerHour")
        @Property(value = "Empty-bed contact time: volume of the settled resin divided by the flow.", min = 0, example = "1.5",
                unit = "minutes") BigDecimal emptyBedContactMinutes,
        @Basis(formula = "formula.resin.voidsCleanBedTime", source = "CP-RESIN-BEAD")
        @From("emptyBedContactMinutes")
        @Property(value = "Contact time in the voids: void volume of the clean bed divided by the flow.", min = 0,
                example = "0.57", unit = "minutes") BigDecimal voidContactMinutes,
        @Basis(formula = "formula.resin.depth150Viscosity1", source = "ERGUN-1952")
        @From("surfaceFlow")
        @Property("Pressure drop in the clean bed. Valve and distributors add to it.") PressureQuantity pressureDrop,
        @Basis(formula = "formula.resin.sameFormulaMeanDiameter", source = "ERGUN-1952")
        @From("surfaceFlow")
        @Property("Pressure drop in the bed with crushed beads.") PressureQuantity crushedPressureDrop) {

    /** The flows given, then those of the guides. */
    static List<BedFlowLine> all(BedHydraulics hydraulics, BedDuty duty, AnswerUnits units) {
        List<BedFlowLine> lines = new ArrayList<>();
        duty.serviceLitresPerMinute().ifPresent(flow -> lines.add(of(BedFlowOrigin.SERVICE_FLOW, flow, hydraulics, units)));
        duty.peakLitresPerMinute().ifPresent(flow -> lines.add(of(BedFlowOrigin.PEAK_FLOW, flow, hydraulics, units)));
        Arrays.stream(BedFlowOrigin.values()).filter(BedFlowOrigin::isGuide).forEach(guide -> lines.add(of(guide,
                guide.flowLitresPerMinute(hydraulics.bed()), hydraulics, units)));
        return lines;
    }

    private static BedFlowLine of(BedFlowOrigin origin, double flow, BedHydraulics hydraulics, AnswerUnits units) {
        ResinBed bed = hydraulics.bed();
        return new BedFlowLine(origin, units.flow(flow), units.surfaceFlow(bed.velocityMetresPerHour(flow)),
                units.bedFlow(bed.bedVolumesPerHour(flow)), Rounding.answer(bed.bedVolumesPerHour(flow)),
                Rounding.answer(bed.emptyBedContactMinutes(flow)), Rounding.answer(bed.voidContactMinutes(flow)),
                units.pressure(hydraulics.cleanDropPascals(flow) / 1000),
                units.pressure(hydraulics.crushedDropPascals(flow) / 1000));
    }

    static void explain(AnswerUnits units, Explanation explanation) {
        explanation.because("/pressureDrops/*/surfaceFlow", Message.of("formula.resin.flowCrossSectionTank",
                Text.span(units.surfaceFlow(ServiceFlow.GUIDE_LOW_VELOCITY_METRES_PER_HOUR),
                units.surfaceFlow(ServiceFlow.GUIDE_HIGH_VELOCITY_METRES_PER_HOUR))), "LIN");
        for (String perResin : List.of("bedFlow", "bedVolumesPerHour")) {
            explanation.because("/pressureDrops/*/" + perResin, Message.of("formula.resin.flowResinVolumeGuide",
                    Text.span(units.bedFlow(ServiceFlow.GUIDE_LOW_BED_VOLUMES_PER_HOUR),
                    units.bedFlow(ServiceFlow.GUIDE_HIGH_BED_VOLUMES_PER_HOUR))), "DAVIS");
            explanation.because("/pressureDrops/*/" + perResin, Message.of("formula.resin.peakFlow",
                    Text.of(units.bedFlow(ServiceFlow.GUIDE_PEAK_BED_VOLUMES_PER_HOUR))), "CP-HYDRAULICS");
        }
    }
}
