// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.comparison;

import dev.brinebook.api.AnswerValues.Value;
import dev.brinebook.api.Basis;
import dev.brinebook.api.From;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.model.ModelChange;
import java.math.BigDecimal;
import java.util.List;

@SchemaDescription("A value that differs between the two answers.")
public record ValueDifference(
        @Property(value = "JSON pointer to it in the second answer, or in the first if only that has it. Elements of a list are matched by "
                + "their code, name or quantity, not by their place.", example = "\"/settings/saltDose\"") String pointer,
        @Basis(formula = "formula.comparison.answerOfCalculator", source = "REQUEST")
        @Property(value = "In the first answer.", optional = "if only the second answer has it") ComparedValue before,
        @Basis(formula = "formula.comparison.answerOfCalculator", source = "REQUEST")
        @Property(value = "In the second answer.", optional = "if only the first answer has it") ComparedValue after,
        @Basis(formula = "formula.comparison.afterLessBefore", source = "REQUEST")
        @From({"before", "after"})
        @Property(value = "The second number less the first, exactly.", optional = "unless both are numbers in the same unit",
                unit = "the unit of both", example = "-0.5") BigDecimal change,
        @Property(value = "IDs of the changes of the model that cause it.", optional = "when two cases are compared",
                example = "[\"brine-by-weight\"]", eachOf = ModelChange.class) List<String> causes,
        @Property(value = "Whether no change alone gives the second value, so that the changes listed cause it together.",
                optional = "when two cases are compared", example = "false") Boolean together) {

    static ValueDifference of(Value before, Value after, List<String> causes, Boolean together) {
        boolean comparable = before != null && after != null && before.number() != null && after.number() != null
                && String.valueOf(before.unit()).equals(String.valueOf(after.unit()));
        return new ValueDifference((after == null ? before : after).pointer(), ComparedValue.of(before), ComparedValue.of(after),
                comparable ? after.number().subtract(before.number()) : null, causes, together);
    }
}
