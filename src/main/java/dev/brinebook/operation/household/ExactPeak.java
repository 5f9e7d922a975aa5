// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.household.FlowDistribution;
import dev.brinebook.household.PeakFlowEstimate;
import dev.brinebook.text.Message;
import java.util.Optional;

@SchemaDescription("Peak flow by the same statistics without a fit: from every combination of fixtures and its probability.")
public record ExactPeak(
        @Basis(formula = "formula.household.percentileDistributionSumAll", source = "BUCHBERGER-2017")
        @Property("Percentile of the flow in the moments with any flow.")
        PeakFigure peak,
        @Basis(formula = "formula.household.percentileSameDistributionWithout", source = "BUCHBERGER-2017")
        @Property(value = "The same for all moments of the busy hour, including those without flow.",
                optional = ExactPeak.NO_DISTRIBUTION) FlowQuantity ofAllMoments,
        @Property(value = "Step of flow in the calculation. The error of the peak is at most half a step per running fixture.",
                optional = ExactPeak.NO_DISTRIBUTION) FlowQuantity step) {

    static final String NO_DISTRIBUTION = "when peak has no flow";

    static ExactPeak of(PeakFlowEstimate estimate, AnswerUnits units) {
        PeakFigure peak = PeakFigure.of(estimate.exactLitresPerMinute(), units);
        Optional<FlowDistribution> flows = estimate.distribution();
        return new ExactPeak(peak,
                flows.map(f -> units.flow(f.percentileLitresPerMinute(estimate.percentile()))).orElse(null),
                flows.map(f -> units.flow(f.stepLitresPerMinute())).orElse(null));
    }

    static void explain(Explanation explanation) {
        explanation.because("/exact/step", explanation.inUnits(Message.of("exactPeak.one005Gpm")), "BUCHBERGER-2017");
    }
}
