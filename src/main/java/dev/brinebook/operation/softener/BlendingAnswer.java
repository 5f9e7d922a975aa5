// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.softener;

import dev.brinebook.answer.water.HardnessClasses;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.AssumptionAnswer;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
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
        @Property("Hardness after blending, as requested.") HardnessQuantity residualHardness,
        @Property("Class of that hardness.") HardnessClasses residualClasses,
        @Property(value = "Water that bypasses the softener, in percent of the use.", min = 0, max = 100,
                example = "40.8163", unit = "%") BigDecimal bypassPercent,
        @Property("Mean use of blended water per day: bypass and resin together.") VolumeQuantity dailyUse,
        @Property("Water that bypasses the softener per mean day.") VolumeQuantity waterThroughBypass,
        @Property("Water through the resin per mean day.") VolumeQuantity waterThroughResin,
        @Property(value = "Iron left after blending.", optional = "when iron was not tested")
        ConcentrationQuantity ironLeft,
        @Property(value = "Manganese left after blending.", optional = "when manganese was not tested")
        ConcentrationQuantity manganeseLeft,
        @Property("Results with all the water through the resin.") SofteningDemand withoutBypass,
        @Property("Results with the bypass.") SofteningDemand withBypass,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property("Values that were assumed.") List<AssumptionAnswer> assumptions,
        @Property("Formula and source of each number.") List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
