package dev.brinebook.operation.regeneration;

import dev.brinebook.answer.regeneration.HardDaysRange;
import dev.brinebook.answer.regeneration.PolicyTotals;
import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.guard.NoAnswer;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;

@About("The smallest reserve that keeps to the service standard.")
public record SmallestReserveAnswer(
        @Property(value = "Hard days of a year that were asked for at most.", min = 0, example = "1")
        BigDecimal hardDaysPerYear,
        @Property(value = "The reserve, in steps of the controller.", optional = "when none is enough") VolumeQuantity reserve,
        @Property(value = "The same as a share of the meter volume.", optional = "when none is enough", min = 0, max = 100,
                unit = "%", example = "22.5") BigDecimal shareOfMeterPercent,
        @Property(value = "Probability that a day of the busiest weekday stays below it, by the gamma distribution. It is lower"
                + " than hard days are rare, because most days do not begin with the reserve alone.",
                optional = "when none is enough", min = 0, max = 1, example = "0.87") BigDecimal dayBelowProbability,
        @Property(value = "What is to be expected of a year with it.", optional = "when none is enough") PolicyTotals year,
        @Property(value = "How far single years differ in hard days.", optional = "when none is enough")
        HardDaysRange hardDaysRange,
        @Property(value = "Stable code of why none is enough.", optional = "when one is") NoAnswer reason,
        @Property(value = "The same as a sentence.", optional = "when one is",
                example = "\"even a softener that regenerates every"
                + " night has more hard days than asked for\"") Message why) {
}
