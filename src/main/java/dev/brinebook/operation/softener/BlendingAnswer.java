package dev.brinebook.operation.softener;

import dev.brinebook.answer.water.HardnessClasses;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.ConcentrationQuantity;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.List;

@About("A bypass round the softener, and what it changes.")
public record BlendingAnswer(
        @Property(value = "One sentence to quote.", example = "\"A bypass of 40.82 % leaves 100 mg/L.\"") Message summary,
        @Property("Hardness of the raw water once iron and manganese count.") HardnessLines hardness,
        @Property("Hardness of the mixed water, as asked for.") HardnessQuantity residualHardness,
        @Property("How hard that is.") HardnessClasses residualClasses,
        @Property(value = "Water that passes by the softener, in percent of what is used.", min = 0, max = 100,
                example = "40.8163", unit = "%") BigDecimal bypassPercent,
        @Property("Mean softened use of a day: both ways together.") VolumeQuantity dailyUse,
        @Property("Water of a mean day that passes by the softener.") VolumeQuantity waterThroughBypass,
        @Property("Water of a mean day that passes the resin.") VolumeQuantity waterThroughResin,
        @Property(value = "Iron left in the mixed water.", optional = "when iron was not tested")
        ConcentrationQuantity ironLeft,
        @Property(value = "Manganese left in the mixed water.", optional = "when manganese was not tested")
        ConcentrationQuantity manganeseLeft,
        @Property("With all the water through the resin.") SofteningEffort withoutBypass,
        @Property("With the bypass.") SofteningEffort withBypass,
        @Property("What to be careful about.") List<CautionAnswer> cautions,
        @Property("Values that were taken.") List<AssumptionAnswer> assumptions,
        @Property("Why each number is what it is.") List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
