package dev.brinebook.operation.water;

import dev.brinebook.answer.water.HardnessClasses;
import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.wording.Message;
import java.util.List;

@About("One hardness in every unit.")
public record HardnessConversionAnswer(
        @Property(value = "One sentence to quote.", example = "\"18.5 gpg is 316.7 mg/L, very hard.\"") Message summary,
        @Property("The hardness in every unit known here.") List<HardnessQuantity> inEveryUnit,
        @Property("The words for it.") HardnessClasses classes,
        @Property("What to be careful about.") List<CautionAnswer> cautions,
        @Property("Values that were taken.") List<AssumptionAnswer> assumptions,
        @Property("Why each number is what it is.") List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
