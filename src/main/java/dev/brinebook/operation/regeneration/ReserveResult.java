// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.answer.regeneration.HardDaysRange;
import dev.brinebook.answer.regeneration.PolicyTotals;
import dev.brinebook.api.Basis;
import dev.brinebook.api.Discriminator;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.household.Days;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.request.softener.ReserveRequest;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

@SchemaDescription("A rule for the reserve, and its results in the long run.")
public record ReserveResult(
        @Property(value = "The rule.", example = "\"dayPercentile\"") @Discriminator(others = "fixed")
        ReserveRequest.Rule rule,
        @Basis
        @Property(value = "Probability that the use of a day stays below the reserve.", kinds = "dayPercentile", min = 0, max = 1,
                example = "0.9") BigDecimal probability,
        @Basis(formula = "triedReserve.ruleVolumeShareMeter", source = "DAIAD")
        @Property(value = "Reserve. A rule based on the weekday has a different reserve each day.",
                exceptKinds = {"sameWeekdayLargest", "sameWeekdayMean"})
        VolumeQuantity reserve,
        @Basis(formula = "formula.regeneration.expectedHardDays365", source = "FELLER")
        @Property(value = "Share of days on which the bed is exhausted.", min = 0, max = 100, unit = "%",
                example = "0.6") BigDecimal hardDaysPercent,
        @Basis(formula = "chooseReserve.longRunHouseholdsDays", source = "FELLER")
        @Property("Expected results per year with it.") PolicyTotals year,
        @Basis(formula = "formula.softener.probabilityEachNumberHard", source = "FELLER")
        @Basis(formula = "formula.softener.oneLevelUseEach", source = "DAIAD")
        @Property("Range of hard days in single years.") HardDaysRange hardDaysRange,
        @Property(value = "Whether it meets the service standard.", example = "true") Boolean keepsServiceStandard) {

    /** How the expected results of a rule based on the weekday are calculated. */
    static final Message SAME_WEEKDAY = Message.of("triedReserve.ruleSameWeekdayLargest",
            Text.number(ReserveRequest.ASSUMED_PROBABILITY));

    static ReserveResult of(ReserveRequest request, Policy policy, DesignConditions duty, Regeneration regeneration, AnswerUnits units) {
        YearlyTotals year = duty.year(policy, regeneration);
        return new ReserveResult(request.rule(), request.dayProbability(),
                policy.fixedReserveLitres().isPresent() ? units.volume(policy.fixedReserveLitres().getAsDouble()) : null,
                Rounding.toThousandth(100 * year.hardDays() / Days.PER_YEAR), PolicyTotals.of(year, units),
                HardDaysRange.of(duty.hardDays(policy, regeneration)), duty.isServed(policy, regeneration));
    }
}
