// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.answer.regeneration.HardDaysRange;
import dev.brinebook.answer.regeneration.PolicyTotals;
import dev.brinebook.answer.resin.CapacityBasis;
import dev.brinebook.answer.softener.ControllerQuantities;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.caution.Caution;
import dev.brinebook.guard.OptionalResult;
import dev.brinebook.household.DayVariation;
import dev.brinebook.model.Model;
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
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.MeterSettings;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** How much a delayed meter should keep back. */
public final class ChooseReserve {

    public static final Operation<ReserveChoiceRequest, ReserveAnswer> OPERATION = new Operation<>(
            "chooseReserve", "/v1/reserve-choice", "Choose the reserve of a delayed meter",
            "Choose this to set the reserve of a metered softener, or to compare the usual rules for it. For each rule it gives the "
                    + "expected hard days in the long run, the unused capacity, and the salt and water used. It finds the smallest "
                    + "reserve that meets the service standard. To compare a meter with a clock, or for dates, choose "
                    + "scheduleRegeneration.",
            ReserveChoiceRequest.class, ReserveAnswer.class, ChooseReserve::answer, List.of(),
            List.of("well-family", "apartment"));

    private static final List<ReserveRequest> USUAL_RULES = List.of(
            new ReserveRequest(Rule.SHARE, null, new BigDecimal(ReserveChoiceRequest.USUAL_SHARE), null),
            new ReserveRequest(Rule.MEAN_DAY, null, null, null),
            new ReserveRequest(Rule.RULE_OF_THUMB, null, null, null),
            new ReserveRequest(Rule.DAY_PERCENTILE, null, null, new BigDecimal(ReserveChoiceRequest.USUAL_PROBABILITY)),
            new ReserveRequest(Rule.DAY_PERCENTILE, null, null, new BigDecimal(ReserveChoiceRequest.HIGH_PROBABILITY)),
            new ReserveRequest(Rule.SAME_WEEKDAY_LARGEST, null, null, null),
            new ReserveRequest(Rule.SAME_WEEKDAY_MEAN, null, null, null));

    /** A difference in salt that is worth a sentence. */
    private static final int LEAST_PERCENT_SAID = 2;

    private ChooseReserve() {
    }

