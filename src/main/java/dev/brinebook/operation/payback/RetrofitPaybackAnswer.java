// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.answer.payback.MeteringWorthAnswer;
import dev.brinebook.answer.payback.PaybackFigures;
import dev.brinebook.answer.softener.ReadinessCheck;
import dev.brinebook.answer.verdict.VerdictAnswer;
import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.Basis;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.softener.Readiness;
import dev.brinebook.text.Message;
import java.util.List;

@SchemaDescription("Saving of a retrofit, and whether it pays.")
public record RetrofitPaybackAnswer(
        @Property(value = "Summary in one sentence, to quote.",
                example = "\"Converting saves 113 USD in the first year and pays back in 3.1 years.\"") Message summary,
        @Property(value = "Recommended action, step by step.", optional = "when the use before and after is "
                + "given") VerdictAnswer verdict,
        @Property("Method of comparison.") Comparison comparedBy,
        @Property("A year now.") YearlyUseAnswer asFound,
        @Property("A year after converting.") YearlyUseAnswer converted,
        @Basis(formula = "formula.payback.fieldEvidenceOneDistrict", source = "WCP-2016")
        @Property("Difference: now less converted. Negative if converting uses more.") YearlyDifference difference,
        @Basis(formula = "formula.payback.fieldEvidenceAfterTwo", source = "EEG-31")
        @Property("Financial results.") PaybackFigures payback,
        @Basis(formula = "formula.payback.anotherExpectedYearMetered", source = "DAIAD")
        @Property(value = "Parts of the saving, by cause.", optional = "unless meteredSaltDose is given")
        SavingByChange savingByChange,
        @Basis(formula = "formula.softener.clockMeterSameBed", source = "FELLER")
        @Basis(formula = "formula.softener.evidenceMeteredHomes24", source = "DAIAD")
        @Property(value = "Saving of a meter over the same clock with correct settings, as a "
                + "range.", optional = "when "
                + "the use before and after is given") MeteringWorthAnswer overClockSetRight,
        @Property(value = "Conditions of the retrofit, and their state.", optional = "when the use before and after is given",
                eachOf = Readiness.Condition.class)
        List<ReadinessCheck> readiness,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property(value = "Values that were assumed.", optional = AnswerParts.NOT_STANDARD) List<Resolved> assumptions,
        @Property(value = "Formula and source of each number.", optional = AnswerParts.NOT_STANDARD) List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {

    /** Where the use of both sides comes from. */
    public enum Comparison {
        /** Averages that the caller gave. */
        ANNUAL_AVERAGES,
        /** Both controls tried on the same whole days. */
        WHOLE_DAYS
    }
}
