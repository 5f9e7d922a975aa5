package dev.brinebook.operation.payback;

import dev.brinebook.answer.payback.MeteringWorthAnswer;
import dev.brinebook.answer.payback.PaybackFigures;
import dev.brinebook.answer.softener.ReadinessCheck;
import dev.brinebook.answer.verdict.VerdictAnswer;
import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.wording.Message;
import java.util.List;

@About("What a conversion saves and whether it pays.")
public record ConversionPaybackAnswer(
        @Property(value = "One sentence to quote.",
                example = "\"Converting saves 113.47 USD in the first year and pays back in 3.1 years.\"") Message summary,
        @Property(value = "What to do, step by step.", optional = "when the use of both sides is given") VerdictAnswer verdict,
        @Property("How the two sides were compared.") Comparison comparedBy,
        @Property("A year as it stands.") YearlyUseAnswer asFound,
        @Property("A year after the change.") YearlyUseAnswer converted,
        @Property("As found less converted: negative where converting takes more.") YearlyDifference difference,
        @Property("What it is worth.") PaybackFigures payback,
        @Property(value = "How much of the saving is due to what.", optional = "unless meteredSaltDose is given")
        SavingByChange savingByChange,
        @Property(value = "What a meter saves over the same clock set right, as a range.", optional = "when the use of both sides is"
                + " given") MeteringWorthAnswer overClockSetRight,
        @Property(value = "What the conversion needs, and how that stands.", optional = "when the use of both sides is given")
        List<ReadinessCheck> readiness,
        @Property("What to be careful about.") List<CautionAnswer> cautions,
        @Property("Values that were taken.") List<AssumptionAnswer> assumptions,
        @Property("Why each number is what it is.") List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {

    /** Where the use of both sides comes from. */
    public enum Comparison {
        /** Averages that the caller gave. */
        ANNUAL_AVERAGES,
        /** Both controls tried on the same whole days. */
        WHOLE_DAYS
    }
}
