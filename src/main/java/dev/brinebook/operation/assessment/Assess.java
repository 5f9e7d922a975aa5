// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.assessment;

import dev.brinebook.answer.cycle.CycleTable;
import dev.brinebook.answer.cycle.RefillSetting;
import dev.brinebook.answer.softener.ControllerQuantities;
import dev.brinebook.answer.softener.DoseTradeOff;
import dev.brinebook.answer.softener.SettingFinding;
import dev.brinebook.answer.softener.SettingQuestion;
import dev.brinebook.answer.softener.SiteReadiness;
import dev.brinebook.answer.verdict.VerdictAnswer;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.answer.water.SoftenedWaterAnswer;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Operation.QueryParameter;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.assessment.Assessment;
import dev.brinebook.assessment.CommissioningStep;
import dev.brinebook.caution.Caution;
import dev.brinebook.caution.Severity;
import dev.brinebook.guard.WorkingMemory;
import dev.brinebook.model.Model;
import dev.brinebook.model.ModelChange;
import dev.brinebook.payback.Prices;
import dev.brinebook.regeneration.Cycle;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.regeneration.SaltStore;
import dev.brinebook.request.prices.LocalPrices;
import dev.brinebook.request.softener.RetrofitRequest;
import dev.brinebook.request.softener.SiteRequest;
import dev.brinebook.request.softener.SoftenerCase;
import dev.brinebook.resin.Salt;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.ExistingSoftener;
import dev.brinebook.softener.Finding;
import dev.brinebook.softener.MeterStart;
import dev.brinebook.softener.Readiness;
import dev.brinebook.softener.SaltStep;
import dev.brinebook.softener.Softener;
import dev.brinebook.text.Measure;
import dev.brinebook.text.Message;
import dev.brinebook.verdict.Rung;
import dev.brinebook.verdict.Step;
import dev.brinebook.verdict.Terms;
import dev.brinebook.water.WaterAnalysis.Supply;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** The whole job in one call. */
public final class Assess {

    public static final Operation<AssessmentRequest, AssessmentAnswer> OPERATION = new Operation<>(
            "assess", "/v1/assessment", "Assess a softener completely",
            "Choose this when the existing softener and the household are known and you want the complete answer: compensated hardness, "
                    + "whether the softener is large enough, settings to correct, settings for a metered controller with reasons, what "
                    + "the conversion needs, expected salt, water and hard days of a year now and with a meter, salt purchases, "
                    + "payback, sodium and cautions. All parts come from the same results. For a single part choose its own operation, "
                    + "such as reviewSettings or estimatePayback. If there is no softener yet, choose sizeSoftener. With Accept "
                    + "text/html or application/pdf it returns one of three sheets to print.",
            AssessmentRequest.class, AssessmentAnswer.class, Assess::answer,
            List.of(QueryParameter.whole("request", "The request of the POST form as JSON, percent-encoded. A link can hold up "
                    + "to about 15000 characters of it.", "{\"water\":{\"hardness\":{\"value\":22,\"unit\":\"gpg\"}},\"household\":"
                    + "{\"people\":5},\"softener\":{\"resinVolume\":{\"value\":1.5,\"unit\":\"ft3\"},\"saltDose\":{\"value\":15,"
                    + "\"unit\":\"lb/ft3\"},\"control\":{\"kind\":\"clock\",\"everyDays\":3}}}")),
            List.of("well-family", "apartment", "holiday-cabin"))
            .answeringIn(AssessmentSheets.forms());

    /** What an assessment takes with all that it was read from. */
    private static final int USUAL_BYTES = 1_700_000;

    private Assess() {
    }

    private record Question(AssessmentRequest request, Model model) {
    }

    /**
     * A case and its answer.
     *
     * @param assessment what was calculated, in SI
     * @param answer the same on the wire
     */
    record Assessed(Assessment assessment, AssessmentAnswer answer) {
    }

    private static AssessmentAnswer answer(AssessmentRequest request, Model model) {
        return assessed(request, model).answer();
    }

    /** Kept for a while, as who sees an answer then asks for its sheets. */
    static Assessed assessed(AssessmentRequest request, Model model) {
        return WorkingMemory.kept(new Question(request, model), Assessed.class, USUAL_BYTES, () -> calculated(request, model));
    }

    private static Assessed calculated(AssessmentRequest request, Model model) {
        AnswerUnits units = HomeCountry.units(request.units(), request.household().country());
        Explanation explanation = HomeCountry.explanation(units, request.household().country());
        explanation.caution(HomeCountry.airGap(request.household().country()));
        SoftenerCase given = SoftenerCase.of(request, model, explanation);
        DesignConditions duty = given.duty();
        LocalPrices priced = LocalPrices.of(request.prices(), request.household());
        SiteRequest site = SiteRequest.orUnseen(request.site());
        Prices prices = priced.toDomain(duty.water().supply() == Supply.PRIVATE_WELL,
                site.ownSewage(duty.water().supply()), explanation);
        ExistingSoftener found = request.softener().resolved(model).found(given, explanation);
        SiteReadiness readiness = SiteReadiness.of(site, request.softener(), found, duty, explanation);
        Terms terms = RetrofitRequest.terms(request.retrofit(), readiness.cost(), prices, request, given);
        Assessment assessment = Assessment.of(found, duty, terms);
        warn(assessment, site, units, explanation);
        VerdictAnswer verdict = VerdictAnswer.of(assessment.ladder(), duty, terms.running(), priced.currency(), units, "/verdict",
                explanation);
        return new Assessed(assessment, verdict.step() == Step.TREAT_FIRST ? untreated(assessment, verdict, readiness, units, explanation)
                : softened(request, assessment, terms, prices, priced, verdict, readiness, units, model,
                        explanation));
    }

