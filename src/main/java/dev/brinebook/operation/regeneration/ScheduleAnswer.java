package dev.brinebook.operation.regeneration;

import dev.brinebook.answer.payback.MeteringWorthAnswer;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.wording.Message;
import java.time.LocalDate;
import java.util.List;

@About("When a softener regenerates, what it uses, when it runs hard, and when to buy salt.")
public record ScheduleAnswer(
        @Property(value = "One sentence to quote.", example = "\"As found: 91 regenerations a year.\"") Message summary,
        @Property(value = "First day looked at.", example = "\"2026-01-01\"") LocalDate firstDate,
        @Property(value = "Days looked at.", min = 1, unit = "days", example = "365") Integer days,
        @Property("Hardness once iron and manganese count.") HardnessLines hardness,
        @Property("Mean softened use of a day.") VolumeQuantity dailyUse,
        @Property("Hardness that a mean day loads on the resin.") CapacityQuantity dailyLoad,
        @Property("Capacity that a regeneration restores.") CapacityQuantity capacity,
        @Property("Salt of one regeneration.") MassQuantity saltPerRegeneration,
        @Property("Water of one regeneration.") VolumeQuantity waterPerRegeneration,
        @Property("Each policy on these days.") List<PolicyAnswer> policies,
        @Property("Each policy but the first, less the first.") List<PolicyComparison> comparisons,
        @Property("What a meter saves over a clock set right, on this softener, as a range, at the prices that are usual.")
        MeteringWorthAnswer meterOverClockSetRight,
        @Property("What to be careful about.") List<CautionAnswer> cautions,
        @Property("Values that were taken.") List<AssumptionAnswer> assumptions,
        @Property("Why each number is what it is.") List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
