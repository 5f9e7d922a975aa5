// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.answer.payback.MeteringWorthAnswer;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.Basis;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
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
        @Basis
        @Property(value = "Days in the period.", min = 1, unit = "days", example = "365") Integer days,
        @Property("Compensated hardness.") HardnessLines hardness,
        @Basis(formula = "formula.common.indoorUseSoftenedShare", source = "REU-2016")
        @Property("Mean softened use per day.") VolumeQuantity dailyUse,
        @Basis(formula = "formula.common.meanSoftenedUseHardness", source = "WQP-2009")
        @Property("Hardness load on the resin per mean day.") CapacityQuantity dailyLoad,
        @Property("Capacity restored per regeneration.") CapacityQuantity capacity,
        @Basis(formula = "formula.common.saltDoseResinVolume", source = "WQP-2009")
        @Property("Salt per regeneration.") MassQuantity saltPerRegeneration,
        @Basis(formula = "formula.common.sumFlowMinutesOver", source = "CP-CYCLE")
        @Property("Water per regeneration.") VolumeQuantity waterPerRegeneration,
        @Property(value = "Each policy on these days.", maxItems = ScheduleRequest.MAX_POLICIES) List<PolicyAnswer> policies,
        @Basis(formula = "formula.regeneration.policyFirstPolicyBoth", source = "FELLER")
        @Property(value = "Difference between each other policy and the first.", maxItems = ScheduleRequest.MAX_POLICIES - 1)
        List<PolicyComparison> comparisons,
        @Basis(formula = "formula.softener.clockMeterSameBed", source = "FELLER")
        @Basis(formula = "formula.softener.evidenceMeteredHomes24", source = "DAIAD")
        @Property("Saving of a meter over a clock with correct settings, on this softener, as a range, at the usual prices.")
        MeteringWorthAnswer meterOverClockSetRight,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property(value = "Values that were assumed.", optional = AnswerParts.NOT_STANDARD) List<Resolved> assumptions,
        @Property(value = "Formula and source of each number.", optional = AnswerParts.NOT_STANDARD) List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
