package dev.brinebook.operation.household;

import dev.brinebook.api.About;
import dev.brinebook.api.FigureAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.household.GammaFit;
import dev.brinebook.household.UseEstimate;
import dev.brinebook.quantity.Rounding;
import java.math.BigDecimal;
import java.util.List;

@About("What the days say of the household, each the most likely value.")
public record UseEstimates(
        @Property("Mean of all known days.") VolumeQuantity mean,
        @Property("Mean of a week of days with somebody there.") VolumeQuantity occupiedMean,
        @Property(value = "Use of each weekday over that mean, Monday first.", optional = "when a weekday was seen less than"
                + " four times", min = 0, example = "[0.95, 0.97, 0.96, 0.98, 1.01, 1.08, 1.05]") List<BigDecimal> weekdayFactors,
        @Property(value = "Use of a weekend day over use of another day.", optional = "when weekdayFactors is, or when the"
                + " other days are idle", min = 0, example = "1.1") BigDecimal weekendRatio,
        @Property(value = "Days with nobody there: less than 10 L, or less, over the mean of their weekday, than 10 % of the"
                + " median. Weekdays that are always idle are not counted.", min = 0, unit = "days", example = "12")
        Integer emptyDays,
        @Property(value = "Their share of the days that are counted.", min = 0, max = 1, example = "0.033") BigDecimal emptyShare,
        @Property("Probability that the day after one with somebody there is empty.") FigureAnswer leaveProbability,
        @Property("Probability that somebody is there on the day after an empty one.") FigureAnswer returnProbability,
        @Property("Shape of the gamma distribution of the days with somebody there, over the mean of their weekday.")
        FigureAnswer gammaShape,
        @Property(value = "Scatter of those days: standard deviation over mean, 1 over the root of the shape.",
                min = 0, example = "0.42") BigDecimal dayToDayVariation,
        @Property(value = "Standard error of the scatter.", optional = "when the days do not differ", min = 0, example = "0.016")
        BigDecimal dayToDayVariationError,
        @Property(value = "How well the gamma distribution fits.", optional = "for fewer than 20 days with somebody there, or"
                + " days that do not differ") UseFitAnswer fit,
        @Property(value = "Probability of so large a change of level by chance.", optional = "for fewer than 28 days with"
                + " somebody there", min = 0, max = 1, example = "0.31") BigDecimal changeProbability,
        @Property(value = "Probability of so steady a rise or fall by chance.", optional = "for fewer than 28 days with"
                + " somebody there", min = 0, max = 1, example = "0.25") BigDecimal driftProbability) {

    static UseEstimates of(UseEstimate estimate, AnswerUnits units) {
        boolean shaped = estimate.shape().exists();
        return new UseEstimates(units.volume(estimate.meanLitres()), units.volume(estimate.occupiedMeanLitres()),
                estimate.weekdayFactors().map(all -> all.stream().map(Rounding::answer).toList()).orElse(null),
                estimate.weekdayFactors().map(all -> estimate.weekendRatio()).filter(Double::isFinite).map(Rounding::answer)
                        .orElse(null),
                estimate.presence().emptyDays(), Rounding.answer(estimate.presence().emptyShare()),
                FigureAnswer.of(estimate.presence().leave(), 1), FigureAnswer.of(estimate.presence().comeBack(), 1),
                FigureAnswer.of(estimate.shape(), 1), Rounding.answer(estimate.occupiedCv()),
                shaped ? Rounding.answer(GammaFit.cvStandardError(estimate.shape().value(),
                        estimate.presence().occupiedDays())) : null,
                estimate.fit().map(statistic -> UseFitAnswer.of(statistic, estimate.shape().value())).orElse(null),
                estimate.change().map(change -> Rounding.answer(change.probability())).orElse(null),
                estimate.trend().map(trend -> Rounding.answer(trend.probability())).orElse(null));
    }
}
