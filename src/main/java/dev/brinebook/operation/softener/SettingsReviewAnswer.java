// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.softener;

import dev.brinebook.answer.regeneration.YearTotals;
import dev.brinebook.answer.softener.SettingFinding;
import dev.brinebook.answer.softener.SettingQuestion;
import dev.brinebook.answer.verdict.VerdictAnswer;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.Basis;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.softener.Finding;
import dev.brinebook.softener.Setting;
import dev.brinebook.text.Message;
import java.util.List;

@SchemaDescription("Errors in the present settings.")
public record SettingsReviewAnswer(
        @Property(value = "Summary in one sentence, to quote.", example = "\"Change 2 settings.\"") Message summary,
        @Property("Recommended action, step by step.") VerdictAnswer verdict,
        @Property(value = "Settings to change, as one path from the present to the correct settings: first those "
                + "that protect the bed, then those that stop hard water, then those that save.", eachOf = Finding.Code.class)
                List<SettingFinding> findings,
        @Property(value = "Settings that were not given but affect the result.", eachOf = Setting.class) List<SettingQuestion> questions,
        @Property("Compensated hardness.") HardnessLines hardness,
        @Basis(formula = "formula.common.meanSoftenedUseHardness", source = "WQP-2009")
        @Property("Hardness load on the resin per mean day.") CapacityQuantity dailyLoad,
        @Basis(formula = "formula.softener.refillWaterSaltLitre", source = "SALT-INSTITUTE")
        @Property("Actual salt per regeneration, from the refill if known.") SaltDoseQuantity saltDose,
        @Property("Capacity that this salt restores.") CapacityQuantity capacity,
        @Property("A year with the present settings.") YearTotals asFound,
        @Basis(formula = "formula.softener.sameYearAllFindings", source = "DAIAD")
        @Property("A year with all findings corrected. The year with the present settings less this year is the "
                + "sum over the findings.") YearTotals setRight,
        @Basis(formula = "formula.softener.pathRepeatedMeasured", source = "GUM")
        @Property(value = "Effect of the uncertainty of the measured resin volume.", optional = SettingsReviewAnswer.AS_EXACT)
        ReviewRangeAnswer resinUncertainty,
        @Basis(formula = "formula.softener.pathRepeatedMeasured", source = "GUM")
        @Property(value = "Effect of the uncertainty of the measured salt per regeneration.", optional = SettingsReviewAnswer.AS_EXACT)
        ReviewRangeAnswer saltUncertainty,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property(value = "Values that were assumed.", optional = AnswerParts.NOT_STANDARD) List<Resolved> assumptions,
        @Property(value = "Formula and source of each number.", optional = AnswerParts.NOT_STANDARD) List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {

    private static final String AS_EXACT = "when it is taken as exact, when the water must be treated first, or when the dose at an end "
            + "restores no capacity";
}
