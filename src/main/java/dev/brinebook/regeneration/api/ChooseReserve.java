package dev.brinebook.regeneration.api;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.caution.Caution;
import dev.brinebook.guard.Figure;
import dev.brinebook.household.DayVariation;
import dev.brinebook.household.DrawnYears;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.quantity.api.VolumeQuantity;
import dev.brinebook.regeneration.MeteredDelayed;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.SimulatedYears;
import dev.brinebook.regeneration.SmallestReserve;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.api.CapacityBasis;
import dev.brinebook.softener.api.ControlRequest;
import dev.brinebook.softener.api.PreferencesRequest;
import dev.brinebook.softener.api.ReserveRequest;
import dev.brinebook.softener.api.ReserveRequest.Rule;
import dev.brinebook.softener.api.SoftenerCase;
import dev.brinebook.water.api.HardnessLines;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** How much a delayed meter should keep back. */
public final class ChooseReserve {

    public static final Operation<ReserveChoiceRequest, ReserveAnswer> OPERATION = new Operation<>(
            "chooseReserve", "/v1/reserve-choice", "Choose how much a delayed meter keeps back",
            "Choose this to set the reserve of a metered softener, or to compare the usual rules for it: it tries"
                    + " each rule on the same hundreds of drawn years of the household and tells how often hard water"
                    + " passes, what capacity is thrown away and what salt and water it takes, and finds the smallest"
                    + " reserve that keeps hard days under a number a year. To compare a meter with a clock, or to"
                    + " have the dates, choose scheduleRegeneration.",
            ReserveChoiceRequest.class, ReserveAnswer.class, ChooseReserve::answer, List.of(),
            List.of("well-family", "apartment"));

    private static final BigDecimal DEFAULT_HARD_DAYS = BigDecimal.ONE;
    private static final List<ReserveRequest> USUAL_RULES = List.of(
            new ReserveRequest(Rule.SHARE, null, new BigDecimal("0.2"), null),
            new ReserveRequest(Rule.MEAN_DAY, null, null, null),
            new ReserveRequest(Rule.DAY_PERCENTILE, null, null, new BigDecimal("0.90")),
            new ReserveRequest(Rule.DAY_PERCENTILE, null, null, new BigDecimal("0.99")),
            new ReserveRequest(Rule.SAME_WEEKDAY_LARGEST, null, null, null),
            new ReserveRequest(Rule.SAME_WEEKDAY_MEAN, null, null, null));

    private ChooseReserve() {
    }

