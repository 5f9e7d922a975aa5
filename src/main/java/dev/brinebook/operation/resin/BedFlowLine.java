package dev.brinebook.operation.resin;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
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
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

@About("A flow through the bed, and what it loses there.")
public record BedFlowLine(
        @Property(value = "The flow given, or the guide: 6 and 8 gpm per square foot of tank; 1, 5 and in short peaks 10 gpm"
                + " per cubic foot of resin.", example = "\"guideHighVelocity\"") BedFlowOrigin origin,
        @Property("The flow.") FlowQuantity flow,
        @Property("Its velocity over the empty cross-section of the tank.") SurfaceFlowQuantity surfaceFlow,
        @Property("The flow per volume of resin.") BedFlowQuantity bedFlow,
        @Property(value = "The same in bed volumes an hour.", min = 0, example = "40.1") BigDecimal bedVolumesPerHour,
        @Property(value = "Empty-bed contact time: volume of the settled resin over the flow.", min = 0, example = "1.5",
                unit = "minutes") BigDecimal emptyBedContactMinutes,
        @Property(value = "Time that the water is between the beads: the voids of the clean bed over the flow.", min = 0,
                example = "0.57", unit = "minutes") BigDecimal voidContactMinutes,
        @Property("Pressure lost in the clean bed; valve and distributors add to it.") PressureQuantity pressureDrop,
        @Property("Pressure lost in the bed with crushed beads.") PressureQuantity crushedPressureDrop) {

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
        explanation.because("/pressureDrops/*/flow", Message.of("the flow given, or what its guide comes to in this bed"),
                "CP-HYDRAULICS");
        explanation.because("/pressureDrops/*/surfaceFlow", Message.of("flow over the cross-section of the tank; {0} by the"
                + " guide", Text.span(units.surfaceFlow(ServiceFlow.GUIDE_LOW_VELOCITY_METRES_PER_HOUR),
                units.surfaceFlow(ServiceFlow.GUIDE_HIGH_VELOCITY_METRES_PER_HOUR))), "LIN");
        for (String perResin : List.of("bedFlow", "bedVolumesPerHour")) {
            explanation.because("/pressureDrops/*/" + perResin, Message.of("flow over resin volume; {0} by the guide",
                    Text.span(units.bedFlow(ServiceFlow.GUIDE_LOW_BED_VOLUMES_PER_HOUR),
                    units.bedFlow(ServiceFlow.GUIDE_HIGH_BED_VOLUMES_PER_HOUR))), "DAVIS");
            explanation.because("/pressureDrops/*/" + perResin, Message.of("{0} in short peaks",
                    Text.of(units.bedFlow(ServiceFlow.GUIDE_PEAK_BED_VOLUMES_PER_HOUR))), "CP-HYDRAULICS");
        }
        explanation.because("/pressureDrops/*/emptyBedContactMinutes", Message.of("resin volume over flow: 60 over bed"
                + " volumes an hour"), "DAVIS");
        explanation.because("/pressureDrops/*/voidContactMinutes", Message.of("voids of the clean bed times that"),
                "CP-RESIN-BEAD");
        explanation.because("/pressureDrops/*/pressureDrop", Message.of("depth times 150 viscosity (1 - voids)^2 velocity /"
                + " (voids^3 diameter^2) + 1.75 density (1 - voids) velocity^2 / (voids^3 diameter)"), "ERGUN-1952");
        explanation.because("/pressureDrops/*/crushedPressureDrop", Message.of("the same with the mean diameter and the"
                + " voids of the bed with crushed beads, at the same depth"), "ERGUN-1952");
    }
}
