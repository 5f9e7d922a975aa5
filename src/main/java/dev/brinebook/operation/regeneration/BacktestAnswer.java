// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.answer.household.HighDayAnswer;
import dev.brinebook.answer.regeneration.PolicyTotals;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.Basis;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.household.Days;
import dev.brinebook.regeneration.UsualHardDays;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.List;

@SchemaDescription("Results of settings on measured days, compared with the prediction for the same number of days.")
public record BacktestAnswer(
        @Property(value = "Summary in two or three sentences, to quote.",
                example = "\"On your 365 days these settings would have had 2.3 hard days.\"") Message summary,
        @Property(value = "Verdict: asPredicted unless hardDaysWithoutThem, in whole days, is outside usualHardDays. Leaks and "
                + "fillings are not caused by the settings.", example = "\"asPredicted\"") UsualHardDays.Verdict verdict,
        @Basis
        @Property(value = "Number of measured days.", min = 1, max = Days.MAX_DAYS, unit = "days", example = "365") Integer days,
        @Basis
        @Property(value = "Days in the period that were not measured and are left out.", min = 0, max = Days.MAX_DAYS, unit = "days",
                example = "3") Integer missingDays,
        @Property("Compensated hardness.") HardnessLines hardness,
        @Property("Capacity restored per regeneration.") CapacityQuantity capacity,
        @Basis(formula = "formula.regeneration.meanMeasuredDaysSoftened", source = "REQUEST")
        @Property("Mean softened use per day on these days.") VolumeQuantity dailyUse,
        @Basis(formula = "formula.common.indoorUseSoftenedShare", source = "REU-2016")
        @Property("Mean softened use per day in the prediction.") VolumeQuantity expectedDailyUse,
        @Property("Consumption and performance of the settings on these days.") PolicyTotals onTheseDays,
        @Basis(formula = "formula.regeneration.longRunResultExpected", source = "FELLER")
        @Property("Predicted values for the same number of days.") PolicyTotals predicted,
        @Basis(formula = "formula.regeneration.of595PointsPoisson", source = "ABRAMOWITZ-STEGUN")
        @Property("Usual number of hard days for the same number of days.") UsualRange usualHardDays,
        @Property(value = "Days with a use above four times the median day with somebody at home, such as from a leak.",
                maxItems = Days.MAX_DAYS)
        List<HighDayAnswer> exceptionalDays,
        @Property(value = "Hard days if the use on these days were limited to four times the "
                + "median day.", min = 0, unit = "days", example = "0.4")
        BigDecimal hardDaysWithoutThem,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property(value = "Values that were assumed.", optional = AnswerParts.NOT_STANDARD) List<Resolved> assumptions,
        @Property(value = "Formula and source of each number.", optional = AnswerParts.NOT_STANDARD) List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
