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
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.MeteredByHistory;
import dev.brinebook.regeneration.Policy;
import dev.brinebook.regeneration.Regeneration;
import dev.brinebook.regeneration.Replay;
import dev.brinebook.regeneration.UsualHardDays;
import dev.brinebook.regeneration.UsualHardDays.Verdict;
import dev.brinebook.regeneration.YearlyTotals;
import dev.brinebook.request.household.HouseholdRequest;
import dev.brinebook.request.softener.SoftenerCase;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.Setup;
import dev.brinebook.water.WaterCautions;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Set;

/** What settings would have done on a household's real days. */
public final class BacktestSettings {

    public static final Operation<BacktestRequest, BacktestAnswer> OPERATION = new Operation<>(
            "backtestSettings", "/v1/backtest", "Try settings on a household's real days",
            "Choose this when a household has daily readings and the question is whether settings kept their promise, or would"
                    + " have kept it: it answers the hard days, regenerations, salt and water that the settings would have"
                    + " had on these days, beside what was predicted of as many days, and says that the prediction was wrong only"
                    + " where the count of hard days is outside of what is usual. For what is to be expected of days"
                    + " to come choose scheduleRegeneration; to have readings made into days readMeter.",
            BacktestRequest.class, BacktestAnswer.class, BacktestSettings::answer, List.of(),
            List.of("well-family", "apartment"));

    /** A mean use that is further off than this share is named as the reason. No source is at hand. */
    private static final double ASSUMED_OTHER_USE_SHARE = 0.10;
    /** Standard deviations of the level beyond which a use is said to be another though the hard days are usual: one in ten. */
    private static final double UNUSUAL_DEVIATIONS = 1.645;