    private static ReserveAnswer answer(ReserveChoiceRequest request) {
        AnswerUnits units = AnswerUnits.orDefault(request.units());
        Explanation explanation = new Explanation(units::saying);
        SoftenerCase given = SoftenerCase.of(request, explanation);
        Duty duty = given.duty();
        int count = (int) explanation.orDefault("years", request.years(), ReserveChoiceRequest.DEFAULT_YEARS,
                years -> Message.of("{0}", years));
        double wanted = explanation.orDefault("hardDaysPerYear", request.hardDaysPerYear(), DEFAULT_HARD_DAYS.doubleValue(),
                days -> Message.of("{0}", days));
        Policy meter = meter(request).toPolicy(given.found(), duty, explanation);
        Regeneration regeneration = request.softener().setup(given, meter, 0)
                .regeneration(duty.water().temperatureCelsius());
        DrawnYears drawn = new DrawnYears(duty.demand().model(), duty.days().firstDate(), count,
                PreferencesRequest.seed(request.seed()));
        Trials trials = new Trials(drawn, duty.hardness().totalMgPerL(), regeneration);
        List<TriedReserve> rules = new ArrayList<>();
        for (ReserveRequest rule : request.rules() == null ? USUAL_RULES : request.rules()) {
            Policy policy = rule.toPolicy(meter.meterVolumeLitres(), duty, meter.overrideDays());
            rules.add(TriedReserve.of(rule.rule(), policy, trials.of(policy), units));
        }
        SmallestReserveAnswer smallest = smallest(trials, meter, wanted, duty, units);
        explain(given, smallest, units, explanation);
        return new ReserveAnswer(explanation.behindStops(summary(smallest, rules)),
                HardnessLines.of(duty.hardness(), duty.water().hardnessUncertaintyMgPerL(), units, "/hardness", explanation),
                units.volume(duty.demand().meanLitres()), units.capacity(regeneration.capacityGrams()),
                units.volume(meter.meterVolumeLitres()), smallest, rules, explanation.cautions(),
                explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    /** The delayed meter that stands there, or one set by the water and the bed. */
    private static ControlRequest meter(ReserveChoiceRequest request) {
        ControlRequest control = request.softener().control();
        return control != null ? control
                : new ControlRequest(ControlRequest.Kind.METERED_DELAYED, null, null, null, null, null, null, null);
    }

    /** What every reserve is tried on. */
    private record Trials(DrawnYears drawn, double hardnessMgPerL, Regeneration regeneration) {

        SimulatedYears of(Policy policy) {
            return SimulatedYears.of(drawn, hardnessMgPerL, regeneration, policy);
        }
    }

    private static SmallestReserveAnswer smallest(Trials trials, Policy meter, double wanted, Duty duty,
            AnswerUnits units) {
        var delayed = new MeteredDelayed(meter.meterVolumeLitres(), 0, meter.overrideDays());
        Figure found = SmallestReserve.litres(trials.drawn(), trials.hardnessMgPerL(), trials.regeneration(),
                delayed, wanted);
        if (!found.exists()) {
            return new SmallestReserveAnswer(Rounding.answer(wanted), null, null, null, null, found.reason(),
                    units.saying(found.reason()));
        }
        VolumeQuantity set = units.volumeUp(found.value(), SmallestReserve.ASSUMED_DIGITS);
        double litres = Math.min(set.inBase(), delayed.meterVolumeLitres());
        double busiest = duty.demand().model().busiestMonthMeans().busiestLitres();
        double below = busiest == 0 ? 1
                : DayVariation.shareOfDaysBelow(duty.demand().variation().cv(), litres / busiest);
        return new SmallestReserveAnswer(Rounding.answer(wanted), set,
                Rounding.answer(100 * litres / delayed.meterVolumeLitres()), Rounding.answer(below),
                PolicyYears.of(trials.of(new MeteredDelayed(delayed.meterVolumeLitres(), litres,
                        delayed.overrideDays())), units), null, null);
    }

    private static Message summary(SmallestReserveAnswer smallest, List<TriedReserve> rules) {
        BigDecimal wanted = Text.number(smallest.hardDaysPerYear().doubleValue());
        Message first = smallest.reserve() == null
                ? Message.of("No reserve keeps hard days to {0} a year: {1}.", wanted, smallest.why())
                : Message.counted("Keep {1} back for at most {0} hard day a year.",
                        "Keep {1} back for at most {0} hard days a year.", wanted, Text.of(smallest.reserve()));
        return Message.joined(" ", List.of(first, Message.of("Hard days a year by the rules: {0}.",
                Message.joined(", ", rules.stream().map(ChooseReserve::hardDays).toList()))));
    }

    private static Message hardDays(TriedReserve tried) {
        String rule = WireNames.of(tried.rule());
        BigDecimal mean = Text.number(tried.years().hardDays().mean().doubleValue());
        return tried.reserve() == null ? Message.of("{0} {1}", rule, mean)
                : Message.of("{0} of {1} {2}", rule, Text.of(tried.reserve()), mean);
    }

    private static void explain(SoftenerCase given, SmallestReserveAnswer smallest, AnswerUnits units,
            Explanation explanation) {
        explanation.cautions(given.duty().softenedWith(given.found().softener().salt()).cautions());
        explanation.caution(Caution.EFFICIENCY_NOT_CERTIFIED, Caution.LOCAL_CODE_DECIDES);
        CapacityBasis.explain("/capacity", given.found().softener().capacity(), units, explanation);
        explanation.because("/dailyUse", Message.of("indoor use at home times the share that is softened"), "REU-2016");
        explanation.because("/meterVolume", Message.of("capacity set over hardness set"), "WQP-2009");
        explanation.given("/smallest/hardDaysPerYear");
        if (smallest.reserve() != null) {
            explanation.because("/smallest/reserve", Message.of("halving the range from none to the whole meter, every reserve"
                    + " on the same drawn years; rounded up to {0} digits, as other years would give another by some 8 %",
                    SmallestReserve.ASSUMED_DIGITS), "DAIAD");
            explanation.because("/smallest/shareOfMeterPercent", Message.of("reserve over meter volume"), "WQP-2009");
            explanation.because("/smallest/dayBelowProbability", Message.of("gamma distribution of a day of the busiest"
                    + " weekday and month"), "DAIAD");
            PolicyYears.explain("/smallest/years", explanation);
        }
        explanation.because("/rules/*/reserve", TriedReserve.BY_ITS_RULE, "DAIAD");
        explanation.because("/rules/*/years", TriedReserve.sameWeekday(given.duty().reserveProbability()), "CP-CYCLE");
        PolicyYears.explain("/rules/*/years", explanation);
        explanation.because("/rules/*/hardDaysPercent", Message.of("mean hard days over 365"), "DAIAD");
    }
}
