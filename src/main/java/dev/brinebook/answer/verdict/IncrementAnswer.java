package dev.brinebook.answer.verdict;

import dev.brinebook.api.About;
import dev.brinebook.api.FigureAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.verdict.Increment;
import dev.brinebook.verdict.Step;
import java.math.BigDecimal;
import java.util.Currency;

@About("What a step is worth over another.")
public record IncrementAnswer(
        @Property(value = "The other step.", example = "\"setRight\"") Step over,
        @Property("Salt and water that it saves in the first year; negative where it costs more.") Money savedPerYear,
        @Property(value = "The same over a clock that somebody sets again every season.", optional = "unless the other is a clock")
        Money savedPerYearOverSeasonalClock,
        @Property("What it may cost more than the other to have, so that it just pays over the horizon; 0 where it saves nothing.")
        Money worthUpTo,
        @Property(value = "What is saved over the horizon, in today's money, less what it costs more to have.",
                optional = "when what it costs is not given") Money netPresentValue,
        @Property(value = "What it costs more to have over what it saves in the first year.",
                optional = "when what it costs is not given") FigureAnswer simplePaybackYears,
        @Property(value = "Chance that it pays over the horizon, as far as level of use and hardness are not known exactly.", min = 0,
                max = 100, unit = "%", optional = "when what it costs is not given", example = "87") BigDecimal paysPercent) {

    static IncrementAnswer of(Increment increment, Currency currency) {
        return new IncrementAnswer(increment.over(), Money.of(increment.savedPerYear(), currency),
                increment.savedPerYearOverSeasonal().isEmpty() ? null
                        : Money.of(increment.savedPerYearOverSeasonal().getAsDouble(), currency),
                Money.of(Math.max(0, increment.worthUpTo()), currency),
                increment.worth().map(worth -> Money.of(worth.netPresentValue(), currency)).orElse(null),
                increment.worth().map(worth -> FigureAnswer.of(worth.simplePaybackYears(), 1)).orElse(null),
                increment.chanceOfPaying().isEmpty() ? null : Rounding.answer(100 * increment.chanceOfPaying().getAsDouble()));
    }
}