    /**
     * What was found on the days.
     *
     * @param known days that were measured
     * @param seen totals of these days
     * @param expected totals expected of as many
     * @param usual hard days usual of as many
     * @param exceptional days of exceptional use among them
     * @param withoutThem hard days if these had been held to what is usual
     * @param dailyLitres mean use of these days
     * @param expectedLitres mean use of a day that was expected
     * @param levelSpread standard deviation of the logarithm of the level that was expected
     */
    private record Found(int known, YearlyTotals seen, YearlyTotals expected, UsualHardDays usual, int exceptional,
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

    private static BacktestAnswer answer(BacktestRequest request) {
        AnswerUnits units = HomeCountry.units(request.units(), request.household().country());
        Explanation explanation = units.explanation();
        explanation.caution(HomeCountry.airGap(request.household().country()));
        SoftenerCase given = SoftenerCase.of(request, explanation);
        Duty duty = given.duty();
        MeteredDays days = softened(request);
        Setup setup = request.softener().found(given, explanation).setup();
        Regeneration regeneration = setup.regeneration(duty.water().temperatureCelsius());
        List<HighDay> exceptional = HighDays.of(days).days();
        Found found = found(days, duty, regeneration, setup.policy());
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

    private static Found found(MeteredDays days, Duty duty, Regeneration regeneration, Policy policy) {
        int known = days.known().length;
        double hardness = duty.loadMgPerL();
        HighDays exceptional = HighDays.of(days);
        YearlyTotals seen = Replay.yearly(days, hardness, regeneration, policy).in(known);
        double without = exceptional.days().isEmpty() ? seen.hardDays()
                : Replay.yearly(exceptional.capped(), hardness, regeneration, policy).in(known).hardDays();
        return new Found(known, seen, duty.year(policy, regeneration).in(known),
                UsualHardDays.of(duty.demand().model(), policy, hardness, regeneration, known), exceptional.days().size(),
                without, days.meanLitres(), duty.meanLitres(), duty.demand().model().change().levelSpread());
    }

    private static Message summary(Found found, Policy policy, AnswerUnits units) {
        Message days = hardDays(found.seen().hardDays());
        Message first = found.usual().to() == 0 && found.seen().hardDays() == 0
                ? Message.counted("On your {0} day these settings would have left no hard day, as expected.",
                        "On your {0} days these settings would have left no hard day, as expected.", found.known())
                : found.usual().to() == 0 ? Message.counted("On your {0} day these settings would have left {1}; none is usual.",
                        "On your {0} days these settings would have left {1}; none is usual.", found.known(), days)
                : Message.counted("On your {0} day these settings would have left {1}; {2} were expected, and {3} to {4} are usual.",
                        "On your {0} days these settings would have left {1}; {2} were expected, and {3} to {4} are usual.",
                        found.known(), days, shortNumber(found.expected().hardDays()), found.usual().from(), found.usual().to());
        return switch (found.verdict()) {
            case AS_PREDICTED -> found.leaksAlone() ? Message.joined(" ", List.of(first, leaks(found)))
                    : found.usedUnusually() ? Message.joined(" ", List.of(first, otherUse(found, units))) : first;
            case MORE_THAN_PREDICTED -> Message.joined(" ", List.of(first, more(found, policy, units)));
            case FEWER_THAN_PREDICTED -> Message.joined(" ", List.of(first, fewer(found, units)));
        };
    }

    private static Message more(Found found, Policy policy, AnswerUnits units) {
        if (found.usedMore()) {
            return otherUse(found, units);
        }
        if (policy.byClock()) {
            return Message.of("The mean use does not explain it: set the clock to fewer days, or the dose higher.");
        }
        return policy.startsAtOnce()
                ? Message.of("The mean use does not explain it: set the meter to no more than the bed can soften.")
                : Message.of("The mean use does not explain it: keep more back, or set the dose higher.");
    }

    private static Message leaks(Found found) {
        return Message.counted("On {0} day more than four times the usual was used: look for a leak or a filling before you"
                + " change a setting.", "On {0} days more than four times the usual was used: look for leaks or fillings"
                + " before you change a setting.", found.exceptional());
    }

    private static Message otherUse(Found found, AnswerUnits units) {
        return Message.of("{0} was used on a mean day instead of the {1} expected: choose the settings again for this use.",
                Text.of(units.volume(found.dailyLitres())), Text.of(units.volume(found.expectedLitres())));
    }

    private static Message fewer(Found found, AnswerUnits units) {
        return found.usedLess()
                ? Message.of("{0} was used on a mean day instead of the {1} expected: settings chosen for this use would need less"
                        + " salt.", Text.of(units.volume(found.dailyLitres())), Text.of(units.volume(found.expectedLitres())))
                : Message.of("Less salt might do: choose the settings again from these days.");
    }

    private static Message hardDays(double days) {
        return Message.counted("{0} hard day", "{0} hard days", shortNumber(days));
    }

    /** To a tenth: what is a mean of a few runs is no better known. */
    private static BigDecimal shortNumber(double days) {
        BigDecimal tenths = BigDecimal.valueOf(days).setScale(1, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return tenths.scale() < 0 ? tenths.setScale(0) : tenths;
    }

    private static void warn(SoftenerCase given, Found found, Explanation explanation) {
        explanation.cautions(given.duty().softenedWith(given.found().softener().salt()).cautions());
        explanation.cautions(Caution.OF_INSTALLATION);
        explanation.cautions(WaterCautions.ofDischarge(given.duty().water().supply()));
        if (found.seen().hardDays() > 0) {
            explanation.caution(Caution.RUNS_HARD);
        }
    }

    private static void explain(SoftenerCase given, Policy policy, AnswerUnits units, Explanation explanation) {
        explanation.given("/days", "/missingDays");
        CapacityBasis.explain("/capacity", given.found().softener().capacity(), units, explanation);
        explanation.because("/dailyUse", Message.of("mean of the days measured, of the part that is softened"), "REQUEST");
        explanation.because("/expectedDailyUse", Message.of("indoor use times the share that is softened, vacant days included"),
                "REU-2016");
        explanation.because("/onTheseDays", Message.of("the days as measured, one after the other, each drawing its use through the"
                + " bed and the control deciding in the night after it; missing days are left out. Run from {0} counts of a meter"
                + " over one cycle, or from each night of a clock, and averaged", Replay.METER_STARTS), "DAIAD");
        if (policy instanceof MeteredByHistory) {
            explanation.because("/onTheseDays", TriedReserve.SAME_WEEKDAY, "CP-CYCLE");
            explanation.because("/predicted", TriedReserve.SAME_WEEKDAY, "CP-CYCLE");
        }
        explanation.because("/predicted", Message.of("what is to be expected of a year in the long run, times days measured over"
                + " 365; seasons are not told apart"), "FELLER");
        explanation.because("/usualHardDays", Message.of("5 and 95 % points of Poisson counts about the expected hard days, at seven"
                + " levels of use that the home may have; hard days of a clock come several to a cycle and spread wider"),
                "ABRAMOWITZ-STEGUN");
        explanation.because("/exceptionalDays", Message.of("more than {0} median days with somebody at home",
                Text.number(HighDays.CAP_OVER_MEDIAN)), "DAIAD");
        explanation.because("/hardDaysWithoutThem", Message.of("the same run with the exceptional days held to {0} median days",
                Text.number(HighDays.CAP_OVER_MEDIAN)), "DAIAD");
    }
}
