// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.softener;

import dev.brinebook.answer.water.HardnessClasses;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.Basis;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.From;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.List;

@SchemaDescription("A bypass around the softener, and its effects.")
public record BlendingAnswer(
        @Property(value = "Summary in one sentence, to quote.", example = "\"A bypass of 40.82 % leaves 100 mg/L.\"") Message summary,
        @Property("Compensated hardness of the raw water.") HardnessLines hardness,
        @Basis
        @Property("Hardness after blending, as requested.") HardnessQuantity residualHardness,
        @Basis(formula = "formula.softener.threeScalesDisagree", source = "USGS-HARDNESS")
        @Property("Class of that hardness.") HardnessClasses residualClasses,
        @Basis(formula = "formula.softener.hardnessAfterBlendingLeakage", source = "DAVIS-CORNWELL")
        @From({"residualHardness", "hardness/tested"})
        @Property(value = "Water that bypasses the softener, in percent of the use.", min = 0, max = 100,
                example = "40.8163", unit = "%") BigDecimal bypassPercent,
        @Basis(formula = "formula.softener.indoorUseHomeSoftened", source = "REU-2016")
        @Property("Mean use of blended water per day: bypass and resin together.") VolumeQuantity dailyUse,
        @Basis(formula = "formula.softener.meanUseBypassShare", source = "DAVIS-CORNWELL")
        @From({"dailyUse", "bypassPercent"})
        @Property("Water that bypasses the softener per mean day.") VolumeQuantity waterThroughBypass,
        @Basis(formula = "formula.softener.meanUseWaterThrough", source = "DAVIS-CORNWELL")
        @From({"dailyUse", "waterThroughBypass"})
        @Property("Water through the resin per mean day.") VolumeQuantity waterThroughResin,
        @Basis(formula = "formula.softener.ironBypassShareOr", source = "CP-RESIN-CARE")
        @Property(value = "Iron left after blending.", optional = "when iron was not tested")
        ConcentrationQuantity ironLeft,
        @Basis(formula = "formula.softener.manganeseBypassShare", source = "CP-RESIN-CARE")
        @Property(value = "Manganese left after blending.", optional = "when manganese was not tested")
        ConcentrationQuantity manganeseLeft,
        @Property("Results with all the water through the resin.") SofteningDemand withoutBypass,
        @Property("Results with the bypass.") SofteningDemand withBypass,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property(value = "Values that were assumed.", optional = AnswerParts.NOT_STANDARD) List<Resolved> assumptions,
        @Property(value = "Formula and source of each number.", optional = AnswerParts.NOT_STANDARD) List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
