package dev.brinebook.operation.regeneration;

import dev.brinebook.answer.regeneration.HardDaysRange;
import dev.brinebook.answer.regeneration.PolicyTotals;
import dev.brinebook.answer.resin.CapacityBasis;
import dev.brinebook.answer.softener.ControllerQuantities;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.caution.Caution;
import dev.brinebook.guard.Figure;
import dev.brinebook.household.DayVariation;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.MeteredDelayed;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.SmallestReserve;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.request.softener.ControlRequest;
import dev.brinebook.request.softener.ReserveRequest;
import dev.brinebook.request.softener.ReserveRequest.Rule;
import dev.brinebook.request.softener.SoftenerCase;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.MeterSettings;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** How much a delayed meter should keep back. */
public final class ChooseReserve {

    public static final Operation<ReserveChoiceRequest, ReserveAnswer> OPERATION = new Operation<>(
            "chooseReserve", "/v1/reserve-choice", "Choose how much a delayed meter keeps back",
            "Choose this to set the reserve of a metered softener, or to compare the usual rules for it: for"
                    + " each rule it gives how often hard water is to be expected in the long run, what capacity is"
                    + " thrown away and what salt and water it takes, and it finds the smallest reserve that keeps to"
                    + " the service standard. To compare a meter with a clock, or to"
                    + " have the dates, choose scheduleRegeneration.",
            ReserveChoiceRequest.class, ReserveAnswer.class, ChooseReserve::answer, List.of(),
            List.of("well-family", "apartment"));

    private static final List<ReserveRequest> USUAL_RULES = List.of(
            new ReserveRequest(Rule.SHARE, null, new BigDecimal("0.2"), null),
            new ReserveRequest(Rule.MEAN_DAY, null, null, null),
            new ReserveRequest(Rule.RULE_OF_THUMB, null, null, null),
            new ReserveRequest(Rule.DAY_PERCENTILE, null, null, new BigDecimal("0.90")),
            new ReserveRequest(Rule.DAY_PERCENTILE, null, null, new BigDecimal("0.99")),
            new ReserveRequest(Rule.SAME_WEEKDAY_LARGEST, null, null, null),
            new ReserveRequest(Rule.SAME_WEEKDAY_MEAN, null, null, null));

    /** A difference in salt that is worth words. */
    private static final int LEAST_PERCENT_SAID = 2;

    private ChooseReserve() {
    }

