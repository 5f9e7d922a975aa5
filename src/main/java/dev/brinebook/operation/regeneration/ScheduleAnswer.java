// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.answer.payback.MeteringWorthAnswer;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.AssumptionAnswer;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.text.Message;
import java.time.LocalDate;
import java.util.List;

@SchemaDescription("Regenerations, consumption, hard days and salt purchases of a softener.")
public record ScheduleAnswer(
        @Property(value = "Summary in one sentence, to quote.", example = "\"Now: 91 regenerations a year.\"") Message summary,
        @Property(value = "First day of the period.", example = "\"2026-01-01\"") LocalDate firstDate,
        @Property(value = "Days in the period.", min = 1, unit = "days", example = "365") Integer days,
        @Property("Compensated hardness.") HardnessLines hardness,
        @Property("Mean softened use per day.") VolumeQuantity dailyUse,
        @Property("Hardness load on the resin per mean day.") CapacityQuantity dailyLoad,
        @Property("Capacity restored per regeneration.") CapacityQuantity capacity,
        @Property("Salt per regeneration.") MassQuantity saltPerRegeneration,
        @Property("Water per regeneration.") VolumeQuantity waterPerRegeneration,
        @Property("Each policy on these days.") List<PolicyAnswer> policies,
        @Property("Difference between each other policy and the first.") List<PolicyComparison> comparisons,
        @Property("Saving of a meter over a clock with correct settings, on this softener, as a range, at the usual prices.")
        MeteringWorthAnswer meterOverClockSetRight,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property("Values that were assumed.") List<AssumptionAnswer> assumptions,
        @Property("Formula and source of each number.") List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
