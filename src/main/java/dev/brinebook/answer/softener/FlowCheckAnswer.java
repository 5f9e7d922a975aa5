// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.softener;

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
import dev.brinebook.resin.ServiceFlow;
import dev.brinebook.softener.Fit;
import dev.brinebook.text.Message;
import java.util.List;

@SchemaDescription("A flow compared with the limit of the bed.")
public record FlowCheckAnswer(
        @Property("Flow of the household.") FlowQuantity flow,
        @Property("Maximum flow of the bed.") FlowQuantity limit,
        @Property(value = "Origin of the limit.", optional = "when it is the maker's rating") ServiceFlow.Limit binding,
        @Property(value = "Whether the flow is within the limit.", example = "true") Boolean withinLimit,
        @Basis(formula = "formula.common.flowCrossSectionTank", source = "LIN")
        @From("flow")
        @Property("Velocity over the cross-section of the tank.") SurfaceFlowQuantity surfaceFlow,
        @Basis(formula = "formula.softener.flowResinVolume", source = "DAVIS")
        @From("flow")
        @Property("Flow per volume of resin.") BedFlowQuantity bedFlow,
        @Basis(formula = "formula.softener.ergunsEquationCleanBed", source = "ERGUN-1952")
        @From("surfaceFlow")
        @Property("Pressure drop in a clean bed at this flow.") PressureQuantity pressureDrop) {

    /** The check in the units of the answer. */
    public static FlowCheckAnswer of(Fit.FlowCheck check, AnswerUnits units) {
        return new FlowCheckAnswer(units.flow(check.flowLitresPerMinute()), units.flow(check.limitLitresPerMinute()),
                check.binding(), check.withinLimit(), units.surfaceFlow(check.velocityMetresPerHour()),
                units.bedFlow(check.bedVolumesPerHour()), units.pressure(check.pressureDropPascals() / 1000));
    }

    /** Records formula and source of both checks below {@code pointer}. */
    public static void explain(String pointer, AnswerUnits units, Explanation explanation) {
        Message drop = Text.of(units.pressure(ServiceFlow.GUIDE_PRESSURE_DROP_PASCALS / 1000));
        explanation.because(pointer + "/continuousFlow/limit", Message.of("formula.softener.smallestOverCrossSection",
                Text.of(units.surfaceFlow(ServiceFlow.GUIDE_HIGH_VELOCITY_METRES_PER_HOUR)),
                Text.of(units.bedFlow(ServiceFlow.GUIDE_HIGH_BED_VOLUMES_PER_HOUR)), drop), "LIN");
        explanation.because(pointer + "/peakFlow/limit", Message.of("formula.softener.smallerThroughResinFlow",
                Text.of(units.bedFlow(ServiceFlow.GUIDE_PEAK_BED_VOLUMES_PER_HOUR)), drop),
                "CP-HYDRAULICS");
        for (String check : List.of("/continuousFlow/limit", "/peakFlow/limit")) {
            explanation.because(pointer + check, Message.of("formula.softener.pressureDropMostBed", drop),
                    "NSF-ANSI-44");
        }
        explainFlows(pointer + "/continuousFlow/flow", pointer + "/peakFlow/flow", explanation);
    }

    /** Records of both checks below {@code pointer} that no diameter of a tank is known. */
    public static void explainByResinAlone(String pointer, Explanation explanation) {
        Message byResin = Message.of("sizeSoftener.limitOfResinAlone");
        explanation.because(pointer + "/continuousFlow/limit", byResin, "DAVIS");
        explanation.because(pointer + "/peakFlow/limit", byResin, "CP-HYDRAULICS");
    }

    /** Records where the flows of a household come from. */
    public static void explainFlows(String lastingPointer, String peakPointer, Explanation explanation) {
        explanation.because(lastingPointer, Message.of("formula.softener.givenOrOneShower"), "BUCHBERGER-2017");
        explanation.because(peakPointer, Message.of("formula.softener.givenOrLargerContinuous"), "BUCHBERGER-2017");
    }
}
