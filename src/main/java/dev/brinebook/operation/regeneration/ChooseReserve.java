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
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.caution.Caution;
import dev.brinebook.guard.OptionalResult;
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
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.MeterSettings;
import dev.brinebook.text.Joint;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

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
            new ReserveRequest(Rule.SHARE, null, new BigDecimal("0.2"), null),
            new ReserveRequest(Rule.MEAN_DAY, null, null, null),
            new ReserveRequest(Rule.RULE_OF_THUMB, null, null, null),
            new ReserveRequest(Rule.DAY_PERCENTILE, null, null, new BigDecimal("0.90")),
            new ReserveRequest(Rule.DAY_PERCENTILE, null, null, new BigDecimal("0.99")),
            new ReserveRequest(Rule.SAME_WEEKDAY_LARGEST, null, null, null),
            new ReserveRequest(Rule.SAME_WEEKDAY_MEAN, null, null, null));

    /** A difference in salt that is worth a sentence. */
    private static final int LEAST_PERCENT_SAID = 2;

    private ChooseReserve() {
    }

    private static ReserveAnswer answer(ReserveChoiceRequest request) {
        AnswerUnits units = HomeCountry.units(request.units(), request.household().country());
        Explanation explanation = units.explanation();
        SoftenerCase given = SoftenerCase.of(request, explanation);
        DesignConditions duty = given.duty();
        Policy meter = meter(request).toPolicy(given.found(), duty, explanation);
        Regeneration regeneration = request.softener().setup(given, meter, 0)
                .regeneration(duty.water().temperatureCelsius());
        List<ReserveResult> rules = new ArrayList<>();
        for (ReserveRequest rule : request.rules() == null ? USUAL_RULES : request.rules()) {
            Policy policy = rule.toPolicy(meter.meterVolumeLitres(), duty, meter.overrideDays());
            rules.add(ReserveResult.of(rule, policy, duty, regeneration, units));
        }
        OptionalResult litres = MeterSettings.smallestReserve(meter, regeneration, duty, 0);
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

    /** The existing delayed meter, or one set by the water and the bed. */
    private static ControlRequest meter(ReserveChoiceRequest request) {
        ControlRequest control = request.softener().control();
        return control != null ? control
                : new ControlRequest(ControlRequest.Kind.METERED_DELAYED, null, null, null, null, null, null, null);
    }

    private static LearningReserve learning(YearlyTotals fixed, Regeneration regeneration, Policy meter, DesignConditions duty,
            AnswerUnits units,
            Explanation explanation) {
        OptionalResult litres = SmallestReserve.thatFollowsUse(duty.longRun(), duty.loadMgPerL(), regeneration, meter,
                duty.standard(), duty.reserveStepLitres(meter.meterVolumeLitres()));
        if (!litres.exists()) {
            return null;
        }
        YearlyTotals year = duty.longRun().yearOfReserveThatFollowsUse(delayed(meter, litres.value()),
                duty.loadMgPerL(), regeneration);
        explanation.because("/learning", Message.of("formula.regeneration.sameSearchReserveMultiplied"), "DAIAD");
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
        return Message.sentences(List.of(first, Message.of("chooseReserve.hardDaysYearRule",
                Message.joined(Joint.COMMA, rules.stream().map(rule -> hardDays(rule, units)).toList()))));
    }

    private static Message hardDays(ReserveResult tried, AnswerUnits units) {
        Message rule = tried.rule() == Rule.DAY_PERCENTILE
                ? Message.of("chooseReserve.percentileDailyUse", Text.number(100 * tried.probability().doubleValue()))
                : units.saying(tried.rule());
        BigDecimal mean = Text.hardDays(tried.year().hardDays().doubleValue());
        return tried.reserve() == null ? Message.of("chooseReserve.valueWithoutReserve", rule, mean)
                : Message.of("chooseReserve.days", rule, Text.rounded(tried.reserve()), mean);
    }

    private static void explain(SoftenerCase given, SmallestReserveAnswer smallest, AnswerUnits units,
            Explanation explanation) {
        explanation.cautions(given.duty().softenedWith(given.found().softener().salt()).cautions());
        explanation.caution(Caution.EFFICIENCY_NOT_CERTIFIED, Caution.LOCAL_CODE_DECIDES);
        CapacityBasis.explain("/capacity", given.found().softener().capacity(), units, explanation);
        explanation.because("/dailyUse", Message.of("formula.common.indoorUseSoftenedShare"),
                "REU-2016");
        explanation.because("/meterVolume", Message.of("formula.regeneration.capacitySettingHardnessSetting"), "WQP-2009");
        explanation.given("/smallest/hardDaysPerYear", "/rules/*/probability");
        if (smallest.reserve() != null) {
            explanation.because("/smallest/reserve", Message.of("formula.regeneration.smallestNumberStepsHard"), "FELLER");
            explanation.because("/smallest/shareOfMeterPercent", Message.of("formula.regeneration.reserveMeterVolume"), "WQP-2009");
            explanation.because("/smallest/dayBelowProbability", Message.of("formula.common.gammaDistributionUseDay"), "DAIAD");
            explanation.because("/smallest/year", expected(), "FELLER");
            HardDaysRange.explain("/smallest/hardDaysRange", explanation);
        }
        explanation.because("/rules/*/reserve", ReserveResult.BY_ITS_RULE, "DAIAD");
        explanation.because("/rules/*/year", expected(), "FELLER");
        explanation.because("/rules/*/year", ReserveResult.SAME_WEEKDAY, "DAIAD");
        HardDaysRange.explain("/rules/*/hardDaysRange", explanation);
        explanation.because("/rules/*/hardDaysPercent", Message.of("formula.regeneration.expectedHardDays365"), "FELLER");
    }

    private static Message expected() {
        return Message.of("chooseReserve.longRunHouseholdsDays");
    }
}
