// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.answer.household.HighDayAnswer;
import dev.brinebook.answer.regeneration.PolicyTotals;
import dev.brinebook.answer.resin.CapacityBasis;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.caution.Caution;
import dev.brinebook.household.HighDay;
import dev.brinebook.household.HighDays;
import dev.brinebook.household.MeteredDays;
import dev.brinebook.household.SoftenedShare;
import dev.brinebook.model.Model;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.Replay;
import dev.brinebook.regeneration.UsualHardDays;
import dev.brinebook.regeneration.UsualHardDays.Verdict;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.request.softener.SoftenerCase;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.text.Message;
import dev.brinebook.water.WaterCautions;
import java.math.BigDecimal;
import java.util.List;
import java.util.Set;

/** What settings would have done on a household's real days. */
public final class BacktestSettings {

    public static final Operation<BacktestRequest, BacktestAnswer> OPERATION = new Operation<>(
            "backtestSettings", "/v1/backtest", "Test settings on measured days",
            "Choose this when a household has daily readings and you want to know whether settings worked as predicted, or would have. "
                    + "It gives the hard days, regenerations, salt and water of the settings on these days, compared with the "
                    + "prediction for the same number of days. It reports a wrong prediction only if the number of hard days is outside "
                    + "the usual range. For expected future results choose scheduleRegeneration. To convert readings to days choose "
                    + "readMeter.",
            BacktestRequest.class, BacktestAnswer.class, BacktestSettings::answer, List.of(),
            List.of("well-family", "apartment"));

    /** A mean use that is further off than this share is named as the reason. No source is at hand. */
    private static final double ASSUMED_OTHER_USE_SHARE = 0.10;
    /** Standard deviations of the level beyond which a use is said to be another though the hard days are usual: one in ten. */
    private static final double UNUSUAL_DEVIATIONS = 1.645;

    /**
     * Results on the measured days.
     *
     * @param known days that were measured
     * @param seen totals of these days
     * @param expected totals expected for the same number of days
     * @param usual hard days usual for the same number of days
     * @param exceptional days of exceptional use among them
     * @param withoutThem hard days if these had been held to what is usual
     * @param dailyLitres mean use of these days
     * @param expectedLitres mean use of a day that was expected
     * @param levelSpread standard deviation of the logarithm of the level that was expected
     */
    private record BacktestFigures(int known, YearlyTotals seen, YearlyTotals expected, UsualHardDays usual, int exceptional,
            double withoutThem, double dailyLitres, double expectedLitres, double levelSpread) {

        Verdict verdict() {
            return usual.verdict(withoutThem);
        }

        boolean usedUnusually() {
            double most = Math.max(ASSUMED_OTHER_USE_SHARE, StrictMath.exp(UNUSUAL_DEVIATIONS * levelSpread) - 1);
            return dailyLitres > (1 + most) * expectedLitres || dailyLitres * (1 + most) < expectedLitres;
        }

        /** Whether only days of exceptional use make more hard days than are usual. */
        boolean leaksAlone() {
            return verdict() != Verdict.MORE_THAN_PREDICTED && usual.verdict(seen.hardDays()) == Verdict.MORE_THAN_PREDICTED;
        }

        boolean usedMore() {
            return dailyLitres > (1 + ASSUMED_OTHER_USE_SHARE) * expectedLitres;
        }

        boolean usedLess() {
            return dailyLitres < (1 - ASSUMED_OTHER_USE_SHARE) * expectedLitres;
        }
    }

    private BacktestSettings() {
    }

    private static BacktestAnswer answer(BacktestRequest request, Model model) {
        AnswerUnits units = HomeCountry.units(request.units(), request.household().country());
        Explanation explanation = HomeCountry.explanation(units, request.household().country());
        explanation.caution(HomeCountry.airGap(request.household().country()));
        SoftenerCase given = SoftenerCase.of(request, model, explanation);
        DesignConditions duty = given.duty();
        MeteredDays days = softened(request);
        SoftenerSettings setup = request.softener().resolved(model).found(given, explanation).setup();
        Regeneration regeneration = setup.regeneration(duty.water().temperatureCelsius());
        List<HighDay> exceptional = HighDays.of(days).days();
        BacktestFigures found = found(days, duty, regeneration, setup.policy());
        warn(given, found, explanation);
        explain(given, setup.policy(), units, explanation);
        return new BacktestAnswer(explanation.behindStops(summary(found, setup.policy(), units)), found.verdict(), found.known(),
                days.missing().size(),
                HardnessLines.of(duty.hardness(), duty.water().hardnessUncertaintyMgPerL(), duty.controller().hardness(), units,
                        "/hardness", explanation),
                units.capacity(regeneration.capacityGrams()), units.volume(found.dailyLitres()), units.volume(found.expectedLitres()),
                PolicyTotals.of(found.seen(), units), PolicyTotals.of(found.expected(), units), UsualRange.of(found.usual()),
                exceptional.stream().map(day -> HighDayAnswer.of(day, units)).toList(),
                Rounding.toThousandth(found.withoutThem()), explanation.cautions(), explanation.assumptions(),
                explanation.basis(), ModelVersion.CURRENT);
    }

