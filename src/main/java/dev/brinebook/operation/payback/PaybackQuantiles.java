package dev.brinebook.operation.payback;

import dev.brinebook.api.About;
import dev.brinebook.api.FigureAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.guard.Figure;
import dev.brinebook.guard.NoAnswer;
import dev.brinebook.payback.UncertainWorth.Quantiles;

@About("Simple payback, in years, that a share of the draws stay below; 0 where nothing more is paid at first.")
public record PaybackQuantiles(
        @Property("5 % stay below it.") FigureAnswer percentile5,
        @Property("25 % stay below it.") FigureAnswer percentile25,
        @Property("Half stay below it.") FigureAnswer median,
        @Property("75 % stay below it.") FigureAnswer percentile75,
        @Property("95 % stay below it.") FigureAnswer percentile95) {

    static PaybackQuantiles of(Quantiles years) {
        return new PaybackQuantiles(at(years, 0.05), at(years, 0.25), at(years, 0.5), at(years, 0.75), at(years, 0.95));
    }

    private static FigureAnswer at(Quantiles years, double share) {
        double value = years.at(share);
        return FigureAnswer.of(value < Double.POSITIVE_INFINITY ? Figure.of(value) : Figure.none(NoAnswer.NOTHING_SAVED), 1);
    }
}