    private static ReserveAnswer answer(ReserveChoiceRequest request) {
        AnswerUnits units = HomeCountry.units(request.units(), request.household().country());
        Explanation explanation = units.explanation();
        SoftenerCase given = SoftenerCase.of(request, explanation);
        Duty duty = given.duty();
        Policy meter = meter(request).toPolicy(given.found(), duty, explanation);
        Regeneration regeneration = request.softener().setup(given, meter, 0)
                .regeneration(duty.water().temperatureCelsius());
        List<TriedReserve> rules = new ArrayList<>();
        for (ReserveRequest rule : request.rules() == null ? USUAL_RULES : request.rules()) {
            Policy policy = rule.toPolicy(meter.meterVolumeLitres(), duty, meter.overrideDays());
            rules.add(TriedReserve.of(rule, policy, duty, regeneration, units));
        }
        Figure litres = MeterSettings.smallestReserve(meter, regeneration, duty, 0);
        SmallestReserveAnswer smallest = smallest(litres, regeneration, meter, duty, units);
        explain(given, smallest, units, explanation);
        return new ReserveAnswer(explanation.behindStops(summary(smallest, litres.exists()
                ? new ControllerQuantities(duty, units).reserveInWords(litres.value(), meter.meterVolumeLitres()) : null, rules, units)),
                HardnessLines.of(duty.hardness(), duty.water().hardnessUncertaintyMgPerL(), duty.controller().hardness(), units,
                        "/hardness", explanation),
                units.volume(duty.meanLitres()), units.capacity(regeneration.capacityGrams()),
                units.volume(meter.meterVolumeLitres()), smallest, litres.exists() ? learning(duty.year(
                delayed(meter, litres.value()), regeneration), regeneration, meter, duty, units, explanation) : null, rules,
                explanation.cautions(),
                explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    /** The delayed meter that stands there, or one set by the water and the bed. */
    private static ControlRequest meter(ReserveChoiceRequest request) {
        ControlRequest control = request.softener().control();
        return control != null ? control
                : new ControlRequest(ControlRequest.Kind.METERED_DELAYED, null, null, null, null, null, null, null);
    }

    private static LearningReserve learning(YearlyTotals fixed, Regeneration regeneration, Policy meter, Duty duty, AnswerUnits units,
            Explanation explanation) {
        Figure litres = SmallestReserve.thatFollowsUse(duty.longRun(), duty.loadMgPerL(), regeneration, meter,
                duty.standard(), duty.reserveStepLitres(meter.meterVolumeLitres()));
        if (!litres.exists()) {
            return null;
        }
        YearlyTotals year = duty.longRun().yearOfReserveThatFollowsUse(delayed(meter, litres.value()),
                duty.loadMgPerL(), regeneration);
        explanation.because("/learning", Message.of("the same search where the reserve is multiplied by the level of use of the last"
                + " weeks, half of its weight in the last 56 days at home, taken as known; evidence from metered homes: the promise is"
                + " kept when a home changes, and 0 to 2 % of the salt saved"), "DAIAD");
        return new LearningReserve(units.volume(litres.value()), PolicyTotals.of(year, units), Message.joined(" ", List.of(
                Message.of("A reserve that follows the use of the last eight weeks keeps its promise when the home changes."),
                learningSaves(year, fixed))));
    }

    private static Message learningSaves(YearlyTotals learning, YearlyTotals fixed) {
        long percent = Math.round(100 * (1 - learning.saltGrams() / fixed.saltGrams()));
        return Math.abs(percent) < LEAST_PERCENT_SAID || !(fixed.saltGrams() > 0)
                ? Message.of("It takes about as much salt as a fixed reserve.")
                : percent > 0 ? Message.of("It takes {0} % less salt than a fixed reserve.", Text.number(percent))
                : Message.of("It takes {0} % more salt than a fixed reserve.", Text.number(-percent));
    }

    private static MeteredDelayed delayed(Policy meter, double reserveLitres) {
        return new MeteredDelayed(meter.meterVolumeLitres(), reserveLitres, meter.overrideDays());
    }

    private static SmallestReserveAnswer smallest(Figure litres, Regeneration regeneration, Policy meter, Duty duty, AnswerUnits units) {
        BigDecimal wanted = Rounding.answer(duty.standard().hardDaysPerYear());
        if (!litres.exists()) {
            return new SmallestReserveAnswer(wanted, null, null, null, null, null, litres.reason(),
                    units.saying(litres.reason()));
        }
        double busiest = duty.demand().model().busiestMonthMeans().busiestLitres();
        double below = busiest == 0 ? 1
                : DayVariation.shareOfDaysBelow(duty.demand().variation().cv(), litres.value() / busiest);
        Policy policy = delayed(meter, litres.value());
        return new SmallestReserveAnswer(wanted, new ControllerQuantities(duty, units).volume(litres.value()),
                Rounding.answer(100 * litres.value() / meter.meterVolumeLitres()), Rounding.answer(below),
                PolicyTotals.of(duty.year(policy, regeneration), units),
                HardDaysRange.of(duty.hardDays(policy, regeneration)), null, null);
    }

    private static Message summary(SmallestReserveAnswer smallest, Message reserve, List<TriedReserve> rules, AnswerUnits units) {
        BigDecimal wanted = Text.number(smallest.hardDaysPerYear().doubleValue());
        Message first = smallest.reserve() == null
                ? Message.of("No reserve keeps hard days to {0} a year: {1}.", wanted, smallest.why())
                : Message.counted("Keep {1} back for at most {0} hard day a year.",
                        "Keep {1} back for at most {0} hard days a year.", wanted, reserve);
        return Message.joined(" ", List.of(first, Message.of("Hard days a year by the rules: {0}.",
                Message.joined("; ", rules.stream().map(rule -> hardDays(rule, units)).toList()))));
    }

    private static Message hardDays(TriedReserve tried, AnswerUnits units) {
        Message rule = tried.rule() == Rule.DAY_PERCENTILE
                ? Message.of("what {0} % of days stay below", Text.number(100 * tried.probability().doubleValue()))
                : units.saying(tried.rule());
        BigDecimal mean = Text.number(tried.year().hardDays().doubleValue());
        return tried.reserve() == null ? Message.of("{0}: {1}", rule, mean)
                : Message.of("{0}, {1}: {2}", rule, Text.of(tried.reserve()), mean);
    }

    private static void explain(SoftenerCase given, SmallestReserveAnswer smallest, AnswerUnits units,
            Explanation explanation) {
        explanation.cautions(given.duty().softenedWith(given.found().softener().salt()).cautions());
        explanation.caution(Caution.EFFICIENCY_NOT_CERTIFIED, Caution.LOCAL_CODE_DECIDES);
        CapacityBasis.explain("/capacity", given.found().softener().capacity(), units, explanation);
        explanation.because("/dailyUse", Message.of("indoor use times the share that is softened, vacant days included"),
                "REU-2016");
        explanation.because("/meterVolume", Message.of("capacity set over hardness set"), "WQP-2009");
        explanation.given("/smallest/hardDaysPerYear", "/rules/*/probability");
        if (smallest.reserve() != null) {
            explanation.because("/smallest/reserve", Message.of("the least number of steps with which hard days keep to"
                    + " the service standard, both as the household is and under stress"), "FELLER");
            explanation.because("/smallest/shareOfMeterPercent", Message.of("reserve over meter volume"), "WQP-2009");
            explanation.because("/smallest/dayBelowProbability", Message.of("gamma distribution of a day of the busiest"
                    + " weekday and month"), "DAIAD");
            explanation.because("/smallest/year", expected(), "FELLER");
            HardDaysRange.explain("/smallest/hardDaysRange", explanation);
        }
        explanation.because("/rules/*/reserve", TriedReserve.BY_ITS_RULE, "DAIAD");
        explanation.because("/rules/*/year", Message.joined("; ", List.of(expected(), TriedReserve.SAME_WEEKDAY)), "FELLER");
        HardDaysRange.explain("/rules/*/hardDaysRange", explanation);
        explanation.because("/rules/*/hardDaysPercent", Message.of("expected hard days over 365"), "FELLER");
    }

    private static Message expected() {
        return Message.of("the long run of the household's days by a renewal table; a rule that follows the weekday, by fixed"
                + " years");
    }
}
