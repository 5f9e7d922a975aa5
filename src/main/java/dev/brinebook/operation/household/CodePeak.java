// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.guard.OptionalResult;
import dev.brinebook.household.DemandCurve;
import dev.brinebook.household.PeakFlowEstimate;
import dev.brinebook.quantity.Rounding;
import java.math.BigDecimal;

@SchemaDescription("Peak flow by the plumbing code: fixture units and a demand curve. Used to size pipes.")
public record CodePeak(
        @Basis(formula = "formula.household.demandTableE1033", source = "IPC-E103")
        @Property("The flow.") PeakFigure peak,
        @Basis(formula = "formula.household.sumFixtureUnitsTable", source = "IPC-E103")
        @Property(value = "Total water supply fixture units.", optional = "when a fixture has none in its place of use",
                min = 0, example = "11.4") BigDecimal fixtureUnits,
        @Property("Demand curve used.") DemandCurve demandCurve) {

    static CodePeak of(PeakFlowEstimate estimate, AnswerUnits units) {
        OptionalResult sum = estimate.schedule().fixtureUnits();
        return new CodePeak(PeakFigure.of(estimate.codeLitresPerMinute(), units),
                sum.exists() ? Rounding.answer(sum.value()) : null, estimate.curve());
    }
}
