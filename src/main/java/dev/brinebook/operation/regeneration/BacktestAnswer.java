package dev.brinebook.operation.regeneration;

import dev.brinebook.answer.household.HighDayAnswer;
import dev.brinebook.answer.regeneration.PolicyTotals;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.household.Days;
import dev.brinebook.regeneration.UsualHardDays;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.List;

@About("What settings would have done on real days, beside what was predicted of as many days.")
public record BacktestAnswer(
        @Property(value = "Two or three sentences to quote.", example = "\"On your 365 days these settings would have left 2.3 hard"
                + " days.\"") Message summary,
        @Property(value = "asPredicted unless hardDaysWithoutThem, in whole days, lies outside of usualHardDays: leaks and"
                + " fillings are no fault of the settings.", example = "\"asPredicted\"") UsualHardDays.Verdict verdict,
        @Property(value = "Days that were measured.", min = 1, max = Days.MAX_DAYS, unit = "days", example = "365") Integer days,
        @Property(value = "Days among them that were not measured and are left out.", min = 0, max = Days.MAX_DAYS, unit = "days",
                example = "3") Integer missingDays,
        @Property("Hardness once iron and manganese count.") HardnessLines hardness,
        @Property("Capacity that a regeneration restores.") CapacityQuantity capacity,
        @Property("Mean softened use of a day on these days.") VolumeQuantity dailyUse,
        @Property("Mean softened use of a day by which the prediction was made.") VolumeQuantity expectedDailyUse,
        @Property("What the settings would have used and delivered on these days.") PolicyTotals onTheseDays,
        @Property("What was to be expected of as many days.") PolicyTotals predicted,
        @Property("How many hard days are usual of as many days.") UsualRange usualHardDays,
        @Property("Days that used more than four times a median day with somebody at home, such as by a leak.")
        List<HighDayAnswer> exceptionalDays,
        @Property(value = "Hard days if these days had used four times the median day.", min = 0, unit = "days", example = "0.4")
        BigDecimal hardDaysWithoutThem,
        @Property("What to be careful about.") List<CautionAnswer> cautions,
        @Property("Values that were taken.") List<AssumptionAnswer> assumptions,
        @Property("Why each number is what it is.") List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
