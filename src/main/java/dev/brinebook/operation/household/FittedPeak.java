// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.household.PeakFlow;
import dev.brinebook.household.PeakFlow.Fixtures;
import dev.brinebook.household.PeakFlowEstimate;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.List;

@SchemaDescription("Peak flow by statistics of homes: a normal distribution fitted to the flow while any fixture runs.")
public record FittedPeak(
        @Property("Percentile of the flow in the moments with any flow.") PeakFigure peak,
        @Property(value = "Mean flow of the busy hour.", optional = FittedPeak.UNMEASURED) FlowQuantity mean,
        @Property(value = "Standard deviation of the flow. Its square is the variance.",
                optional = FittedPeak.UNMEASURED) FlowQuantity standardDeviation,
        @Property(value = "Share of the busy hour without flow.", optional = FittedPeak.UNMEASURED, min = 0,
                unit = "%", example = "77.524") BigDecimal idlePercent) {

    static final String UNMEASURED = "when the busy-hour probability of a fixture is not known";

    static FittedPeak of(PeakFlowEstimate estimate, AnswerUnits units) {
        PeakFigure peak = PeakFigure.of(estimate.fittedLitresPerMinute(), units);
        if (estimate.schedule().draws().isEmpty()) {
            return new FittedPeak(peak, null, null, null);
        }
        List<Fixtures> draws = estimate.schedule().draws().get();
        return new FittedPeak(peak, units.flow(PeakFlow.meanLitresPerMinute(draws)),
                units.flow(Math.sqrt(PeakFlow.variance(draws))), Rounding.answer(100 * PeakFlow.idleProbability(draws)));
    }

    static void explain(Explanation explanation) {
        explanation.because("/fitted/peak", Message.of("formula.household.meanZ1Idle"), "BUCHBERGER-2017");
        explanation.because("/fitted/mean", Message.of("formula.household.sumCountProbabilityUse"),
                "BUCHBERGER-2017");
        explanation.because("/fitted/standardDeviation", Message.of("formula.household.sumCountProbabilityUse1"), "BUCHBERGER-2017");
        explanation.because("/fitted/idlePercent", Message.of("formula.household.product1ProbabilityUse"),
                "BUCHBERGER-2017");
    }
}
