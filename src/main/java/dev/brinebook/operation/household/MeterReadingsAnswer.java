package dev.brinebook.operation.household;

import dev.brinebook.answer.household.HighDayAnswer;
import dev.brinebook.api.About;
import dev.brinebook.api.AssumptionAnswer;
import dev.brinebook.api.BasisAnswer;
import dev.brinebook.api.CautionAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.request.household.SeriesRequest;
import dev.brinebook.wording.Message;
import java.util.List;

@About("The days of a meter, and what they say of the household.")
public record MeterReadingsAnswer(
        @Property(value = "One sentence to quote.", example = "\"360 of 365 days are known, 410 L a day on average.\"")
        Message summary,
        @Property("Use of each day, ready to be sent as household.dailySeries.") SeriesRequest days,
        @Property("How much of the time is known, and what was done to rows.") MeterCoverage coverage,
        @Property("Mean, scatter, weekdays and absence.") UseEstimates estimates,
        @Property("Days that are leaks or fillings by their use, in order.") List<HighDayAnswer> highDays,
        @Property(value = "The household beside what is usual.", optional = "when people is") UsualUse usual,
        @Property(value = "What to send as household next, for a typical year like these days; like those since the level last"
                + " changed, where it did.", optional = "when the mean of a weekday is above 15,000 L or a day above 45,000 L")
        HouseholdRequest forecast,
        @Property("What should be looked at.") List<MeterFinding> findings,
        @Property("What to be careful about.") List<CautionAnswer> cautions,
        @Property("Values that were taken.") List<AssumptionAnswer> assumptions,
        @Property("Why each number is what it is.") List<BasisAnswer> basis,
        @Property(value = "Version of the formulas and data.", example = "\"1.0.0\"") String modelVersion) {
}
