// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.answer.regeneration.HardDaysRange;
import dev.brinebook.answer.regeneration.PolicyTotals;
import dev.brinebook.answer.regeneration.SaltPurchases;
import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.SaltStore;
import dev.brinebook.regeneration.SimulationResult;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;

@SchemaDescription("Expected results of one policy per year, and its results on measured or example days.")
public record PolicyAnswer(
        @Property(value = "Your name for it.", example = "\"present settings\"") Message name,
        @Basis
        @Property(value = "Days set between regenerations.", optional = "unless a clock starts it at intervals of days",
                unit = "days", example = "4") Integer everyDays,
        @Property(value = "Weekdays set for regeneration.", optional = "unless a clock starts it on weekdays",
                example = "[\"monday\", \"thursday\"]") List<DayOfWeek> weekdays,
        @Basis(formula = "formula.regeneration.capacitySettingHardnessSetting", source = "WQP-2009")
        @Property(value = "Meter volume: softened water between regenerations.", optional = "when a clock starts it")
        VolumeQuantity meterVolume,
        @Basis(formula = "triedReserve.ruleVolumeShareMeter", source = "DAIAD")
        @Property(value = "Reserve: part of the meter volume.", optional = "unless a delayed meter starts it")
        VolumeQuantity reserve,
        @Basis
        @Property(value = "Day override: days after which it regenerates regardless of use. 0 means "
                + "never.", unit = "days", example = "14")
        Integer dayOverride,
        @Basis
        @Property(value = "Hour of regeneration.", min = 0, max = 23, example = "2") Integer regenerationHour,
        @Basis(formula = "formula.regeneration.wholeDaysEachUse", source = "CP-CYCLE")
        @Property("Results on the measured or example days.") PolicyTotals totals,
        @Basis(formula = "scheduleRegeneration.longRunHouseholdsDays", source = "FELLER")
        @Property("Expected results per year of 365 days.") PolicyTotals perYear,
        @Basis(formula = "formula.softener.probabilityEachNumberHard", source = "FELLER")
        @Basis(formula = "formula.softener.oneLevelUseEach", source = "DAIAD")
        @Property("Range of hard days in single years.") HardDaysRange hardDaysRange,
        @Property(value = "Whether it meets the service standard.", example = "true") Boolean keepsServiceStandard,
        @Basis(formula = "formula.regeneration.simulatedYearsEachOwn", source = "DAIAD")
        @Basis(formula = "formula.regeneration.randomNumbersPhilox4", source = "PHILOX")
        @Basis(formula = "formula.regeneration.percentilesInterpolatedBetweenNeighbouring", source = "HYNDMAN-FAN")
        @Property(value = "Results in many simulated years.", optional = "when years is not given") PolicyYears years,
        @Basis(formula = "formula.common.of365ExpectedRegenerationsYear", source = "FELLER")
        @Property(value = "Expected mean days between regenerations.", optional = "when it never regenerates", unit = "days",
                example = "4") BigDecimal meanIntervalDays,
        @Property(value = "First day on which hard water passes.", optional = "when there is none",
                example = "\"2026-02-11\"") LocalDate firstHardDate,
        @Basis(formula = "formula.regeneration.decisionControllerNightAfter", source = "CP-CYCLE")
        @Property(value = "Next regeneration expected after these days, at mean use.",
                optional = "when none is expected", example = "\"2027-01-03\"") LocalDate nextRegeneration,
        @Basis(formula = "formula.regeneration.amountLeftStartAmount", source = "CP-CYCLE")
        @Property("Capacity left in the bed at the end.") CapacityQuantity leftAtEnd,
        @Property("Salt purchases.") SaltPurchases salt,
        @Basis(formula = "formula.regeneration.measuredDaysOrExample", source = "DAIAD")
        @Property(value = "The regenerations with their dates, at most 400.", maxItems = SaltPurchases.MAX_LISTED)
        List<RegenerationEventAnswer> events,
        @Basis(formula = "formula.regeneration.regenerationsRegenerationsListed", source = "CP-CYCLE")
        @Property(value = "Number of regenerations not listed.", optional = "when all are listed", min = 1,
                example = "12") Integer eventsOmitted) {

    static PolicyAnswer of(Message name, int hour, SimulationResult outcome, DesignConditions duty, PolicyYears years, SaltStore store,
            AnswerUnits units) {
        Policy policy = outcome.policy();
        YearlyTotals year = duty.year(policy, outcome.trial().regeneration());
        List<RegenerationEventAnswer> events = outcome.events().stream().limit(SaltPurchases.MAX_LISTED)
                .map(event -> new RegenerationEventAnswer(event.date(), event.reason(), units.capacity(event.unusedGrams())))
                .toList();
        int omitted = outcome.events().size() - events.size();
        return new PolicyAnswer(name, policy.everyDays().isPresent() ? policy.everyDays().getAsInt() : null,
                policy.weekdays().isEmpty() ? null : policy.weekdays().stream().sorted().toList(),
                policy.meterVolumeLitres() > 0 ? units.volume(policy.meterVolumeLitres()) : null,
                policy.fixedReserveLitres().isPresent() ? units.volume(policy.fixedReserveLitres().getAsDouble()) : null,
                policy.overrideDays(), hour,
                PolicyTotals.ofDays(outcome, units), PolicyTotals.of(year, units),
                HardDaysRange.of(duty.hardDays(policy, outcome.trial().regeneration())),
                duty.isServed(policy, outcome.trial().regeneration()), years,
                year.intervalDays().exists() ? Rounding.answer(year.intervalDays().value()) : null,
                outcome.firstHardDate().orElse(null),
                outcome.nextRegeneration(duty.meanLitres()).orElse(null),
                units.capacity(outcome.end().leftGrams()),
                SaltPurchases.of(outcome, store, units), events,
                omitted == 0 ? null : omitted);
    }
}
