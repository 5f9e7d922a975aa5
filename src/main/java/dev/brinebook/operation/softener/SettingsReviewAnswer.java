package dev.brinebook.operation.softener;

import dev.brinebook.answer.regeneration.YearTotals;
import dev.brinebook.answer.softener.SettingFinding;
import dev.brinebook.answer.softener.SettingQuestion;
import dev.brinebook.answer.verdict.VerdictAnswer;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.SaltDoseQuantity;
import dev.brinebook.wording.Message;
import java.util.List;

@About("What is wrong with the settings found.")
public record SettingsReviewAnswer(
        @Property(value = "One sentence to quote.", example = "\"Change 2 settings.\"") Message summary,
        @Property("What to do, step by step.") VerdictAnswer verdict,
        @Property("Settings to change, as one path from the settings as found to set right: what protects the bed, then what stops"
                + " hard water, then what saves.") List<SettingFinding> findings,
        @Property("Settings that were not given and matter.") List<SettingQuestion> questions,
        @Property("Hardness once iron and manganese count.") HardnessLines hardness,
        @Property("Hardness that a mean day loads on the resin.") CapacityQuantity dailyLoad,
        @Property("Salt that really reaches the bed, by the refill where it is known.") SaltDoseQuantity saltDose,
        @Property("Capacity that it really restores.") CapacityQuantity capacity,
        @Property("A year with the settings as found.") YearTotals asFound,
        @Property("A year with all findings corrected: as found less this is the sum over the findings.") YearTotals setRight,
        @Property("What to be careful about.") List<CautionAnswer> cautions,
        @Property("Values that were taken.") List<AssumptionAnswer> assumptions,
        @Property("Why each number is what it is.") List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
