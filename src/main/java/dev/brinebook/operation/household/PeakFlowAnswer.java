package dev.brinebook.operation.household;

import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.request.household.FixtureLine;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.List;

@About("The peak flow of the same fixtures by every method, why they differ, and which to size a softener for.")
public record PeakFlowAnswer(
        @Property(value = "One sentence or more to quote.", example = "\"Size the softener for a peak of 5.7 gpm and for 2 gpm that"
                + " last.\"") Message summary,
        @Property("The flows to size a softener for.") PeakForSizing sizing,
        @Property("By every combination of fixtures.") ExactPeak exact,
        @Property("By the normal fit.") FittedPeak fitted,
        @Property("By the plumbing code.") CodePeak code,
        @Property("By the German standard.") DesignPeak design,
        @Property(value = "Percentile of the exact and the fitted flow.", unit = "%", min = 0, example = "99")
        BigDecimal percentile,
        @Property("Why the methods differ, a sentence or two for each.") List<Message> differences,
        @Property("The fixtures, with the values taken of one of each.") List<FixtureLine> fixtures,
        @Property("What to be careful about.") List<CautionAnswer> cautions,
        @Property("Values that were taken.") List<AssumptionAnswer> assumptions,
        @Property("Why each number is what it is.") List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
