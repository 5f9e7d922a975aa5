// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.verdict;

import dev.brinebook.api.Basis;
import dev.brinebook.api.OptionalResultAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.verdict.Increment;
import dev.brinebook.verdict.Step;
import java.math.BigDecimal;
import java.util.Currency;

@SchemaDescription("Benefit of a step over another step.")
public record IncrementAnswer(
        @Property(value = "The step compared with.", example = "\"setRight\"") Step over,
        @Property("Salt and water cost saved in the first year. Negative if it costs more.") Money savedPerYear,
        @Property(value = "The same over a clock that is reset every season.", optional = "unless the other is a clock")
        Money savedPerYearOverSeasonalClock,
        @Property("Maximum extra price at which it pays over the horizon. 0 if it saves nothing.")
        Money worthUpTo,
        @Property(value = "Net saving over the horizon, in today's money: savings less the extra price.",
                optional = "when the price is not given") Money netPresentValue,
        @Property(value = "Simple payback in years: extra price divided by the saving in the first year.",
                optional = "when the price is not given") OptionalResultAnswer simplePaybackYears,
        @Basis(formula = "formula.verdict.normalDistributionSavingMean", source = "ABRAMOWITZ-STEGUN")
        @Property(value = "Probability that it pays over the horizon, given the uncertainty of the water use and the hardness.", min = 0,
                max = 100, unit = "%", optional = "when the price is not given", example = "87") BigDecimal paysPercent) {

    static IncrementAnswer of(Increment increment, Currency currency) {
        return new IncrementAnswer(increment.over(), Money.of(increment.savedPerYear(), currency),
                increment.savedPerYearOverSeasonal().isEmpty() ? null
                        : Money.of(increment.savedPerYearOverSeasonal().getAsDouble(), currency),
                Money.of(Math.max(0, increment.worthUpTo()), currency),
                increment.worth().map(worth -> Money.of(worth.netPresentValue(), currency)).orElse(null),
                increment.worth().map(worth -> OptionalResultAnswer.of(worth.simplePaybackYears(), 1)).orElse(null),
                increment.chanceOfPaying().isEmpty() ? null : Rounding.answer(100 * increment.chanceOfPaying().getAsDouble()));
    }
}
