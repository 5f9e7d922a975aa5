package dev.brinebook.operation.regeneration;

import dev.brinebook.answer.payback.MeteringWorthAnswer;
import dev.brinebook.answer.regeneration.HardDaysRange;
import dev.brinebook.answer.regeneration.PolicyTotals;
import dev.brinebook.answer.resin.CapacityBasis;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.AnswerForm;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.caution.Caution;
import dev.brinebook.household.DrawnYears;
import dev.brinebook.payback.Prices;
import dev.brinebook.regeneration.Outcome;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.SimulatedYears;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.request.softener.SoftenerCase;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.water.WaterAnalysis.Supply;
import dev.brinebook.water.WaterCautions;
import dev.brinebook.wording.Message;
import dev.brinebook.wording.Wording;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** When a softener regenerates. */
public final class ScheduleRegeneration {

    public static final Operation<ScheduleRequest, ScheduleAnswer> OPERATION = new Operation<>(
            "scheduleRegeneration", "/v1/regeneration-schedule", "Foresee regenerations, salt and hard days",
            "Choose this for a calendar of regenerations and salt purchases, or to compare ways of starting them"
                    + " (clock by days or weekdays, meter that waits for the night, meter that starts at once, two"
                    + " beds in turn, each with a day override) in one household: it answers what is to be"
                    + " expected of a year, and on example days each"
                    + " regeneration with its date, what is used, on which days hard water passes, and when to buy"
                    + " salt. Asked for text/calendar it answers a calendar file, for text/csv a table of the events."
                    + " To find the reserve of a meter choose chooseReserve; to tell what another control is worth in"
                    + " money estimatePayback.",
            ScheduleRequest.class, ScheduleAnswer.class, ScheduleRegeneration::answer, List.of(),
            List.of("well-family", "apartment", "holiday-cabin"))
            .answeringIn(List.of(
                    AnswerForm.text(CalendarFile.MEDIA_TYPE, CalendarFile.DESCRIPTION, "ics", "apartment",
                            ScheduleRegeneration::calendar),
                    AnswerForm.text(EventTable.MEDIA_TYPE, EventTable.DESCRIPTION, "csv", "holiday-cabin",
                            ScheduleRegeneration::table)));

    private ScheduleRegeneration() {
    }

    private static ScheduleAnswer answer(ScheduleRequest request) {
        return answer(Foreseen.of(request));
    }

    private static String calendar(ScheduleRequest request, Wording language) {
        Foreseen foreseen = Foreseen.of(request);
        foreseen.refuseTooLongAFile(foreseen.tried().subList(0, 1));
        return CalendarFile.of(foreseen, answer(foreseen), language);
    }

    private static String table(ScheduleRequest request, Wording language) {
        Foreseen foreseen = Foreseen.of(request);
        foreseen.refuseTooLongAFile(foreseen.tried());
        return EventTable.of(foreseen, language);
    }

