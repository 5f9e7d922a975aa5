package dev.brinebook.operation.household;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.household.FlowDistribution;
import dev.brinebook.household.PeakFlowEstimate;
import dev.brinebook.wording.Message;
import java.util.Optional;

@About("Peak flow by the same statistics without a fit: every combination of fixtures, each as likely as it is.")
public record ExactPeak(
        @Property("The least flow that is not exceeded in the percentile of the moments in which water is drawn.")
        PeakFigure peak,
        @Property(value = "The same of all moments of the busy hour, also those in which nothing is drawn.",
                optional = ExactPeak.NO_DISTRIBUTION) FlowQuantity ofAllMoments,
        @Property(value = "Step of flow in which they are counted: the peak is off by half of it at most for each fixture"
                + " that runs.", optional = ExactPeak.NO_DISTRIBUTION) FlowQuantity step) {

    static final String NO_DISTRIBUTION = "when peak has no flow";

    static ExactPeak of(PeakFlowEstimate estimate, AnswerUnits units) {
        PeakFigure peak = PeakFigure.of(estimate.exactLitresPerMinute(), units);
        Optional<FlowDistribution> flows = estimate.distribution();
        return new ExactPeak(peak,
                flows.map(f -> units.flow(f.percentileLitresPerMinute(estimate.percentile()))).orElse(null),
                flows.map(f -> units.flow(f.stepLitresPerMinute())).orElse(null));
    }

    static void explain(Explanation explanation) {
        explanation.because("/exact/peak", Message.of("percentile of the distribution of the sum of all fixtures, each running"
                + " or not by itself, given that any runs"), "BUCHBERGER-2017");
        explanation.because("/exact/ofAllMoments", Message.of("percentile of the same distribution without that condition"),
                "BUCHBERGER-2017");
        explanation.because("/exact/step", explanation.inUnits(Message.of("of 0.05 gpm and 0.1 L/min the one that the flows of the"
                + " fixtures lie nearer to"), Message.of("of 0.1893 L/min and 0.1 L/min the one that the flows of the fixtures lie nearer"
                + " to")), "BUCHBERGER-2017");
    }
}
