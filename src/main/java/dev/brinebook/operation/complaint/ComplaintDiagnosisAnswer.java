// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.complaint;

import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.Basis;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.complaint.Cause;
import dev.brinebook.complaint.Diagnosis;
import dev.brinebook.complaint.SiteTest;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.List;

@SchemaDescription("What may be wrong with a softener, how sure that is, and what to find out next.")
public record ComplaintDiagnosisAnswer(
        @Property(value = "Summary in sentences, to quote.", example = "\"One cause is likely, 87 % sure. Raw water passes the softener "
                + "by the bypass.\"") Message summary,
        @Property("How far the search has come.") Diagnosis.Verdict verdict,
        @Property(value = "Possible causes of 1 % or more, most likely first. Those that can hurt come before them.",
                eachOf = Cause.class) List<CauseLine> causes,
        @Property(value = "Next tests, the most information per minute first. Once a cause is almost certain, its proof comes first. Empty "
                + "when nothing more is worth its time.", eachOf = SiteTest.class) List<TestLine> nextTests,
        @Basis(formula = "formula.complaint.entropy", source = "CP-SOFTENER-FAULTS")
        @Property(value = "What is still open: entropy of the causes, 0 if one is certain.", min = 0, unit = "bit", example = "1.2")
        BigDecimal openBits,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property(value = "Values that were assumed.", optional = AnswerParts.NOT_STANDARD) List<Resolved> assumptions,
        @Property(value = "Formula and source of each number.", optional = AnswerParts.NOT_STANDARD) List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
