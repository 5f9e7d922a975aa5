package dev.brinebook.resin.api;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.quantity.api.BedFlowQuantity;
import dev.brinebook.quantity.api.FlowQuantity;
import dev.brinebook.quantity.api.PressureQuantity;
import dev.brinebook.quantity.api.SurfaceFlowQuantity;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.softener.BedDuty;
import dev.brinebook.softener.BedHydraulics;
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

    static void explain(Explanation explanation) {
        explanation.because("/pressureDrops/*/surfaceFlow", "flow over the cross-section of the tank; 6 to 8 gpm per square"
                + " foot", "LIN");
        explanation.because("/pressureDrops/*/bedVolumesPerHour", "flow over resin volume; 1 to 5 gpm per cubic foot",
                "DAVIS");
        explanation.because("/pressureDrops/*/bedVolumesPerHour", "10 gpm per cubic foot in short peaks", "CP-HYDRAULICS");
        explanation.because("/pressureDrops/*/emptyBedContactMinutes", "resin volume over flow: 60 over bed volumes an hour",
                "DAVIS");
        explanation.because("/pressureDrops/*/voidContactMinutes", "voids of the clean bed times that", "CP-RESIN-BEAD");
        explanation.because("/pressureDrops/*/pressureDrop", "depth times 150 viscosity (1 - voids)^2 velocity / (voids^3"
                + " diameter^2) + 1.75 density (1 - voids) velocity^2 / (voids^3 diameter)", "ERGUN-1952");
        explanation.because("/pressureDrops/*/crushedPressureDrop", "the same with the mean diameter and the voids of the bed"
                + " with crushed beads, at the same depth", "ERGUN-1952");
    }
}
