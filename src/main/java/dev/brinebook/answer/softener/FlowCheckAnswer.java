package dev.brinebook.answer.softener;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.BedFlowQuantity;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.api.quantity.PressureQuantity;
import dev.brinebook.api.quantity.SurfaceFlowQuantity;
import dev.brinebook.resin.ServiceFlow;
import dev.brinebook.softener.Fit;
import dev.brinebook.wording.Message;
import java.util.List;

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

    /** Tells why both checks below {@code pointer} have the numbers they have. */
    public static void explain(String pointer, AnswerUnits units, Explanation explanation) {
        Message drop = Text.of(units.pressure(ServiceFlow.GUIDE_PRESSURE_DROP_PASCALS / 1000));
        explanation.because(pointer + "/continuousFlow/limit", Message.of("the least of {0} over the cross-section of the tank,"
                + " {1} through the resin and the flow that loses {2} in the bed",
                Text.of(units.surfaceFlow(ServiceFlow.GUIDE_HIGH_VELOCITY_METRES_PER_HOUR)),
                Text.of(units.bedFlow(ServiceFlow.GUIDE_HIGH_BED_VOLUMES_PER_HOUR)), drop), "LIN");
        explanation.because(pointer + "/peakFlow/limit", Message.of("the lesser of {0} through the resin and the flow that"
                + " loses {1} in the bed", Text.of(units.bedFlow(ServiceFlow.GUIDE_PEAK_BED_VOLUMES_PER_HOUR)), drop),
                "CP-HYDRAULICS");
        for (String check : List.of("/continuousFlow/limit", "/peakFlow/limit")) {
            explanation.because(pointer + check, Message.of("{0} lost in the bed at most, by the product standard", drop),
                    "NSF-ANSI-44");
        }
        explainFlows(pointer + "/continuousFlow/flow", pointer + "/peakFlow/flow", explanation);
        for (String check : List.of(pointer + "/continuousFlow", pointer + "/peakFlow")) {
            explanation.because(check + "/surfaceFlow", Message.of("flow over the cross-section of the tank"), "LIN");
            explanation.because(check + "/bedFlow", Message.of("flow over resin volume"), "DAVIS");
            explanation.because(check + "/pressureDrop", Message.of("Ergun's equation for the clean bed at the water's"
                    + " temperature"), "ERGUN-1952");
        }
    }

    /** Tells where the flows of a household come from. */
    public static void explainFlows(String lastingPointer, String peakPointer, Explanation explanation) {
        explanation.because(lastingPointer, Message.of("as given, or one shower for every second bathroom, or what the listed"
                + " fixtures draw for long"), "BUCHBERGER-2017");
        explanation.because(peakPointer, Message.of("as given, or the 99th percentile of what the fixtures draw when any runs,"
                + " or the lasting flow if that is more"), "BUCHBERGER-2017");
    }
}
