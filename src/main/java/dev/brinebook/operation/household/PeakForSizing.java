// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.household.PeakFlowEstimate;
import dev.brinebook.household.SizingFlow;
import dev.brinebook.text.Message;
import java.util.Optional;

@SchemaDescription("Flows to size a softener for. sizeSoftener uses the same flows for these fixtures.")
public record PeakForSizing(
        @Basis(formula = "formula.household.exactPercentileOrAbove", source = "BUCHBERGER-2017")
        @Property(value = "Peak flow.", optional = FittedPeak.UNMEASURED) FlowQuantity peakFlow,
        @Property(value = "Method used for the peak flow.", optional = FittedPeak.UNMEASURED) SizingFlow.Method method,
        @Basis(formula = "formula.household.everySecondShowerLeast", source = "CP-HYDRAULICS")
        @Basis(formula = "formula.household.leastMeanBusyHour", source = "BUCHBERGER-2017")
        @Property(value = "Continuous flow.", optional = FittedPeak.UNMEASURED) FlowQuantity continuousFlow,
        @Basis(formula = "formula.household.demandCurveGivesTwo", source = "CP-DEMAND-CURVE")
        @Property(value = "Reason for these flows.", example = "\"There are few enough fixtures to count every combination, so "
                + "nothing is fitted.\"") Message why) {

    static PeakForSizing of(PeakFlowEstimate estimate, AnswerUnits units) {
        Optional<SizingFlow> sizing = estimate.sizing();
        return new PeakForSizing(sizing.map(flow -> units.flow(flow.peakLitresPerMinute())).orElse(null),
                sizing.map(SizingFlow::method).orElse(null),
                sizing.map(flow -> units.flow(flow.continuousLitresPerMinute())).orElse(null),
                sizing.map(flow -> why(flow.method())).orElseGet(() -> Message.of("peakForSizing.howOftenOneFixtures")));
    }

    private static Message why(SizingFlow.Method method) {
        return switch (method) {
            case EXACT -> Message.of("peakForSizing.thereFewEnoughFixtures");
            case MODIFIED_WISTORT -> Message.of("peakForSizing.thereTooManyFixtures");
            case CONTINUOUS_FLOW -> Message.of("peakForSizing.continuousFlowMoreThan");
        };
    }
}
