// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.field;

import dev.brinebook.answer.softener.ReadinessCheck;
import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.Basis;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.field.InstallationCheck.Outcome;
import dev.brinebook.field.InstallationCheck.Sign;
import dev.brinebook.softener.Readiness.Condition;
import dev.brinebook.text.Message;
import java.util.List;

@SchemaDescription("Whether an installation is a softener, whether it can be converted, and what has to be done first.")
public record InstallationCheckAnswer(
        @Property(value = "Summary in one sentence or more, to quote.", example = "\"It is a softener and can be converted as it is.\"")
        Message summary,
        @Property("The outcome.") Outcome outcome,
        @Property(value = "Signs of a softener, and of one whose valve can be changed.", eachOf = Sign.class)
        List<InstallationSignLine> signs,
        @Property(value = "Conditions of a conversion.", eachOf = Condition.class) List<ReadinessCheck> checks,
        @Basis(formula = "formula.field.sumOfPrices", source = "REQUEST")
        @Property(value = "Cost of meeting what is not met, as far as priced.", optional = "if none of it is priced") Money cost,
        @Property(value = "Conditions that are not met and have no price.", eachOf = Condition.class) List<Condition> unpriced,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property(value = "Values that were assumed.", optional = AnswerParts.NOT_STANDARD) List<Resolved> assumptions,
        @Property(value = "Formula and source of each number.", optional = AnswerParts.NOT_STANDARD) List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
