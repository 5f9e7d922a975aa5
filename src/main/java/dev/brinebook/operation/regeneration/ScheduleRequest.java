// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.api.Checked;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Violation.Code;
import dev.brinebook.api.Violations;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.household.Days;
import dev.brinebook.household.SampledYears;
import dev.brinebook.regeneration.SimulatedYears;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.request.prices.LocalPrices;
import dev.brinebook.request.prices.PricesRequest;
import dev.brinebook.request.softener.CaseRequest;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.SoftenerRequest;
import dev.brinebook.request.water.WaterRequest;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

@SchemaDescription("A softener to schedule, with its own control or with several policies.")
public record ScheduleRequest(
        @Property(value = "The water test.", required = true) WaterRequest water,
        @Property(value = "The household.", required = true) HouseholdRequest household,
        @Property(value = "The softener.", required = true) SoftenerRequest softener,
        @Property(value = "Regeneration policies to compare on the same days. The others are compared with the first.",
                minItems = 1, maxItems = ScheduleRequest.MAX_POLICIES, fallback = "the control of the softener")
        List<PolicyRequest> policies,
        @Property(value = "Number of days, from preferences.startDate. Omit it with a dailySeries, which has its own days.", min = 1,
                max = Days.MAX_DAYS, unit = "days", byDefault = Days.PER_YEAR, example = "365")
        Integer days,
        @Property(value = "Number of years to simulate as well, for the same household, to show each policy in good and bad years. The "
                + "maximum is lower with many policies, or with policies that regenerate very often.",
                min = SimulatedYears.MIN_YEARS, max = SampledYears.MAX_YEARS, fallback = "none", example = "200") Integer years,
        @Property(value = "Share of the capacity left at the start.", min = 0, max = 1,
                byDefault = ScheduleRequest.ASSUMED_CHARGE_LEFT_SHARE, example = "1") BigDecimal chargeLeftShare,
        @Property("Prices of salt and water, and the size of a bag of salt.") PricesRequest prices,
        @Property("Preferences: the start date and the capacity table.") PreferencesRequest preferences,
        @Property(value = "The units of the answer.", fallback = HomeCountry.FALLBACK, example = "\"us\"") AnswerUnits units,
        @Property(value = "Seed of the example days in answers with dates. No setting, verdict or expected figure depends on "
                + "it.", min = 0,
                max = PreferencesRequest.MAX_SEED, byDefault = PreferencesRequest.DEFAULT_SEED,
                example = "1") Long seed) implements CaseRequest, Checked {

    static final int MAX_POLICIES = 8;
    /** A freshly regenerated bed at the start. No source is at hand. */
    static final double ASSUMED_CHARGE_LEFT_SHARE = 1;

    @Override
    public void check(Violations at) {
        LocalPrices.check(prices, household, at);
        boolean measured = household != null && household.dailySeries() != null;
        if (measured && days != null) {
            at.add("days", Code.INCONSISTENT, hasOwnDays());
        }
        if (measured && preferences != null && preferences.startDate() != null) {
            at.at("preferences").add("startDate", Code.INCONSISTENT, hasOwnDays());
        }
        Set<String> names = new HashSet<>();
        for (int i = 0; policies != null && i < policies.size(); i++) {
            PolicyRequest one = policies.get(i);
            if (one != null && one.name() != null && !names.add(one.name())) {
                at.at("policies").at(i).add("name", Code.INCONSISTENT, Message.of("problem.common.mustDifferNamesBefore"));
            }
        }
        boolean control = softener != null && softener.control() != null;
        if (policies == null && softener != null && !control && !at.here()) {
            at.add("policies", Code.MISSING, Message.of("schedule.missingPoliciesOrSoftener"));
        }
    }

    private static Message hasOwnDays() {
        return Message.of("schedule.omitWhenDailyseriesGiven");
    }

    /** The policies asked for. */
    List<PolicyRequest> policiesOrOwn() {
        return policies != null ? policies : List.of(PolicyRequest.asFound(softener.control()));
    }
}
