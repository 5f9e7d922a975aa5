// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.answer.payback.MeteringWorthAnswer;
import dev.brinebook.answer.regeneration.PolicyTotals;
import dev.brinebook.answer.resin.CapacityBasis;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.AnswerForm;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Rendering;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.caution.Caution;
import dev.brinebook.household.SampledYears;
import dev.brinebook.model.Model;
import dev.brinebook.payback.Prices;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.SimulatedYears;
import dev.brinebook.regeneration.SimulationResult;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.request.softener.SoftenerCase;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.DoseSearch;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.text.Message;
import dev.brinebook.water.WaterAnalysis.Supply;
import dev.brinebook.water.WaterCautions;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** When a softener regenerates. */
public final class ScheduleRegeneration {

    public static final Operation<ScheduleRequest, ScheduleAnswer> OPERATION = new Operation<>(
            "scheduleRegeneration", "/v1/regeneration-schedule", "Schedule regenerations, salt and hard days",
            "Choose this for a calendar of regenerations and salt purchases, or to compare control types in one household: clock by "
                    + "days or weekdays, meter at the set hour, meter immediately, and alternating twin tanks, each with a day "
                    + "override. It gives the expected results per year and, on example days, each regeneration with its date, the "
                    + "consumption, the hard days and the salt purchases. With Accept text/calendar it returns a calendar file, with "
                    + "text/csv a table of the events. To find the reserve of a meter choose chooseReserve. For the saving in money "
                    + "with another control choose estimatePayback.",
            ScheduleRequest.class, ScheduleAnswer.class, ScheduleRegeneration::answer, List.of(),
            List.of("well-family", "apartment", "holiday-cabin"))
            .answeringIn(List.of(
                    AnswerForm.text(CalendarFile.MEDIA_TYPE, CalendarFile.DESCRIPTION, "ics", "apartment",
                            ScheduleRegeneration::calendar),
                    AnswerForm.text(EventTable.MEDIA_TYPE, EventTable.DESCRIPTION, "csv", "holiday-cabin",
                            ScheduleRegeneration::table)));

    private ScheduleRegeneration() {
    }

    private static ScheduleAnswer answer(ScheduleRequest request, Model model) {
        return answered(ScheduleResults.of(request, model));
    }

    private static String calendar(ScheduleRequest request, Model model, Rendering as) {
        ScheduleResults foreseen = ScheduleResults.of(request, model);
        foreseen.refuseTooLongAFile(foreseen.tried().subList(0, 1));
        return CalendarFile.of(foreseen, answered(foreseen), as.language());
    }

    private static String table(ScheduleRequest request, Model model, Rendering as) {
        ScheduleResults foreseen = ScheduleResults.of(request, model);
        foreseen.refuseTooLongAFile(foreseen.tried());
        return EventTable.of(foreseen, as.language());
    }

