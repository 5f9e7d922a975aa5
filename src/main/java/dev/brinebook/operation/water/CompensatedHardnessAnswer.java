package dev.brinebook.operation.water;

import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.wording.Message;
import java.util.List;

@About("How hard a water is once iron and manganese count.")
public record CompensatedHardnessAnswer(
        @Property(value = "One sentence to quote.", example = "\"Set 34 gpg.\"") Message summary,
        @Property("The sum, line by line.") HardnessLines hardness,
        @Property("What each named factor set would give for the same water.") List<FactorSetTotal> bySet,
        @Property("What to be careful about.") List<CautionAnswer> cautions,
        @Property("Values that were taken.") List<AssumptionAnswer> assumptions,
        @Property("Why each number is what it is.") List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
