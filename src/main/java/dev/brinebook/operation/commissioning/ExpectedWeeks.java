// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.commissioning;

import dev.brinebook.answer.regeneration.PolicyTotals;
import dev.brinebook.api.Basis;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.RegenerationEvent;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;

@SchemaDescription("What the controller then does in this household.")
public record ExpectedWeeks(
        @Property(value = "In one sentence.", example = "\"The softener regenerates 7 times in the first 28 days.\"") Message summary,
        @Property(value = "First of these days.", example = "\"2026-01-01\"") LocalDate from,
        @Basis(formula = "formula.common.of365ExpectedRegenerationsYear", source = "FELLER")
        @Property(value = "Mean days between regenerations.", optional = "when it never regenerates", unit = "days", example = "4.1")
        BigDecimal intervalDays,
        @Basis(formula = "scheduleRegeneration.longRunHouseholdsDays", source = "FELLER")
        @Property("Expected results per year of 365 days.") PolicyTotals perYear,
        @Property(value = "Dates of regenerations in the first four weeks, on measured or example days.",
                maxItems = ExpectedWeeks.MOST_DATES, example = "[\"2026-01-05\", \"2026-01-09\"]") List<LocalDate> firstDates) {

    static final int DAYS = 28;
    /** More than one a day is not listed. */
    static final int MOST_DATES = 29;

    static ExpectedWeeks of(SoftenerSettings setup, DesignConditions duty, AnswerUnits units) {
        SoftenerSettings.Year year = setup.year(duty);
        OptionalDouble interval = year.totals().intervalDays().asOptional();
        LocalDate end = duty.days().firstDate().plusDays(DAYS);
        List<LocalDate> dates = setup.onDays(duty).events().stream().map(RegenerationEvent::date).filter(date -> date.isBefore(end))
                .distinct().toList();
        return new ExpectedWeeks(Message.of("commissioning.expectedWeeks", dates.size(), DAYS), duty.days().firstDate(),
                interval.isPresent() ? Rounding.answer(interval.getAsDouble()) : null, PolicyTotals.of(year.totals(), units), dates);
    }
}