    private static ScheduleAnswer answer(Foreseen foreseen) {
        AnswerUnits units = foreseen.units();
        Explanation explanation = foreseen.explanation();
        Duty duty = foreseen.given().duty();
        List<Outcome> outcomes = foreseen.tried().stream().map(Foreseen.Tried::outcome).toList();
        foreseen.refuseTooManyYears();
        DrawnYears drawn = foreseen.years().isEmpty() ? null : new DrawnYears(duty.demand().model(), foreseen.firstDate(),
                foreseen.years().getAsInt(), foreseen.seed());
        List<PolicyAnswer> policies = new ArrayList<>();
        List<PolicyComparison> comparisons = new ArrayList<>();
        for (Foreseen.Tried tried : foreseen.tried()) {
            PolicyYears years = drawn == null ? null : PolicyYears.of(SimulatedYears.of(drawn,
                    duty.loadMgPerL(), tried.outcome().trial().regeneration(), tried.outcome().policy()), units);
            policies.add(PolicyAnswer.of(tried.name(), tried.hour(), tried.outcome(), duty, years, foreseen.store(), units,
                    "/policies/" + policies.size(), explanation));
            if (policies.size() > 1) {
                comparisons.add(PolicyComparison.of(tried.name(), expected(duty, tried.outcome()), policies.get(0).name(),
                        expected(duty, outcomes.get(0)), units));
            }
        }
        Regeneration regeneration = outcomes.get(0).trial().regeneration();
        warn(foreseen.given(), outcomes, explanation);
        explain(foreseen.given(), units, explanation);
        if (drawn != null) {
            PolicyYears.explain("/policies/*/years", explanation);
        }
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

    private static MeteringWorthAnswer overClock(Foreseen foreseen, AnswerUnits units, Explanation explanation) {
        SoftenerCase given = foreseen.given();
        Duty duty = given.duty();
        boolean ownWell = duty.water().supply() == Supply.PRIVATE_WELL;
        Prices prices = foreseen.prices().toDomain(ownWell, ownWell, explanation);
        RunningCost cost = new RunningCost(prices.saltPerKilogram(), prices.waterPerCubicMetre() + prices.sewerPerCubicMetre());
        return MeteringWorthAnswer.of(DoseChoice.cheapest(given.found().softener(), duty, cost).best(), duty, cost,
                foreseen.prices().currency(), units, "/meterOverClockSetRight", explanation);
    }

    private static YearlyTotals expected(Duty duty, Outcome outcome) {
        return duty.year(outcome.policy(), outcome.trial().regeneration());
    }

    private static Message summary(List<PolicyAnswer> policies, List<PolicyComparison> comparisons) {
        PolicyAnswer first = policies.get(0);
        PolicyTotals year = first.perYear();
        Message alone = Message.of("{0}: {1} with {2} of salt and {3} of water, {4}", first.name(),
                Message.counted("{0} regeneration a year", "{0} regenerations a year", number(year.regenerations())),
                Text.of(year.salt()), Text.of(year.water()),
                Message.counted("{0} hard day", "{0} hard days", number(year.hardDays())));
        if (comparisons.isEmpty()) {
            return Message.of("{0}.", alone);
        }
        PolicyComparison least = Collections.min(comparisons, Comparator.comparing(one -> one.salt().value()));
        Message salt = difference(least.salt());
        Message hardDays = difference(least.hardDays());
        return Message.of("{0}; {1}.", alone, comparisons.size() == 1
                ? Message.of("{0} takes {1} a year and has {2}", least.name(), salt, hardDays)
                : Message.of("{0} takes {1} a year and has {2}, the least salt of the others", least.name(), salt, hardDays));
    }

    private static Message difference(MassQuantity salt) {
        Message amount = Text.of(new MassQuantity(salt.value().abs(), salt.unit()));
        return switch (salt.value().signum()) {
            case 0 -> Message.of("as much salt");
            case -1 -> Message.of("{0} less salt", amount);
            default -> Message.of("{0} more salt", amount);
        };
    }

    private static Message difference(BigDecimal hardDays) {
        BigDecimal count = number(hardDays.abs());
        return switch (hardDays.signum()) {
            case 0 -> Message.of("as many hard days");
            case -1 -> Message.counted("{0} fewer hard day", "{0} fewer hard days", count);
            default -> Message.counted("{0} more hard day", "{0} more hard days", count);
        };
    }

    private static BigDecimal number(BigDecimal answered) {
        return Text.number(answered.doubleValue());
    }

    private static void warn(SoftenerCase given, List<Outcome> outcomes, Explanation explanation) {
        explanation.cautions(given.duty().softenedWith(given.found().softener().salt()).cautions());
        explanation.cautions(Caution.OF_INSTALLATION);
        explanation.cautions(WaterCautions.ofDischarge(given.duty().water().supply()));
        if (outcomes.stream().anyMatch(outcome -> expected(given.duty(), outcome).hardDays()
                > given.duty().standard().hardDaysPerYear())) {
            explanation.caution(Caution.RUNS_HARD);
        }
    }

    private static void explain(SoftenerCase given, AnswerUnits units, Explanation explanation) {
        explanation.given("/days", "/policies/*/everyDays", "/policies/*/dayOverride", "/policies/*/regenerationHour");
        explanation.because("/dailyUse", Message.of("indoor use times the share that is softened, vacant days included"),
                "REU-2016");
        explanation.because("/dailyLoad", Message.of("mean softened use times hardness, with iron and manganese at their"
                + " chemical equivalents"), "WQP-2009");
        CapacityBasis.explain("/capacity", given.found().softener().capacity(), units, explanation);
        explanation.because("/saltPerRegeneration", Message.of("dose times resin volume"), "WQP-2009");
        explanation.because("/waterPerRegeneration", Message.of("flow times minutes of every step"), "CP-CYCLE");
        explanation.because("/policies/*/totals", Message.of("whole days: each day draws its use through the bed, and in the"
                + " night after it the control decides. A clock counts days; a delayed meter regenerates when what is left"
                + " is no more than its reserve; an immediate meter at once when nothing is left; the override after its"
                + " days"), "CP-CYCLE");
        explanation.because("/policies/*/meterVolume", Message.of("capacity set over hardness set"), "WQP-2009");
        explanation.because("/policies/*/reserve", TriedReserve.BY_ITS_RULE, "DAIAD");
        explanation.because("/policies/*/meanIntervalDays", Message.of("365 over the expected regenerations of a year"), "FELLER");
        explanation.because("/policies/*/nextRegeneration", Message.of("the control asked on, night after night at mean use,"
                + " for three years at most"), "CP-CYCLE");
        explanation.because("/policies/*/leftAtEnd", Message.of("what was left at the start and driven off by regenerations,"
                + " less what was removed"), "CP-CYCLE");
        explanation.because("/policies/*/perYear", Message.joined("; ", List.of(Message.of("the long run of the household's days"
                + " by a renewal table, or by fixed years where a rule follows the weekday; no year is drawn"),
                TriedReserve.SAME_WEEKDAY)), "FELLER");
        HardDaysRange.explain("/policies/*/hardDaysRange", explanation);
        explanation.because("/policies/*/events", Message.of("days as measured, or an example of a year: equally likely"
                + " parts of a gamma distribution, in an order set by the seed"), "DAIAD");
        explanation.because("/comparisons", Message.of("a policy less the first, both as is to be expected of a year"), "FELLER");
    }
}