    private static ReserveAnswer answer(ReserveChoiceRequest request, Model model) {
        AnswerUnits units = HomeCountry.units(request.units(), request.household().country());
        Explanation explanation = HomeCountry.explanation(units, request.household().country());
        SoftenerCase given = SoftenerCase.of(request, model, explanation);
        DesignConditions duty = given.duty();
        Policy meter = meter(request, explanation).toPolicy(ControlRequest.OF_SOFTENER, given.found(), duty, explanation);
        SoftenerSettings setup = request.softener().resolved(model).setup(given, meter, 0);
        request.softener().resolved(model).recordFlows(setup, duty, explanation);
        Regeneration regeneration = setup.regeneration(duty.water().temperatureCelsius());
        List<ReserveResult> rules = new ArrayList<>();
        for (ReserveRequest rule : request.rules() == null ? USUAL_RULES : request.rules()) {
            Policy policy = rule.toPolicy(meter.meterVolumeLitres(), duty, meter.overrideDays());
            rules.add(ReserveResult.of(rule, policy, duty, regeneration, units));
        }
        OptionalResult litres = MeterSettings.smallestReserve(meter, regeneration, duty, 0);
        SmallestReserveAnswer smallest = smallest(litres, regeneration, meter, duty, units);
        explain(given, units, explanation);
        return new ReserveAnswer(explanation.behindStops(summary(smallest, litres.exists()
                ? new ControllerQuantities(duty, units).reserveInWords(litres.value(), meter.meterVolumeLitres()) : null, rules, units)),
                HardnessLines.of(duty.hardness(), duty.water().hardnessUncertaintyMgPerL(), duty.controller().hardness(), units,
                        "/hardness", explanation),
                units.volume(duty.meanLitres()), units.capacity(regeneration.capacityGrams()),
                units.volume(meter.meterVolumeLitres()), smallest, litres.exists() ? learning(duty.year(
                delayed(meter, litres.value()), regeneration), regeneration, meter, duty, units) : null, rules,
                explanation.cautions(),
                explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    /** The existing delayed meter, or one set by the water and the bed. */
    private static ControlRequest meter(ReserveChoiceRequest request, Explanation explanation) {
        ControlRequest control = request.softener().control();
        if (control != null) {
            return control;
        }
        explanation.assume(Resolved.of(ControlRequest.OF_SOFTENER + "/kind", ControlRequest.Kind.METERED_DELAYED)
                .byDefault("OWN-ASSUMPTION"));
        return new ControlRequest(ControlRequest.Kind.METERED_DELAYED, null, null, null, null, null, null, null);
    }

    private static LearningReserve learning(YearlyTotals fixed, Regeneration regeneration, Policy meter, DesignConditions duty,
            AnswerUnits units) {
        OptionalResult litres = SmallestReserve.thatFollowsUse(duty.longRun(), duty.loadMgPerL(), regeneration, meter,
                duty.standard(), duty.reserveStepLitres(meter.meterVolumeLitres()));
        if (!litres.exists()) {
            return null;
        }
        YearlyTotals year = duty.longRun().yearOfReserveThatFollowsUse(delayed(meter, litres.value()),
                duty.loadMgPerL(), regeneration);
        return new LearningReserve(units.volume(litres.value()), PolicyTotals.of(year, units), Message.sentences(List.of(
                Message.of("chooseReserve.reserveFollowsUseLast"),
                learningSaves(year, fixed))));
    }

    private static Message learningSaves(YearlyTotals learning, YearlyTotals fixed) {
        long percent = Math.round(100 * (1 - learning.saltGrams() / fixed.saltGrams()));
        return Math.abs(percent) < LEAST_PERCENT_SAID || !(fixed.saltGrams() > 0)
                ? Message.of("chooseReserve.reserveUsesAboutSame")
                : percent > 0 ? Message.of("chooseReserve.reserveUsesLessSalt", Text.number(percent))
                : Message.of("chooseReserve.reserveUsesMoreSalt", Text.number(-percent));
    }

    private static MeteredDelayed delayed(Policy meter, double reserveLitres) {
        return new MeteredDelayed(meter.meterVolumeLitres(), reserveLitres, meter.overrideDays());
    }

    private static SmallestReserveAnswer smallest(OptionalResult litres, Regeneration regeneration, Policy meter, DesignConditions duty,
            AnswerUnits units) {
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

    private static Message summary(SmallestReserveAnswer smallest, Message reserve, List<ReserveResult> rules, AnswerUnits units) {
        BigDecimal wanted = Text.number(smallest.hardDaysPerYear().doubleValue());
        Message first = smallest.reserve() == null
                ? Message.of("chooseReserve.noReserveKeepsHard", wanted)
                : Message.of("chooseReserve.keepReserveMostHard", wanted, reserve);
        return Message.sentences(Stream.concat(Stream.of(first), rules.stream().map(rule -> hardDays(rule, units))).toList());
    }

    private static Message hardDays(ReserveResult tried, AnswerUnits units) {
        Message rule = tried.rule() == Rule.DAY_PERCENTILE
                ? Message.of("chooseReserve.percentileDailyUse", Text.tenths(100 * tried.probability().doubleValue()))
                : units.saying(tried.rule());
        BigDecimal mean = Text.hardDays(tried.year().hardDays().doubleValue());
        return tried.reserve() == null ? Message.of("chooseReserve.valueWithoutReserve", rule, mean)
                : Message.of("chooseReserve.days", rule, Text.rounded(tried.reserve()), mean);
    }

    private static void explain(SoftenerCase given, AnswerUnits units, Explanation explanation) {
        explanation.cautions(given.duty().softenedWith(given.found().softener().salt()).cautions());
        explanation.caution(Caution.EFFICIENCY_NOT_CERTIFIED, Caution.LOCAL_CODE_DECIDES);
        CapacityBasis.explain("/capacity", given.found().softener().capacity(), units, explanation);
        explanation.because("/rules/*/year", ReserveResult.SAME_WEEKDAY, "DAIAD");
    }
}
