package dev.brinebook.operation.household;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.FlowQuantity;
import dev.brinebook.household.PeakFlow;
import dev.brinebook.household.PeakFlow.Fixtures;
import dev.brinebook.household.PeakFlowEstimate;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.List;

@About("Peak flow by statistics of homes: a normal curve fitted to the flow while any water is drawn.")
public record FittedPeak(
        @Property("The flow that is not exceeded in the percentile of the moments in which water is drawn.") PeakFigure peak,
        @Property(value = "Mean flow of the busy hour.", optional = FittedPeak.UNMEASURED) FlowQuantity mean,
        @Property(value = "Standard deviation of the flow about it; its square is the variance.",
                optional = FittedPeak.UNMEASURED) FlowQuantity standardDeviation,
        @Property(value = "How much of the busy hour nothing is drawn in.", optional = FittedPeak.UNMEASURED, min = 0,
                unit = "%", example = "77.524") BigDecimal idlePercent) {

    static final String UNMEASURED = "when how often a fixture runs was not measured";

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
        explanation.because("/fitted/peak", Message.of("(mean + z root of ((1 - idle) variance - idle mean^2)) / (1 - idle), z of"
                + " the normal distribution"), "BUCHBERGER-2017");
        explanation.because("/fitted/mean", Message.of("sum of count times busy probability times flow"),
                "BUCHBERGER-2017");
        explanation.because("/fitted/standardDeviation", Message.of("root of the sum of count times busy probability"
                + " times its complement times the flow squared"), "BUCHBERGER-2017");
        explanation.because("/fitted/idlePercent", Message.of("product of the complements of the busy probabilities, in percent"),
                "BUCHBERGER-2017");
    }
}
