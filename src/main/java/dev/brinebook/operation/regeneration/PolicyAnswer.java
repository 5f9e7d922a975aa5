package dev.brinebook.operation.regeneration;

import dev.brinebook.answer.regeneration.HardDaysRange;
import dev.brinebook.answer.regeneration.PolicyTotals;
import dev.brinebook.answer.regeneration.SaltPurchases;
import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.ClockEveryDays;
import dev.brinebook.regeneration.ClockOnWeekdays;
import dev.brinebook.regeneration.MeteredDelayed;
import dev.brinebook.regeneration.Outcome;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.SaltStore;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.softener.Duty;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;

@About("What one policy is to do in a year, and what it does on the days looked at: those measured, or an example.")
public record PolicyAnswer(
        @Property(value = "The caller's name for it.", example = "\"as found\"") Message name,
        @Property(value = "Days between its regenerations, as set.", optional = "unless a clock starts it every so many days",
                unit = "days", example = "4") Integer everyDays,
        @Property(value = "Weekdays on which it regenerates, as set.", optional = "unless a clock starts it on weekdays",
                example = "[\"monday\", \"thursday\"]") List<DayOfWeek> weekdays,
        @Property(value = "Water that the meter counts down from.", optional = "when a clock starts it")
        VolumeQuantity meterVolume,
        @Property(value = "Part of it that is kept back.", optional = "unless a delayed meter starts it")
        VolumeQuantity reserve,
        @Property(value = "Days after which it regenerates whatever was used; 0 for never.", unit = "days", example = "14")
        Integer dayOverride,
        @Property(value = "Hour of the day at which it regenerates.", min = 0, max = 23, example = "2") Integer regenerationHour,
        @Property("On the days looked at: as measured, or an example.") PolicyTotals totals,
        @Property("What is to be expected of a year of 365 days.") PolicyTotals perYear,
        @Property("How far single years differ in hard days.") HardDaysRange hardDaysRange,
        @Property(value = "Whether it keeps to the service standard.", example = "true") Boolean keepsServiceStandard,
        @Property(value = "What it does in many drawn years.", optional = "when years is not given") PolicyYears years,
        @Property(value = "Mean days between regenerations, as is to be expected.", optional = "when it never regenerates", unit = "days",
                example = "4") BigDecimal meanIntervalDays,
        @Property(value = "First day on which hard water passes.", optional = "when none does",
                example = "\"2026-02-11\"") LocalDate firstHardDate,
        @Property(value = "Next regeneration expected after the days looked at, at mean use.",
                optional = "when none is to be expected", example = "\"2027-01-03\"") LocalDate nextRegeneration,
        @Property("Capacity left in the bed at the end.") CapacityQuantity leftAtEnd,
        @Property("Salt to buy.") SaltPurchases salt,
        @Property("The regenerations with their dates, 400 at most.") List<RegenerationEventAnswer> events,
        @Property(value = "How many more there were than are listed.", optional = "when all are listed", min = 1,
                example = "12") Integer eventsOmitted) {

    static PolicyAnswer of(Message name, int hour, Outcome outcome, Duty duty, PolicyYears years, SaltStore store, AnswerUnits units,
            String pointer, Explanation explanation) {
        Policy policy = outcome.policy();
        YearlyTotals year = duty.year(policy, outcome.trial().regeneration());
        List<RegenerationEventAnswer> events = outcome.events().stream().limit(SaltPurchases.MAX_LISTED)
                .map(event -> new RegenerationEventAnswer(event.date(), event.reason(), units.capacity(event.unusedGrams())))
                .toList();
        if (events.size() < outcome.events().size()) {
            explanation.because(pointer + "/eventsOmitted", Message.of("regenerations less those that are listed"), "CP-CYCLE");
        }
        int omitted = outcome.events().size() - events.size();
        return new PolicyAnswer(name, policy instanceof ClockEveryDays clock ? clock.days() : null,
                policy instanceof ClockOnWeekdays clock ? clock.weekdays().stream().sorted().toList() : null,
                policy.meterVolumeLitres() > 0 ? units.volume(policy.meterVolumeLitres()) : null,
                policy instanceof MeteredDelayed delayed ? units.volume(delayed.reserveLitres()) : null,
                policy.overrideDays(), hour,
                PolicyTotals.ofDays(outcome, units), PolicyTotals.of(year, units),
                HardDaysRange.of(duty.hardDays(policy, outcome.trial().regeneration())),
                duty.isServed(policy, outcome.trial().regeneration()), years,
                year.intervalDays().exists() ? Rounding.answer(year.intervalDays().value()) : null,
                outcome.firstHardDate().orElse(null),
                outcome.nextRegeneration(duty.meanLitres()).orElse(null),
                units.capacity(outcome.end().leftGrams()),
                SaltPurchases.of(outcome, store, units, pointer + "/salt", explanation), events,
                omitted == 0 ? null : omitted);
    }
}
