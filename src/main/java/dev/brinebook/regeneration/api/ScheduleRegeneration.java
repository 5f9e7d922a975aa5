package dev.brinebook.regeneration.api;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Text;
import dev.brinebook.caution.Caution;
import dev.brinebook.prices.api.PricesRequest;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.regeneration.Outcome;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.SaltStore;
import dev.brinebook.regeneration.Simulation;
import dev.brinebook.regeneration.Trial;
import dev.brinebook.resin.Salt;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.MeterSettings;
import dev.brinebook.softener.api.ControlRequest;
import dev.brinebook.softener.api.PreferencesRequest;
import dev.brinebook.softener.api.SoftenerCase;
import dev.brinebook.water.SoftenedWater;
import dev.brinebook.water.api.HardnessLines;
import java.util.ArrayList;
import java.util.List;

/** When a softener regenerates. */
public final class ScheduleRegeneration {

    private static final int DEFAULT_DAYS = 365;

    public static final Operation<ScheduleRequest, ScheduleAnswer> OPERATION = new Operation<>(
            "scheduleRegeneration", "/v1/regeneration-schedule", "Foresee regenerations, salt and hard days",
            "Choose this for a calendar of regenerations and salt purchases, or to compare ways of starting them (clock by"
                    + " days or weekdays, meter that waits for the night, meter that starts at once, each with a day"
                    + " override) on the same days of one household: it answers each regeneration with its date, what is"
                    + " used, on which days hard water passes, and when to buy salt.",
            ScheduleRequest.class, ScheduleAnswer.class, ScheduleRegeneration::answer, List.of(),
            List.of("well-family", "apartment", "holiday-cabin"));

    private ScheduleRegeneration() {
    }

    private static ScheduleAnswer answer(ScheduleRequest request) {
        AnswerUnits units = AnswerUnits.orDefault(request.units());
        Explanation explanation = new Explanation();
        PreferencesRequest preferences = PreferencesRequest.orNone(request.preferences());
        SoftenerCase given = SoftenerCase.of(request.water(), request.household(), request.softener(),
                preferences.table(explanation), explanation);
        int days = (int) explanation.orDefault("days", request.days(), given.demand().measured().isPresent()
                ? given.demand().measured().get().size() : DEFAULT_DAYS, "");
        Duty duty = preferences.duty(given.water(), given.hardness(), given.demand(), days, request.seed(), explanation);
        double left = explanation.orDefault("chargeLeftShare", request.chargeLeftShare(), 1, "");
        Regeneration regeneration = given.found().regeneration();
        Trial trial = new Trial(duty.days(), duty.hardness().totalMgPerL(), regeneration, left);
        SaltStore store = request.softener().saltStore(PricesRequest.orNone(request.prices()).bagKilograms(), explanation);
        List<Outcome> outcomes = new ArrayList<>();
        List<PolicyAnswer> policies = new ArrayList<>();
        List<PolicyComparison> comparisons = new ArrayList<>();
        for (PolicyRequest asked : request.policiesOrOwn()) {
            Outcome outcome = Simulation.simulate(trial, policy(asked.control(), given, duty, policies.size(), explanation));
            outcomes.add(outcome);
            policies.add(PolicyAnswer.of(asked, hour(asked.control()), outcome, store, units,
                    "/policies/" + policies.size(), explanation));
            if (outcomes.size() > 1) {
                comparisons.add(PolicyComparison.of(asked.name(), outcome, policies.get(0).name(), outcomes.get(0), units));
            }
        }
        explain(given, outcomes, explanation);
        return new ScheduleAnswer(explanation.behindStops(summary(policies, comparisons)), duty.days().firstDate(), duty.days().size(),
                HardnessLines.of(duty.hardness(), duty.water().hardnessUncertaintyMgPerL(), units, "/hardness", explanation),
                units.volume(duty.days().meanLitres()), units.capacity(duty.dailyLoadGrams()),
                units.capacity(regeneration.capacityGrams()), units.mass(regeneration.saltGrams() / 1000),
                units.volume(regeneration.waterLitres()), policies, comparisons, explanation.cautions(),
                explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    /** The policy; the assumptions of each stand below its own place in the list. */
    private static Policy policy(ControlRequest control, SoftenerCase given, Duty duty, int index,
            Explanation explanation) {
        Explanation own = new Explanation();
        Policy policy = control.toPolicy(given.found(), duty, own);
        own.assumptions().forEach(taken -> explanation.assume("policies/" + index + "/" + taken.name(), taken.value(),
                taken.origin()));
        return policy;
    }

    private static int hour(ControlRequest control) {
        return control.regenerationHour() == null ? MeterSettings.REGENERATION_HOUR : control.regenerationHour();
    }

    private static String summary(List<PolicyAnswer> policies, List<PolicyComparison> comparisons) {
        PolicyAnswer first = policies.get(0);
        String text = first.name() + ": " + Text.number(first.perYear().regenerations().doubleValue())
                + " regenerations a year with " + Text.of(first.perYear().salt()) + " of salt and "
                + Text.of(first.perYear().water()) + " of water, " + Text.number(first.perYear().hardDays().doubleValue())
                + " hard days";
        if (comparisons.isEmpty()) {
            return text + ".";
        }
        PolicyComparison best = comparisons.stream().min((a, b) -> a.salt().value().compareTo(b.salt().value())).get();
        if (best.salt().value().signum() == 0) {
            return text + "; " + best.name() + " uses as much salt.";
        }
        boolean less = best.salt().value().signum() < 0;
        return text + "; " + best.name() + (less ? " uses " : " uses no less salt, ")
                + Text.number(Math.abs(best.salt().value().doubleValue())) + " " + best.salt().unit().symbol()
                + (less ? " less salt a year." : " more a year.");
    }

    private static void explain(SoftenerCase given, List<Outcome> outcomes, Explanation explanation) {
        explanation.cautions(SoftenedWater.of(given.hardness(), given.water().sodiumMgPerL(),
                given.found().softener().salt() == Salt.POTASSIUM_CHLORIDE).cautions());
        explanation.caution(Caution.LOCAL_CODE_DECIDES, Caution.DRAIN_AIR_GAP, Caution.SEWER_SALT_LIMITS);
        if (outcomes.stream().anyMatch(outcome -> outcome.totals().hardDays() > 0)) {
            explanation.caution(Caution.RUNS_HARD);
        }
        explanation.because("/dailyUse", "indoor use times the share that is softened, over the days looked at", "REU-2016");
        explanation.because("/dailyLoad", "mean softened use times compensated hardness", "WQP-2009");
        explanation.because("/capacity", "resin volume times the capacity of the salt dose, from the table",
                given.found().softener().table().sourceKey());
        explanation.because("/saltPerRegeneration", "dose times resin volume", "WQP-2009");
        explanation.because("/waterPerRegeneration", "flow times minutes of every step", "CP-CYCLE");
        explanation.because("/policies/*/totals", "whole days: each day draws its use through the bed, and in the night after"
                + " it the control decides. A clock counts days; a delayed meter regenerates when what is left is no more than"
                + " its reserve; an immediate meter at once when nothing is left; the override after its days", "CP-CYCLE");
        explanation.because("/policies/*/perYear", "the totals times 365 over the days looked at", "CP-CYCLE");
        explanation.because("/policies/*/events", "days as measured, or a typical year: equally likely parts of a gamma"
                + " distribution, in an order set by the seed", "DAIAD");
        explanation.because("/comparisons", "a policy less the first, on the same days", "DAIAD");
    }
}
