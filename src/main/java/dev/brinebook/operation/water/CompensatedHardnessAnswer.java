// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.Basis;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.request.water.FactorSet;
import dev.brinebook.text.Message;
import java.util.List;

@SchemaDescription("Compensated hardness of a water.")
public record CompensatedHardnessAnswer(
        @Property(value = "Summary in one sentence, to quote.", example = "\"Set 34 gpg.\"") Message summary,
        @Property("The sum, line by line.") HardnessLines hardness,
        @Basis(formula = "formula.water.sameSumUnderEach", source = "CP-IRON-FACTORS")
        @Property(value = "Compensated hardness of the same water by each named factor set.", eachOf = FactorSet.class)
        List<FactorSetTotal> bySet,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property(value = "Values that were assumed.", optional = AnswerParts.NOT_STANDARD) List<Resolved> assumptions,
        @Property(value = "Formula and source of each number.", optional = AnswerParts.NOT_STANDARD) List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
