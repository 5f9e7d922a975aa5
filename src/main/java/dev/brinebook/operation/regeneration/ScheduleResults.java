// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.InvalidRequest;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.household.Days;
import dev.brinebook.household.Demand;
import dev.brinebook.model.Model;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.SaltPlan;
import dev.brinebook.regeneration.SaltStore;
import dev.brinebook.regeneration.SimulatedYears;
import dev.brinebook.regeneration.Simulation;
import dev.brinebook.regeneration.SimulationBudget;
import dev.brinebook.regeneration.SimulationInput;
import dev.brinebook.regeneration.SimulationResult;
import dev.brinebook.request.prices.LocalPrices;
import dev.brinebook.request.softener.ControlRequest;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.SoftenerCase;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.MaintenanceTask;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.text.Message;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What the policies did on the days, from which every form of the answer is made, so that all agree.
 *
 * @param given the household and its softener
 * @param tried each policy, in the order asked
 * @param prices prices of salt and water
 * @param store the brine tank
 * @param units the units of the answer
 * @param seed what set the order of the days
 * @param years years to simulate beside, if any
 * @param explanation what was recorded so far
 */
record ScheduleResults(SoftenerCase given, List<Tried> tried, LocalPrices prices, SaltStore store, AnswerUnits units, long seed,
        OptionalInt years, Explanation explanation) {

    /** Most dates that a file lists: eight policies that regenerate every night for three years fit. */
    static final int MAX_DATES_OF_A_FILE = 10_000;

    /** A policy by its name in the request, the hour set, and its results. */
    record Tried(Message name, int hour, SimulationResult outcome) {

        /** The hour at which it regenerates; none where it does so immediately. */
        OptionalInt startHour() {
            return outcome.policy().startsAtOnce() ? OptionalInt.empty() : OptionalInt.of(hour);
        }
    }

    static ScheduleResults of(ScheduleRequest request, Model model) {
        AnswerUnits units = HomeCountry.units(request.units(), request.household().country());
        Explanation explanation = HomeCountry.explanation(units, request.household().country());
        explanation.caution(HomeCountry.airGap(request.household().country()));
        SoftenerCase given = SoftenerCase.of(request, demand -> days(request, demand, explanation), model, explanation);
        DesignConditions duty = given.duty();
        double left = explanation.resolve(request.chargeLeftShare(), ScheduleRequest.ASSUMED_CHARGE_LEFT_SHARE,
                Resolved.of("/chargeLeftShare", ScheduleRequest.ASSUMED_CHARGE_LEFT_SHARE, null).byDefault("OWN-ASSUMPTION"));
        LocalPrices prices = LocalPrices.of(request.prices(), request.household());
        SaltStore store = request.softener().resolved(model).saltStore(
                prices.bagKilograms(explanation), explanation);
        List<Tried> tried = new ArrayList<>();
        for (PolicyRequest asked : request.policiesOrOwn()) {
            String pointer = request.policies() == null ? ControlRequest.OF_SOFTENER : "/policies/" + tried.size() + "/control";
            Policy policy = asked.control().toPolicy(pointer, given.found(), duty, explanation);
            int hour = asked.control().hour(pointer, explanation);
            SoftenerSettings setup = request.softener().resolved(model).setup(given, policy, hour);
            request.softener().resolved(model).recordFlows(setup, duty, explanation);
            Regeneration regeneration = setup.regeneration(duty.water().temperatureCelsius());
            tried.add(new Tried(asked.title(), hour, Simulation.simulate(
                    new SimulationInput(duty.days(), duty.loadMgPerL(), regeneration, left), policy)));
        }
        return new ScheduleResults(given, tried, prices, store, units,
                PreferencesRequest.seed(request.seed()),
                request.years() == null ? OptionalInt.empty() : OptionalInt.of(request.years()), explanation);
    }

    LocalDate firstDate() {
        return given.duty().days().firstDate();
    }

    /** When salt is bought under a policy; empty when the brine tank is too small. */
    Optional<SaltPlan> saltPlan(Tried policy) {
        SimulationResult outcome = policy.outcome();
        return SaltPlan.of(firstDate(), outcome.events(), outcome.trial().regeneration().saltGrams(), store);
    }

    /** Tasks due for any policy. */
    List<MaintenanceTask> upkeep() {
        return MaintenanceTask.of(given.duty().water(), given.duty().meanLitres() / given.found().softener().bed().resinLitres(),
                firstDate(),
                given.duty().days().size());
    }

    /** Several policies, or policies that regenerate very often, leave time for fewer years than a single one. */
    void refuseTooManyYears() {
        double perYear = tried.stream().mapToDouble(one -> one.outcome().yearly().regenerations()).sum();
        int most = SimulationBudget.mostYears(1, tried.size(), perYear);
        if (years.orElse(0) > most) {
            throw InvalidRequest.impossible("/years", most < SimulatedYears.MIN_YEARS
                    ? Message.of("problem.regeneration.omitPoliciesTogetherRegenerate", Math.round(perYear))
                    : Message.of("problem.regeneration.mustMostPoliciesTogether",
                            most, tried.size(), Math.round(perYear)));
        }
    }

    /** A file lists every date and is made in memory: a small bed that regenerates all day long would fill it all. */
    void refuseTooLongAFile(List<Tried> listed) {
        int dates = listed.stream().mapToInt(one -> one.outcome().events().size()
                + saltPlan(one).map(plan -> plan.purchases().size()).orElse(0)).sum();
        if (dates > MAX_DATES_OF_A_FILE) {
            throw InvalidRequest.impossible(given.duty().demand().measured().isPresent() ? "/household/dailySeries/values" : "/days",
                    Message.of("problem.regeneration.tooManyDaysFile", given.duty().days().size(), dates, MAX_DATES_OF_A_FILE));
        }
    }

    private static int days(ScheduleRequest request, Demand demand, Explanation explanation) {
        Resolved days = demand.measured().map(measured -> Resolved.of("/days", measured.size(), "days").estimated("REQUEST"))
                .orElse(Resolved.of("/days", Days.PER_YEAR, "days").byDefault("OWN-ASSUMPTION"));
        return (int) explanation.resolve(request.days(), days);
    }
}
