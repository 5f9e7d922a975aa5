package dev.brinebook.operation.household;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.household.PeakFlowEstimate;
import dev.brinebook.household.SizingFlow;
import dev.brinebook.wording.Message;
import java.util.Optional;

@About("The flows to size a softener for, as sizing takes them when it is told the same fixtures.")
public record PeakForSizing(
        @Property(value = "Flow of short peaks.", optional = FittedPeak.UNMEASURED) FlowQuantity peakFlow,
        @Property(value = "How it was found.", optional = FittedPeak.UNMEASURED) SizingFlow.Method method,
        @Property(value = "Flow that lasts for minutes.", optional = FittedPeak.UNMEASURED) FlowQuantity continuousFlow,
        @Property(value = "Why these.", example = "\"With so few fixtures every combination can be counted.\"") Message why) {

    static PeakForSizing of(PeakFlowEstimate estimate, AnswerUnits units) {
        Optional<SizingFlow> sizing = estimate.sizing();
        return new PeakForSizing(sizing.map(flow -> units.flow(flow.peakLitresPerMinute())).orElse(null),
                sizing.map(SizingFlow::method).orElse(null),
                sizing.map(flow -> units.flow(flow.continuousLitresPerMinute())).orElse(null),
                sizing.map(flow -> why(flow.method())).orElseGet(() -> Message.of("How often one of the fixtures runs was not"
                        + " measured: give its busyProbability and flow, or measure the peak. The flow of the code is on the safe"
                        + " side.")));
    }

    private static Message why(SizingFlow.Method method) {
        return switch (method) {
            case EXACT -> Message.of("The fixtures are few enough to count every combination, so nothing is fitted; the demand"
                    + " curve of the code is for pipes, and a softener sized for it would be too large and let slow water find"
                    + " channels.");
            case MODIFIED_WISTORT -> Message.of("The fixtures are too many to count every combination, and enough for the normal"
                    + " fit; the demand curve of the code is for pipes.");
            case CONTINUOUS_FLOW -> Message.of("The flow that lasts is more than the percentile of what the fixtures draw: a"
                    + " softener must take it all the same.");
        };
    }

    static void explain(Explanation explanation) {
        explanation.because("/sizing/peakFlow", Message.of("the exact percentile, above 200 fixtures the fitted one, and never"
                + " less than the flow that lasts"), "BUCHBERGER-2017");
        explanation.because("/sizing/continuousFlow", Message.of("every second shower, at least one and at most six, or without"
                + " showers the fixture of most flow"), "CP-HYDRAULICS");
        explanation.because("/sizing/continuousFlow", Message.of("not less than the mean of the busy hour, which decides in large"
                + " buildings"), "BUCHBERGER-2017");
        explanation.because("/sizing/why", Message.of("the demand curve is two to three times what houses draw"),
                "CP-DEMAND-CURVE");
    }
}
