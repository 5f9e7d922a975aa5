package dev.brinebook.operation.softener;

import dev.brinebook.answer.softener.DoseTradeOff;
import dev.brinebook.answer.verdict.VerdictAnswer;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.wording.Message;
import java.util.List;

@About("The candidates, ranked, and the choice.")
public record SizingAnswer(
        @Property(value = "One sentence to quote.", example = "\"Take the 10 x 54 in.\"") Message summary,
        @Property("Whether a softener is needed, and what first.") VerdictAnswer verdict,
        @Property("Hardness once iron and manganese count.") HardnessLines hardness,
        @Property("Mean softened use of a day.") VolumeQuantity dailyUse,
        @Property("Hardness that a mean day loads on the resin.") CapacityQuantity dailyLoad,
        @Property(value = "Name of the candidate chosen.", optional = "when none fits", example = "\"10 x 54 in\"")
        String choice,
        @Property(value = "Why it beat the next, or why none fits.", example = "\"It is the smallest that fits.\"")
        Message why,
        @Property("Every candidate, the best first.") List<SizedSoftener> candidates,
        @Property(value = "How the dose of the first was chosen.", optional = "when a salt dose is given")
        DoseTradeOff tradeOff,
        @Property("What to be careful about.") List<CautionAnswer> cautions,
        @Property("Values that were taken.") List<AssumptionAnswer> assumptions,
        @Property("Why each number is what it is.") List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
