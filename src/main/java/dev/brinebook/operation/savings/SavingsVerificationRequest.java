// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.savings;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.household.Country;
import dev.brinebook.household.DayVariation;
import dev.brinebook.household.Demand;
import dev.brinebook.request.household.OccupancyRequest;
import dev.brinebook.request.prices.LocalPrices;
import dev.brinebook.request.prices.PricesRequest;
import dev.brinebook.request.softener.ControlRequest.Kind;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.time.LocalDate;

@SchemaDescription("Readings of a softener before a change and after it. Without those after it, the answer states how long to wait.")
public record SavingsVerificationRequest(
        @Property(value = "The period before the change.", required = true) SavingsPeriodRequest before,
        @Property(value = "The period after it, not before the end of the other.", fallback = "nothing was read yet")
        SavingsPeriodRequest after,
        @Property(value = "The kind of control after the change, to state how long to wait. No effect with after.",
                defaultCode = "meteredDelayed", example = "\"meteredDelayed\"") Kind plannedControl,
        @Property("What was promised. Without it the question is whether anything is saved.") SavingsPromiseRequest promise,
        @Property(value = "Date of the change.", fallback = "unknown", example = "\"2026-04-02\"") LocalDate changedOn,
        @Property(value = "Number of residents, for the scatter of the days.", min = 1, max = Demand.MAX_PEOPLE, fallback = "unknown",
                example = "4") Integer people,
        @Property(value = "Day-to-day scatter of the use: standard deviation divided by mean.", min = DayVariation.MIN_CV,
                max = DayVariation.MAX_CV, example = "0.42",
                fallback = "that of the daily readings of a period, from 28 days on, unless occupancy is given; else the usual one of as "
                + "many people") BigDecimal dayToDayVariation,
        @Property(value = "Days on which somebody is at home.", defaultCode = "usualAbsences",
                fallback = "with daily readings, as these show") OccupancyRequest occupancy,
        @Property("Prices of salt and water after the change.") PricesRequest prices,
        @Property(value = "Country. Sets the default units and prices.", defaultCode = "unitedStates", example = "\"germany\"")
        Country country,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units)
        implements Checked {

    @Override
    public void check(Violations at) {
        LocalPrices.check(prices, country, at);
        checkHome(before, after, changedOn, at.at("prices").here() ? null : LocalPrices.of(prices, country), at);
    }

    /** What the periods of one home say of each other; without prices when these have errors. */
    static void checkHome(SavingsPeriodRequest before, SavingsPeriodRequest after, LocalDate changedOn, LocalPrices prices, Violations at) {
        if (prices != null) {
            ReadPeriod.check(before, prices, at.at("before"));
            ReadPeriod.check(after, prices, at.at("after"));
            checkCurrency(before, prices, at.at("before"));
            checkCurrency(after, prices, at.at("after"));
        }
        if (before == null || before.to() == null || after == null || after.from() == null) {
            return;
        }
        if (after.from().isBefore(before.to())) {
            at.at("after").add("from", Code.INCONSISTENT, Message.of("problem.savings.afterBefore", before.to()));
        } else if (changedOn != null && (changedOn.isBefore(before.to()) || changedOn.isAfter(after.from()))) {
            at.add("changedOn", Code.INCONSISTENT, Message.of("problem.savings.changedBetween", before.to(), after.from()));
        }
    }

    private static void checkCurrency(SavingsPeriodRequest period, LocalPrices prices, Violations at) {
        if (period == null || period.saltBag() == null || period.saltBag().price() == null || period.saltBag().price().unit() == null
                || at.at("saltBag").here()) {
            return;
        }
        String currency = prices.currency().getCurrencyCode();
        if (!period.saltBag().price().unit().equals(currency)) {
            at.at("saltBag").add("price", Code.INCONSISTENT, Message.of("problem.common.mustCurrencyPricesPrices", currency));
        }
    }
}
