// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.Basis;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.savings.SavingsFactors.Factor;
import dev.brinebook.savings.SavingsFinding;
import dev.brinebook.savings.SavingsVerdict;
import dev.brinebook.text.Message;
import java.time.LocalDate;
import java.util.List;

@SchemaDescription("Whether a change at a softener saved what was promised.")
public record SavingsVerificationAnswer(
        @Property(value = "Summary in one sentence or more, to quote.", example = "\"It saves 27 % of the salt (19 to 35 %), 330 lb a "
                + "year. It is too early to say whether the promise of 30 % is kept.\"") Message summary,
        @Property(value = "The verdict: confirmed, not confirmed, too early, or none where the readings contradict each other or the "
                + "water became harder.", optional = "without readings after the change", example = "\"tooEarly\"") SavingsVerdict verdict,
        @Basis(formula = "formula.savings.saltRate", source = "IPMVP")
        @Property(value = "Salt saved.", optional = "without readings after the change") SavedSalt salt,
        @Basis(formula = "formula.savings.water", source = "IPMVP")
        @Property(value = "Water of regenerations saved.", optional = "unless it is known for both periods") SavedWater water,
        @Basis(formula = "formula.savings.money", source = "NIST-HB135")
        @Property(value = "Money saved.", optional = "without readings after the change") SavedMoney money,
        @Basis(formula = "formula.savings.avoided", source = "IPMVP")
        @Property(value = "Salt that was not used in the period after the change, at its own use.",
                optional = "without readings after the change") MassQuantity avoidedSalt,
        @Basis(formula = "formula.savings.promise", source = "GUM")
        @Property(value = "The promise against what was seen.", optional = "without a promise, or without readings after the change")
        PromiseSeen promise,
        @Basis(formula = "formula.savings.causes", source = "ANG-2005")
        @Property(value = "Causes of the difference between the periods.", optional = "without readings after the change",
                eachOf = Factor.class) List<SavingsCause> causes,
        @Basis(formula = "formula.savings.weeks", source = "GUM")
        @Property(value = "Weeks more until there is a verdict, if the saving stays as seen.",
                optional = "unless it is too early, or if waiting alone gives no verdict", min = 1, unit = "weeks", example = "7")
        Integer moreWeeks,
        @Property(value = "Date to read again.", optional = "as moreWeeks", example = "\"2026-11-30\"") LocalDate readAgainOn,
        @Basis(formula = "formula.savings.wait", source = "GUM")
        @Property(value = "How long to wait for a verdict, for several true savings.", optional = "with readings after the change",
                maxItems = SavingsWait.MOST) List<SavingsWait> waiting,
        @Property(value = "What the verdict should not be read without, most important first.", eachOf = SavingsFinding.class)
        List<SavingsFindingLine> findings,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property(value = "Values that were assumed.", optional = AnswerParts.NOT_STANDARD) List<Resolved> assumptions,
        @Property(value = "Formula and source of each number.", optional = AnswerParts.NOT_STANDARD) List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
