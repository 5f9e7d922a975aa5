// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.Basis;
import dev.brinebook.api.OptionalResultAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.household.GammaFit;
import dev.brinebook.household.UseEstimate;
import dev.brinebook.quantity.Rounding;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.util.List;

@SchemaDescription("Estimates for the household from the days. Each is the most likely value.")
public record UseEstimates(
        @Basis(formula = "formula.household.sumKnownDaysTheir", source = "CP-METER-READING")
        @Property("Mean use of all known days.") VolumeQuantity mean,
        @Basis(formula = "formula.household.meanEachWeekdayMost", source = "CHOI-WETTE")
        @Property("Mean use of a week of days with somebody at home.") VolumeQuantity occupiedMean,
        @Basis(formula = "formula.household.meanEachWeekdayMean", source = "CHOI-WETTE")
        @Property(value = "Use on each weekday, divided by that mean, Monday first.", optional = "when a weekday has fewer than four "
                + "readings", min = 0, example = "[0.95, 0.97, 0.96, 0.98, 1.01, 1.08, 1.05]", eachOf = DayOfWeek.class)
                List<BigDecimal> weekdayFactors,
        @Basis(formula = "formula.household.meanFactorsSaturdaySunday", source = "CHOI-WETTE")
        @Property(value = "Use on a weekend day, divided by use on a weekday.", optional = "when weekdayFactors is absent, or when "
                + "the weekdays have no use", min = 0, example = "1.1") BigDecimal weekendRatio,
        @Basis(formula = "meter.daysLessThan10", source = "DAIAD")
        @Property(value = "Vacant days: less than 10 L, or, divided by the mean of the weekday, "
                + "less than 10 % of the median. Weekdays that are always idle are not counted.", min = 0, unit = "days", example = "12")
        Integer emptyDays,
        @Basis(formula = "meter.daysLessThan10", source = "DAIAD")
        @Property(value = "Share of vacant days among the counted days.", min = 0, max = 1, example = "0.033") BigDecimal emptyShare,
        @Basis(formula = "meter.numberTimesDayOne", source = "ANDERSON-GOODMAN")
        @Property("Probability that a vacant day follows an occupied one.") OptionalResultAnswer leaveProbability,
        @Basis(formula = "meter.numberTimesDayOne", source = "ANDERSON-GOODMAN")
        @Property("Probability that an occupied day follows a vacant one.") OptionalResultAnswer returnProbability,
        @Basis(formula = "formula.household.lnPsiLnMean", source = "CHOI-WETTE")
        @Property("Shape of the gamma distribution of the occupied days, each divided by the mean of its weekday.")
        OptionalResultAnswer gammaShape,
        @Basis(formula = "formula.household.of1ShapeGammaBest", source = "DAIAD")
        @Property(value = "Scatter of those days: standard deviation divided by mean, which is 1 divided by the square root of the "
                + "shape.",
                min = 0, example = "0.42") BigDecimal dayToDayVariation,
        @Basis(formula = "formula.household.informationShapeNumberDays", source = "CHOI-WETTE")
        @Property(value = "Standard error of the scatter.", optional = "when the days do not differ", min = 0, example = "0.016")
        BigDecimal dayToDayVariationError,
        @Basis(formula = "formula.household.andersonDarlingStatisticCompared", source = "STEPHENS-1986")
        @Property(value = "Goodness of fit of the gamma distribution.", optional = "for fewer than 20 occupied days, or "
                + "days that do not differ") UseFitAnswer fit,
        @Basis(formula = "formula.household.largestRankSumP", source = "PETTITT-1979")
        @Property(value = "Probability that a change of level this large occurs by chance.", optional = "for fewer than 28 occupied days",
                min = 0, max = 1, example = "0.31") BigDecimal changeProbability,
        @Basis(formula = "formula.household.pairsDaysRisePairs", source = "MANN-KENDALL")
        @Property(value = "Probability that a rise or fall this steady occurs by chance.", optional = "for fewer than 28 occupied days",
                min = 0, max = 1, example = "0.25") BigDecimal driftProbability) {

    static UseEstimates of(UseEstimate estimate, AnswerUnits units) {
        boolean shaped = estimate.shape().exists();
        return new UseEstimates(units.volume(estimate.meanLitres()), units.volume(estimate.occupiedMeanLitres()),
                estimate.weekdayFactors().map(all -> all.stream().map(Rounding::answer).toList()).orElse(null),
                estimate.weekdayFactors().map(all -> estimate.weekendRatio()).filter(Double::isFinite).map(Rounding::answer)
                        .orElse(null),
                estimate.presence().emptyDays(), Rounding.answer(estimate.presence().emptyShare()),
                OptionalResultAnswer.of(estimate.presence().leave(), 1), OptionalResultAnswer.of(estimate.presence().comeBack(), 1),
                OptionalResultAnswer.of(estimate.shape(), 1), Rounding.answer(estimate.occupiedCv()),
                shaped ? Rounding.answer(GammaFit.cvStandardError(estimate.shape().value(),
                        estimate.presence().occupiedDays())) : null,
                estimate.fit().map(statistic -> UseFitAnswer.of(statistic, estimate.shape().value())).orElse(null),
                estimate.change().map(change -> Rounding.answer(change.probability())).orElse(null),
                estimate.trend().map(trend -> Rounding.answer(trend.probability())).orElse(null));
    }
}
