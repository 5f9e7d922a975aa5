// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.comparison;

import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.Basis;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.model.ModelChange;
import dev.brinebook.text.Message;
import java.util.List;

@SchemaDescription("Two answers of an operation, compared value by value. Their texts, assumptions and basis are not compared.")
public record ComparisonAnswer(
        @Property(value = "Summary in a sentence or two, to quote.", example = "\"The answers differ in 2 values and share 140 numbers.\"")
        Message summary,
        @Property(value = "Operation ID of the calculator.", example = "\"assess\"") String calculator,
        @Property("The first answer.") ComparedAnswer before,
        @Property("The second answer.") ComparedAnswer after,
        @Basis(formula = "formula.comparison.numbersInBothAnswers", source = "REQUEST")
        @Property(value = "Numbers that are the same in both answers.", unit = "numbers", example = "140") Integer equalNumbers,
        @Property(value = "The values that differ, in the order of the second answer; then those that only the first has.",
                maxItems = ComparisonAnswer.MOST_DIFFERENCES)
        List<ValueDifference> differences,
        @Property(value = "The changes of the model between the two versions, also those without effect on this case. None if two cases "
                + "are compared.", eachOf = ModelChange.class)
        List<AppliedChange> changes,
        @Property("Cautions of the second answer, to show.") List<CautionAnswer> cautions,
        @Property(value = "Values that were assumed for the comparison. Each answer has its own.", optional = AnswerParts.NOT_STANDARD)
        List<Resolved> assumptions,
        @Property(value = "Formula and source of each number.", optional = AnswerParts.NOT_STANDARD) List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {

    /** Two answers of no common length have as many values, such as the days of a calendar and what the candidates need. */
    static final int MOST_DIFFERENCES = 100_000;
}
