// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

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
import dev.brinebook.text.Message;
import java.util.List;

@SchemaDescription("Comparison of rules for the reserve of a delayed meter, and the smallest sufficient reserve.")
public record ReserveAnswer(
        @Property(value = "Summary in one sentence, to quote.", example = "\"Keep 220 gal in reserve.\"") Message summary,
        @Property("Compensated hardness.") HardnessLines hardness,
        @Basis(formula = "formula.common.indoorUseSoftenedShare", source = "REU-2016")
        @Property("Mean softened use per day with somebody at home.") VolumeQuantity dailyUse,
        @Property("Capacity restored per regeneration.") CapacityQuantity capacity,
        @Basis(formula = "formula.regeneration.capacitySettingHardnessSetting", source = "WQP-2009")
        @Property("Meter volume: softened water between regenerations.") VolumeQuantity meterVolume,
        @Property("Smallest sufficient reserve.") SmallestReserveAnswer smallest,
        @Basis(formula = "formula.regeneration.sameSearchReserveMultiplied", source = "DAIAD")
        @Property(value = "A reserve that follows the level of use, if the controller supports it.", optional = "when "
                + "no reserve is sufficient") LearningReserve learning,
        @Property(value = "The rules, in the order of the request.", maxItems = ReserveChoiceRequest.MAX_RULES) List<ReserveResult> rules,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property(value = "Values that were assumed.", optional = AnswerParts.NOT_STANDARD) List<Resolved> assumptions,
        @Property(value = "Formula and source of each number.", optional = AnswerParts.NOT_STANDARD) List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
