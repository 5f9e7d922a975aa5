package dev.brinebook.operation.household;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.guard.Figure;
import dev.brinebook.household.DemandCurve;
import dev.brinebook.household.PeakFlowEstimate;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;

@About("Peak flow by the plumbing code: fixture units and a demand curve. What pipes are sized for.")
public record CodePeak(
        @Property("The flow.") PeakFigure peak,
        @Property(value = "Water supply fixture units together.", optional = "when a fixture has none in its use",
                min = 0, example = "11.4") BigDecimal fixtureUnits,
        @Property("The curve read.") DemandCurve demandCurve) {

    static CodePeak of(PeakFlowEstimate estimate, AnswerUnits units) {
        Figure sum = estimate.schedule().fixtureUnits();
        return new CodePeak(PeakFigure.of(estimate.codeLitresPerMinute(), units),
                sum.exists() ? Rounding.answer(sum.value()) : null, estimate.curve());
    }

    static void explain(Explanation explanation) {
        explanation.because("/code/fixtureUnits", Message.of("sum of the fixture units of table E103.3(2), a bathroom group"
                + " as a group"), "IPC-E103");
        explanation.because("/code/peak", Message.of("demand of table E103.3(3) at that sum, linear between its rows, none"
                + " outside"), "IPC-E103");
    }
}
