// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.household.PeakFlow;
import dev.brinebook.household.PeakFlow.Fixtures;
import dev.brinebook.household.PeakFlowEstimate;
import dev.brinebook.quantity.Rounding;
import java.math.BigDecimal;
import java.util.List;

@SchemaDescription("Peak flow by statistics of homes: a normal distribution fitted to the flow while any fixture runs.")
public record FittedPeak(
        @Basis(formula = "formula.household.meanZ1Idle", source = "BUCHBERGER-2017")
        @Property("Percentile of the flow in the moments with any flow.") PeakFigure peak,
        @Basis(formula = "formula.household.sumCountProbabilityUse", source = "BUCHBERGER-2017")
        @Property(value = "Mean flow of the busy hour.", optional = FittedPeak.UNMEASURED) FlowQuantity mean,
        @Basis(formula = "formula.household.sumCountProbabilityUse1", source = "BUCHBERGER-2017")
        @Property(value = "Standard deviation of the flow. Its square is the variance.",
                optional = FittedPeak.UNMEASURED) FlowQuantity standardDeviation,
        @Basis(formula = "formula.household.product1ProbabilityUse", source = "BUCHBERGER-2017")
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
}