    /** What passes the softener on each day. */
    private static MeteredDays softened(BacktestRequest request) {
        HouseholdRequest household = request.household();
        double share = SoftenedShare.of(household.leftHard() == null ? Set.of() : Set.copyOf(household.leftHard()));
        return request.days().toDays(share).plus(household.outdoorUse() == null ? 0 : household.outdoorUse().inBase());
    }

    private static BacktestFigures found(MeteredDays days, DesignConditions duty, Regeneration regeneration, Policy policy) {
        int known = days.known().length;
        double hardness = duty.loadMgPerL();
        HighDays exceptional = HighDays.of(days);
        YearlyTotals seen = Replay.yearly(days, hardness, regeneration, policy).in(known);
        double without = exceptional.days().isEmpty() ? seen.hardDays()
                : Replay.yearly(exceptional.capped(), hardness, regeneration, policy).in(known).hardDays();
        return new BacktestFigures(known, seen, duty.year(policy, regeneration).in(known),
                UsualHardDays.of(duty.demand().model(), policy, hardness, regeneration, known), exceptional.days().size(),
                without, days.meanLitres(), duty.meanLitres(), duty.demand().model().change().levelSpread());
    }

    private static Message summary(BacktestFigures found, Policy policy, AnswerUnits units) {
        BigDecimal days = Text.hardDays(found.seen().hardDays());
        Message first = found.usual().to() == 0 && found.seen().hardDays() == 0
                ? Message.of("backtestSettings.yourDaysTheseSettings", found.known())
                : found.usual().to() == 0 ? Message.of("backtestSettings.yourDaysTheseSettingsWould", found.known(), days)
                : Message.of("backtestSettings.yourDaysTheseSettingsWouldLeft",
                        found.known(), days, Text.hardDays(found.expected().hardDays()), found.usual().from(), found.usual().to());
        return switch (found.verdict()) {
            case AS_PREDICTED -> found.leaksAlone() ? Message.sentences(List.of(first, leaks(found)))
                    : found.usedUnusually() ? Message.sentences(List.of(first, otherUse(found, units))) : first;
            case MORE_THAN_PREDICTED -> Message.sentences(List.of(first, more(found, policy, units)));
            case FEWER_THAN_PREDICTED -> Message.sentences(List.of(first, fewer(found, units)));
        };
    }

    private static Message more(BacktestFigures found, Policy policy, AnswerUnits units) {
        if (found.usedMore()) {
            return otherUse(found, units);
        }
        if (policy.byClock()) {
            return Message.of("backtestSettings.meanUseDoesExplain");
        }
        return policy.startsAtOnce()
                ? Message.of("backtestSettings.meanUseDoesExplainSet")
                : Message.of("backtestSettings.meanUseDoesExplainKeep");
    }

    private static Message leaks(BacktestFigures found) {
        return Message.of("backtestSettings.daysYouUsedMore", found.exceptional());
    }

    private static Message otherUse(BacktestFigures found, AnswerUnits units) {
        return Message.of("backtestSettings.averageYouUsedDay",
                Text.rounded(units.volume(found.dailyLitres())), Text.rounded(units.volume(found.expectedLitres())));
    }

    private static Message fewer(BacktestFigures found, AnswerUnits units) {
        return found.usedLess()
                ? Message.of("backtestSettings.averageYouUsedDayInstead", Text.rounded(units.volume(found.dailyLitres())),
                        Text.rounded(units.volume(found.expectedLitres())))
                : Message.of("backtestSettings.lessSaltMightDo");
    }

    private static void warn(SoftenerCase given, BacktestFigures found, Explanation explanation) {
        explanation.cautions(given.duty().softenedWith(given.found().softener().salt()).cautions());
        explanation.cautions(Caution.OF_INSTALLATION);
        explanation.cautions(WaterCautions.ofDischarge(given.duty().water().supply()));
        if (found.seen().hardDays() > 0) {
            explanation.caution(Caution.RUNS_HARD);
        }
    }

    private static void explain(SoftenerCase given, Policy policy, AnswerUnits units, Explanation explanation) {
        CapacityBasis.explain("/capacity", given.found().softener().capacity(), units, explanation);
        explanation.because("/onTheseDays", Message.of("formula.regeneration.measuredDaysOrderEach", Replay.METER_STARTS), "DAIAD");
        if (policy.followsWeekdays()) {
            explanation.because("/onTheseDays", ReserveResult.SAME_WEEKDAY, "CP-CYCLE");
            explanation.because("/predicted", ReserveResult.SAME_WEEKDAY, "CP-CYCLE");
        }
        explanation.because("/exceptionalDays", Message.of("formula.regeneration.moreThanTimesMedian",
                Text.number(HighDays.CAP_OVER_MEDIAN)), "DAIAD");
        explanation.because("/hardDaysWithoutThem", Message.of("formula.regeneration.sameRunExceptionalDays",
                Text.number(HighDays.CAP_OVER_MEDIAN)), "DAIAD");
    }
}
