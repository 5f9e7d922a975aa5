// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.answer.cycle.CycleTable;
import dev.brinebook.answer.cycle.RefillSetting;
import dev.brinebook.answer.softener.DoseTradeOff;
import dev.brinebook.answer.softener.ReadinessCheck;
import dev.brinebook.answer.softener.SettingFinding;
import dev.brinebook.answer.softener.SettingQuestion;
import dev.brinebook.answer.verdict.VerdictAnswer;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.answer.water.SoftenedWaterAnswer;
import dev.brinebook.api.AnswerParts;
import dev.brinebook.api.Basis;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.assessment.CommissioningStep;
import dev.brinebook.softener.Finding;
import dev.brinebook.softener.Readiness;
import dev.brinebook.softener.Setting;
import dev.brinebook.text.Message;
import java.util.List;

@SchemaDescription("Complete assessment of a case. All parts use the same water, days and bed.")
public record AssessmentAnswer(
        @Property(value = "Summary in one sentence, to quote.", example = "\"Set 28 gpg.\"") Message summary,
        @Property("Recommended action, step by step.") VerdictAnswer verdict,
        @Property("Compensated hardness, line by line.") HardnessLines hardness,
        @Property("Demand of the household on the softener.") DemandAnswer demand,
        @Property("Whether the existing softener is large enough, at its present salt dose.") FitAnswer fit,
        @Property(value = "Settings to change on the existing controller, as one path to correct settings: first "
                + "those that protect the bed, then those that stop hard water, then those that save.", eachOf = Finding.Code.class)
                List<SettingFinding> findings,
        @Property(value = "Settings that were not given but affect the result.", eachOf = Setting.class) List<SettingQuestion> questions,
        @Property(value = "Settings of the metered controller, each with its reason: after converting, or on the softener that the "
                + "verdict recommends. Settings of a clock are in findings and in the action of the verdict.",
                optional = "when the water must be treated first") RecommendedSettings settings,
        @Property(value = "Trade-off of salt, water and interval behind the salt dose.",
                optional = "when the water must be treated first") DoseTradeOff tradeOff,
        @Property(value = "The steps of the regeneration to set.", optional = "when the water must be treated first")
        CycleTable cycle,
        @Property(value = "The brine refill to set, by water.", optional = "when the water must be treated first") RefillSetting refill,
        @Property(value = "Conditions of the retrofit, and their state.", eachOf = Readiness.Condition.class)
        List<ReadinessCheck> readiness,
        @Basis(formula = "formula.assessment.commissioningPracticeControllers", source = "CP-INSTALLATION")
        @Property(value = "Commissioning steps, in order.",
                example = "[\"Run a tap and check that the meter counts.\"]", eachOf = CommissioningStep.class) List<Message> commissioning,
        @Property(value = "Expected results of a year now, and of one with a meter.",
                optional = "when the water must be treated first") YearComparison year,
        @Property(value = "Benefit of converting.", optional = "when the controller is metered already, or the water must be treated"
                + " first") RetrofitWorth retrofit,
        @Basis(formula = "formula.assessment.wholeChoiceRepeatedBoth", source = "CP-PRICES")
        @Property(value = "Effect of the uncertainty of the hardness test.",
                optional = "when the test is taken as exact, or the water must be treated first") AdviceRangeAnswer testUncertainty,
        @Basis(formula = "formula.assessment.wholeChoiceRepeatedBothEnds", source = "CP-PRICES")
        @Property(value = "Effect of the uncertainty of the water use.",
                optional = "when the use is taken as exact, or the water must be treated first") AdviceRangeAnswer useUncertainty,
        @Basis(formula = "formula.assessment.wholeChoiceRepeatedMeasured", source = "GUM")
        @Property(value = "Effect of the uncertainty of the measured resin volume.", optional = AssessmentAnswer.AS_EXACT)
        AdviceRangeAnswer resinUncertainty,
        @Basis(formula = "formula.assessment.wholeChoiceRepeatedMeasured", source = "GUM")
        @Property(value = "Effect of the uncertainty of the measured salt per regeneration.", optional = AssessmentAnswer.AS_EXACT)
        AdviceRangeAnswer saltUncertainty,
        @Basis(formula = "formula.assessment.savingOfMeasured", source = "GUM")
        @Property(value = "Saving of converting in the first year, over the same step as in the ladder, that both measurements leave "
                + "possible with 95 %.", optional = AssessmentAnswer.AS_EXACT) SavingInterval savingInterval,
        @Property(value = "Saving from reading the water meter.", optional = "when the use is measured, every day has the mean "
                + "use, or the water must be treated first")
        ReadingsWorth readings,
        @Property("Sodium or potassium added by softening.") SoftenedWaterAnswer softenedWater,
        @Property("Cautions to show.") List<CautionAnswer> cautions,
        @Property(value = "Values that were assumed.", optional = AnswerParts.NOT_STANDARD) List<Resolved> assumptions,
        @Property(value = "Formula and source of each number.", optional = AnswerParts.NOT_STANDARD) List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {

    private static final String AS_EXACT = "when it is taken as exact, when the water must be treated first, or when the dose at an end "
            + "restores no capacity";
}