    /** Without settings: none is right before the water is treated. */
    private static AssessmentAnswer untreated(Assessment assessment, VerdictAnswer verdict, SiteReadiness readiness, AnswerUnits units,
            Explanation explanation) {
        return of(assessment, explanation.behindStops(Message.sentences(List.of(verdict.sentence(), verdict.action()))), verdict,
                List.of(), List.of(), null, null, null, null, readiness, List.of(), null, null,
                AdviceRanges.NONE, null, units, explanation);
    }

    private static AssessmentAnswer softened(AssessmentRequest request, Assessment assessment, Terms terms, Prices prices,
            LocalPrices priced, VerdictAnswer verdict, SiteReadiness readiness, AnswerUnits units, Model model, Explanation explanation) {
        DesignConditions duty = assessment.duty();
        SaltStore store = request.softener().resolved(model).saltStore(priced.bagKilograms(explanation), explanation);
        Softener softener = assessment.found().setup().softener();
        Salt salt = softener.salt();
        Step step = stepToSet(assessment);
        DoseChoice.Option set = toSet(assessment, step);
        Cycle cycle = set.dosed().cycle();
        explain(assessment, salt, units, explanation);
        RetrofitWorth worth = assessment.found().policy().byClock() ? RetrofitWorth.of(assessment, request.retrofit(),
                readiness.cost(), prices, priced.currency(), units, model, explanation) : null;
        RecommendedSettings settings = RecommendedSettings.of(step, set, assessment.choice(), duty, units, explanation);
        return of(assessment, explanation.behindStops(summary(assessment, settings, verdict, units)), verdict,
                assessment.findings().stream().map(finding -> SettingFinding.of(finding, softener, duty, units)).toList(),
                assessment.questions().stream().map(question -> SettingQuestion.of(question, softener, duty, units)).toList(), settings,
                DoseTradeOff.of(assessment.choice(), duty, assessment.cost(), priced.currency(), units, "/tradeOff", explanation),
                CycleTable.of(cycle, units), RefillSetting.of(cycle.step(CycleStep.Kind.REFILL), salt,
                        duty.water().temperatureCelsius(), units), readiness, steps(units),
                YearComparison.of(assessment, store, units, model), worth,
                ranges(request, assessment, terms, prices, priced, units, model, explanation),
                request.household().restsOnPeopleAlone() && duty.meanLitres() > 0
                        ? ReadingsWorth.of(assessment, priced.currency(), units, explanation) : null, units, explanation);
    }

    private static AdviceRanges ranges(AssessmentRequest request, Assessment assessment, Terms terms, Prices prices, LocalPrices priced,
            AnswerUnits units, Model model, Explanation explanation) {
        return AdviceRanges.of(AdviceRangeAnswer.ofTest(assessment, model, terms, prices, priced.currency(), units),
                AdviceRangeAnswer.ofUse(assessment, request.household().resolved().useUncertaintyShare(assessment.duty().demand(),
                        explanation), model, terms, prices, priced.currency(), units),
                assessment, request.softener().bedUncertainty(), model.has(ModelChange.PAYBACK_OVER_THE_STEP_BELOW), terms, prices,
                priced.currency(), units);
    }

    /** The step with the meter to set: that with another bed or a second one, where that is the verdict. */
    private static Step stepToSet(Assessment assessment) {
        Step verdict = assessment.ladder().verdict().step();
        if (verdict.compareTo(Step.IMPROVE) >= 0 && metered(assessment, verdict).isPresent()) {
            return verdict;
        }
        return assessment.found().policy().byClock() ? Step.CONVERT : Step.SET_RIGHT;
    }

    /** The meter's settings in a step; those of the present bed do not depend on the step. */
    private static DoseChoice.Option toSet(Assessment assessment, Step step) {
        return step.compareTo(Step.IMPROVE) < 0 ? assessment.recommended() : metered(assessment, step).orElseThrow();
    }

    private static Optional<DoseChoice.Option> metered(Assessment assessment, Step step) {
        return assessment.ladder().rung(step).option().flatMap(Rung.Option::metered);
    }

