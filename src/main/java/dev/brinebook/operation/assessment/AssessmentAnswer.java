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
import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.wording.Message;
import java.util.List;

@About("The whole job on one case, every part from the same water, days and bed.")
public record AssessmentAnswer(
        @Property(value = "One sentence to quote.", example = "\"Set 28 gpg.\"") Message summary,
        @Property("What to do, step by step.") VerdictAnswer verdict,
        @Property("Hardness once iron and manganese count, line by line.") HardnessLines hardness,
        @Property("What the household asks of the softener.") DemandAnswer demand,
        @Property("Whether the softener that stands there fits, at the dose it gets.") FitAnswer fit,
        @Property("Settings to change on the control as found, as one path to the same control set right: what protects the bed, then"
                + " what stops hard water, then what saves.") List<SettingFinding> findings,
        @Property("Settings that were not given and matter.") List<SettingQuestion> questions,
        @Property(value = "What to set on the metered controller, with the reason for each: after converting, or on what the verdict"
                + " puts there. What to set on a clock is in findings and in the verdict's action.",
                optional = "when the water must be treated first") RecommendedSettings settings,
        @Property(value = "How the salt dose was chosen: salt against water against interval.",
                optional = "when the water must be treated first") DoseTradeOff tradeOff,
        @Property(value = "The steps of the regeneration to set.", optional = "when the water must be treated first")
        CycleTable cycle,
        @Property(value = "The refill to set, by water.", optional = "when the water must be treated first") RefillSetting refill,
        @Property("What the conversion needs, and how that stands.") List<ReadinessCheck> readiness,
        @Property(value = "What to do, in order, when the controller is put into service.",
                example = "[\"Run a tap and see that the meter counts.\"]") List<Message> commissioning,
        @Property(value = "What is to be expected of a year as found, and of one metered.",
                optional = "when the water must be treated first") YearComparison year,
        @Property(value = "What converting is worth.", optional = "when the controller is metered already, or the water must be treated"
                + " first") ConversionWorth conversion,
        @Property(value = "What the uncertainty of the hardness test does to this.",
                optional = "when the test is taken as exact, or the water must be treated first") AdviceRangeAnswer testUncertainty,
        @Property(value = "What the uncertainty of the use does to this.",
                optional = "when the use is taken as exact, or the water must be treated first") AdviceRangeAnswer useUncertainty,
        @Property(value = "What readings of the water meter would save.", optional = "when the use is measured, every day is its mean, or"
                + " the water must be treated first")
        ReadingsWorth readings,
        @Property("What softening adds to the water.") SoftenedWaterAnswer softenedWater,
        @Property("What to be careful about.") List<CautionAnswer> cautions,
        @Property("Values that were taken.") List<AssumptionAnswer> assumptions,
        @Property("Why each number is what it is.") List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
