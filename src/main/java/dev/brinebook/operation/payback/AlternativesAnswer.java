package dev.brinebook.operation.payback;

import dev.brinebook.answer.payback.MeteringWorthAnswer;
import dev.brinebook.answer.verdict.VerdictAnswer;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.wording.Message;
import java.util.List;

@About("Ways of going on, side by side.")
public record AlternativesAnswer(
        @Property(value = "One sentence to quote.", example = "\"The metered controller costs least.\"") Message summary,
        @Property("What to do with the softener as found, step by step.") VerdictAnswer verdict,
        @Property("Hardness once iron and manganese count.") HardnessLines hardness,
        @Property("Mean softened use of a day.") VolumeQuantity dailyUse,
        @Property(value = "Name of the alternative that the others are held against.", example = "\"as it is\"")
        String baseline,
        @Property(value = "Name of the alternative that costs least over the horizon, of those that soften.",
                example = "\"metered controller\"")
        String cheapest,
        @Property(value = "Years looked at.", unit = "years", example = "10") Integer horizonYears,
        @Property("The alternatives, in the order asked.") List<AlternativeAnswer> alternatives,
        @Property("What a meter saves over a clock set right, on the softener as found, as a range.")
        MeteringWorthAnswer meterOverClockSetRight,
        @Property("What to be careful about.") List<CautionAnswer> cautions,
        @Property("Values that were taken.") List<AssumptionAnswer> assumptions,
        @Property("Why each number is what it is.") List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