    private static ScheduleAnswer answered(ScheduleResults foreseen) {
        AnswerUnits units = foreseen.units();
        Explanation explanation = foreseen.explanation();
        DesignConditions duty = foreseen.given().duty();
        List<SimulationResult> outcomes = foreseen.tried().stream().map(ScheduleResults.Tried::outcome).toList();
        foreseen.refuseTooManyYears();
        SampledYears simulated = foreseen.years().isEmpty() ? null : new SampledYears(duty.demand().model(), foreseen.firstDate(),
                foreseen.years().getAsInt(), foreseen.seed());
        List<PolicyAnswer> policies = new ArrayList<>();
        List<PolicyComparison> comparisons = new ArrayList<>();
        for (ScheduleResults.Tried tried : foreseen.tried()) {
            PolicyYears years = simulated == null ? null : PolicyYears.of(SimulatedYears.of(simulated,
                    duty.loadMgPerL(), tried.outcome().trial().regeneration(), tried.outcome().policy()), units);
            policies.add(PolicyAnswer.of(tried.name(), tried.hour(), tried.outcome(), duty, years, foreseen.store(), units));
            if (policies.size() > 1) {
                comparisons.add(PolicyComparison.of(tried.name(), expected(duty, tried.outcome()), policies.get(0).name(),
                        expected(duty, outcomes.get(0)), units, foreseen.given().model()));
            }
        }
        Regeneration regeneration = outcomes.get(0).trial().regeneration();
        warn(foreseen.given(), outcomes, explanation);
        explain(foreseen.given(), units, explanation);
        return new ScheduleAnswer(explanation.behindStops(summary(policies, comparisons)), duty.days().firstDate(),
                duty.days().size(),
                HardnessLines.of(duty.hardness(), duty.water().hardnessUncertaintyMgPerL(), duty.controller().hardness(), units,
                        "/hardness", explanation),
                units.volume(duty.meanLitres()), units.capacity(duty.dailyLoadGrams()),
                units.capacity(regeneration.capacityGrams()), units.mass(regeneration.saltGrams() / 1000),
                units.volume(regeneration.waterLitres()), policies, comparisons,
                overClock(foreseen, units, explanation), explanation.cautions(),
                explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    private static MeteringWorthAnswer overClock(ScheduleResults foreseen, AnswerUnits units, Explanation explanation) {
        SoftenerCase given = foreseen.given();
        DesignConditions duty = given.duty();
        boolean ownWell = duty.water().supply() == Supply.PRIVATE_WELL;
        Prices prices = foreseen.prices().toDomain(ownWell, ownWell, explanation);
        RunningCost cost = new RunningCost(prices.saltPerKilogram(), prices.waterPerCubicMetre() + prices.sewerPerCubicMetre());
        return MeteringWorthAnswer.of(DoseSearch.cheapest(given.found().softener(), duty, cost).best(), duty, cost,
                foreseen.prices().currency(), units);
    }

    private static YearlyTotals expected(DesignConditions duty, SimulationResult outcome) {
        return duty.year(outcome.policy(), outcome.trial().regeneration());
    }

    private static Message summary(List<PolicyAnswer> policies, List<PolicyComparison> comparisons) {
        PolicyAnswer first = policies.get(0);
        PolicyTotals year = first.perYear();
        Message alone = Message.of("scheduleRegeneration.regenerationsYearSaltWater", atHead(first.name()),
                Text.whole(year.regenerations().doubleValue()), Text.rounded(year.salt()), Text.rounded(year.water()),
                Text.hardDays(year.hardDays().doubleValue()));
        if (comparisons.isEmpty()) {
            return alone;
        }
        PolicyComparison least = Collections.min(comparisons, Comparator.comparing(one -> one.salt().value()));
        return Message.sentences(alone, compared(least, first.name().quoted(), comparisons.size() == 1));
    }

    private static Message compared(PolicyComparison least, Message first, boolean only) {
        BigDecimal days = Text.hardDays(Math.abs(least.hardDays().doubleValue()));
        Message salt = Text.rounded(new MassQuantity(least.salt().value().abs(), least.salt().unit()));
        String saltCode = List.of("less", "same", "more").get(1 + least.salt().value().signum());
        String daysCode = days.signum() == 0 ? "same" : least.hardDays().signum() < 0 ? "fewer" : "more";
        Message name = atHead(least.name());
        return only ? Message.of("scheduleRegeneration.comparedLessSaltYear", name, saltCode, salt, daysCode, days, first)
                : Message.of("scheduleRegeneration.usesLeastSaltOther", name, saltCode, salt, daysCode, days, first);
    }

    /** A name for the head of a sentence, where no name of a caller stands alone. */
    private static Message atHead(Message name) {
        Message quoted = name.quoted();
        return quoted == name ? name : Message.of("policy.named", quoted);
    }

    private static void warn(SoftenerCase given, List<SimulationResult> outcomes, Explanation explanation) {
        explanation.cautions(given.duty().softenedWith(given.found().softener().salt()).cautions());
        explanation.cautions(Caution.OF_INSTALLATION);
        explanation.cautions(WaterCautions.ofDischarge(given.duty().water().supply()));
        if (outcomes.stream().anyMatch(outcome -> expected(given.duty(), outcome).hardDays()
                > given.duty().standard().hardDaysPerYear())) {
            explanation.caution(Caution.RUNS_HARD);
        }
    }

    private static void explain(SoftenerCase given, AnswerUnits units, Explanation explanation) {
        CapacityBasis.explain("/capacity", given.found().softener().capacity(), units, explanation);
        explanation.because("/policies/*/perYear", ReserveResult.SAME_WEEKDAY, "DAIAD");
    }
}