    private static AssessmentAnswer of(Assessment assessment, Message summary, VerdictAnswer verdict, List<SettingFinding> findings,
            List<SettingQuestion> questions, RecommendedSettings settings, DoseTradeOff tradeOff, CycleTable cycle, RefillSetting refill,
            SiteReadiness readiness, List<Message> commissioning, YearComparison year, RetrofitWorth retrofit,
            AdviceRanges ranges, ReadingsWorth readings, AnswerUnits units, Explanation explanation) {
        DesignConditions duty = assessment.duty();
        return new AssessmentAnswer(summary, verdict, HardnessLines.of(duty.hardness(), duty.water().hardnessUncertaintyMgPerL(),
                duty.controller().hardness(), units, "/hardness", explanation), DemandAnswer.of(duty, units),
                FitAnswer.of(assessment, units, "/fit", explanation), findings, questions, settings, tradeOff, cycle, refill,
                readiness.checks(), commissioning, year, retrofit, ranges.test(), ranges.use(), ranges.resin(), ranges.salt(),
                ranges.saving(), readings, SoftenedWaterAnswer.of(assessment.softened(), units),
                explanation.cautions(), explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    private static void warn(Assessment assessment, SiteRequest site, AnswerUnits units, Explanation explanation) {
        explanation.because("/readiness", Message.of("formula.assessment.siteObservationsDrainCompared", units == AnswerUnits.METRIC
                ? Message.of("pattern.value", new Measure(Text.number(Readiness.MAX_VELOCITY_METRES_PER_SECOND), "m/s"))
                : Message.of("pattern.value", new Measure(BigDecimal.valueOf(8), "ft/s"))), "CP-INSTALLATION");
        explanation.cautions(assessment.softened().cautions());
        explanation.caution(Caution.EFFICIENCY_NOT_CERTIFIED, Caution.SETTINGS_BEFORE_PARTS);
        explanation.cautions(Caution.OF_INSTALLATION);
        if (assessment.fit().largerThanNeeded()) {
            explanation.caution(Caution.BED_LARGER_THAN_NEEDED);
        }
        explanation.cautions(site.wasteWaterCautions(assessment.duty().water().supply()));
        double most = assessment.duty().standard().hardDaysPerYear();
        if (assessment.years().asFound().totals().hardDays() > most
                || assessment.years().converted().totals().hardDays() > most) {
            explanation.caution(Caution.RUNS_HARD);
        }
    }

    private static void explain(Assessment assessment, Salt salt, AnswerUnits units, Explanation explanation) {
        SettingFinding.explain(assessment.findings(), units, "/findings", explanation);
        CycleTable.explain("/cycle", explanation);
        RefillSetting.explain("/refill", salt, explanation);
        YearComparison.explain(assessment, units, explanation);
    }

    private static List<Message> steps(AnswerUnits units) {
        return Arrays.stream(CommissioningStep.values()).map(units::saying).toList();
    }

    private static Message summary(Assessment assessment, RecommendedSettings settings, VerdictAnswer verdict,
            AnswerUnits units) {
        List<Message> sentences = new ArrayList<>();
        sentences.add(verdict.sentence());
        assessment.findings().stream().map(Finding::code).filter(code -> code.severity() == Severity.STOP).distinct()
                .forEach(code -> sentences.add(units.saying(code)));
        if (!assessment.shortcomings().isEmpty()) {
            sentences.add(Message.of("assess.softenerDoesFitHousehold"));
            assessment.shortcomings().forEach(one -> sentences.add(units.saying(one)));
        }
        boolean metered = verdict.step() == Step.CONVERT && assessment.ladder().interim().isEmpty()
                || verdict.step() == Step.SET_RIGHT && !assessment.found().policy().byClock();
        DoseChoice.Option option = assessment.recommended();
        ControllerQuantities set = new ControllerQuantities(assessment.duty(), units);
        double meter = option.settings().meterLitres();
        sentences.add(metered ? set(settings, assessment.duty().controller().saltStep() instanceof SaltStep.RefillMinutes,
                option.settings().start() != MeterStart.DELAYED ? Optional.empty()
                        : Optional.of(set.reserveInWords(Math.min(meter, option.settings().reserveLitres()), meter)))
                : verdict.action());
        return Message.sentences(sentences);
    }

    /** {@code reserve} is absent where the meter starts at once. */
    private static Message set(RecommendedSettings settings, boolean saltByMinutes, Optional<Message> reserve) {
        String saltBy = saltByMinutes ? "minutes" : "salt";
        Message salt = Text.setting(settings.saltPerRegeneration());
        Message hardness = Text.setting(settings.hardness());
        Message capacity = Text.setting(settings.capacity());
        if (reserve.isEmpty()) {
            return Message.of("assess.setHardnessCapacityNoReserve", hardness, capacity, salt, saltBy, settings.refillMinutes());
        }
        return settings.reserve().equals(settings.meterVolume())
                ? Message.of("assess.setHardnessCapacityMinutes", hardness, capacity, salt, reserve.get(), saltBy, settings.refillMinutes())
                : Message.of("assess.setHardnessCapacityMinutesBrine", hardness, capacity, salt, reserve.get(), saltBy,
                        settings.refillMinutes());
    }
}
