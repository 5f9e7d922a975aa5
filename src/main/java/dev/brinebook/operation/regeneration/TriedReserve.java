package dev.brinebook.operation.regeneration;

import dev.brinebook.answer.regeneration.HardDaysRange;
import dev.brinebook.answer.regeneration.PolicyTotals;
import dev.brinebook.api.About;
import dev.brinebook.api.Property;
import dev.brinebook.api.TellsKind;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.household.Days;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.MeteredDelayed;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.request.softener.ReserveRequest;
import dev.brinebook.softener.Duty;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;

@About("A rule for the reserve, and what it does in the long run.")
public record TriedReserve(
        @Property(value = "The rule.", example = "\"dayPercentile\"") @TellsKind(others = "fixed")
        ReserveRequest.Rule rule,
        @Property(value = "The probability that a day stays below what is kept back.", kinds = "dayPercentile", min = 0, max = 1,
                example = "0.9") BigDecimal probability,
        @Property(value = "What it keeps back. A rule that follows the weekday keeps back another volume each day.",
                exceptKinds = {"sameWeekdayLargest", "sameWeekdayMean"})
        VolumeQuantity reserve,
        @Property(value = "Share of the days on which the bed is used up.", min = 0, max = 100, unit = "%",
                example = "0.6") BigDecimal hardDaysPercent,
        @Property("What is to be expected of a year with it.") PolicyTotals year,
        @Property("How far single years differ in hard days.") HardDaysRange hardDaysRange,
        @Property(value = "Whether it keeps to the service standard.", example = "true") Boolean keepsServiceStandard) {

    /** How the reserve of a rule comes about that keeps the same each day. */
    static final Message BY_ITS_RULE = Message.of("by its rule: a volume, a share of the meter volume, the mean day with those on"
            + " which nobody is at home, or the part of a gamma distribution of the busiest weekday that the probability asks for");

    /** How what is to be expected of a rule that follows the weekday comes about. */
    static final Message SAME_WEEKDAY = Message.of("a rule of the same weekday keeps back the largest or the mean of its last four"
            + " days; until there are four, what a day of the busiest weekday stays below with a probability of {0}",
            Text.number(ReserveRequest.ASSUMED_PROBABILITY));

    static TriedReserve of(ReserveRequest request, Policy policy, Duty duty, Regeneration regeneration, AnswerUnits units) {
        YearlyTotals year = duty.year(policy, regeneration);
        return new TriedReserve(request.rule(), request.dayProbability(),
                policy instanceof MeteredDelayed delayed ? units.volume(delayed.reserveLitres()) : null,
                Rounding.toThousandth(100 * year.hardDays() / Days.PER_YEAR), PolicyTotals.of(year, units),
                HardDaysRange.of(duty.hardDays(policy, regeneration)), duty.isServed(policy, regeneration));
    }
}
