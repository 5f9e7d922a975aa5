// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.softener;

import dev.brinebook.answer.softener.DoseTradeOff;
import dev.brinebook.answer.softener.FlowCheckAnswer;
import dev.brinebook.answer.verdict.VerdictAnswer;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.caution.Caution;
import dev.brinebook.household.Days;
import dev.brinebook.model.Model;
import dev.brinebook.quantity.Exact;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.regeneration.CycleFlows;
import dev.brinebook.request.prices.LocalPrices;
import dev.brinebook.request.softener.CandidateRequest;
import dev.brinebook.request.softener.FlowsRequest;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.ResinState;
import dev.brinebook.request.softener.SoftenerCase;
import dev.brinebook.resin.CapacityModel;
import dev.brinebook.resin.ResinBed;
import dev.brinebook.resin.Salt;
import dev.brinebook.softener.ControllerTerms;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.Fit;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.softener.Sizing;
import dev.brinebook.softener.Sizing.Candidate;
import dev.brinebook.softener.Sizing.Ranked;
import dev.brinebook.softener.Softener;
import dev.brinebook.softener.StandardTank;
import dev.brinebook.text.Message;
import dev.brinebook.verdict.Ladder;
import dev.brinebook.verdict.Step;
import dev.brinebook.verdict.Terms;
import dev.brinebook.water.CompensatedHardness;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterCautions;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Which softener for a water and a household. */
public final class SizeSoftener {

    public static final Operation<SizingRequest, SizingAnswer> OPERATION = new Operation<>(
            "sizeSoftener", "/v1/softener-sizing", "Find the softener for a household",
            "Choose this to recommend a softener, or to see whether one from a shop's list fits. It calculates every candidate (or the "
                    + "standard sizes of the trade) for a year of the household, at the salt dose given or at the cheapest one. It "
                    + "ranks them with the reason why each fits or fails, and says why the first is better than the next. For an "
                    + "existing softener choose reviewSettings or assess. For the flows and pressure drop of one bed choose "
                    + "computeBedHydraulics.",
            SizingRequest.class, SizingAnswer.class, SizeSoftener::answer, List.of(),
            List.of("well-family", "apartment", "holiday-cabin"));

    private SizeSoftener() {
    }

    private static SizingAnswer answer(SizingRequest request, Model model) {
        AnswerUnits units = HomeCountry.units(request.units(), request.household().country());
        Explanation explanation = HomeCountry.explanation(units, request.household().country());
        explanation.caution(HomeCountry.airGap(request.household().country()));
        DesignConditions duty = duty(request, model, explanation);
        LocalPrices prices = LocalPrices.of(request.prices(), request.household());
        Salt salt = explanation.resolve("/salt", request.salt(), Salt.SODIUM_CHLORIDE, "OWN-ASSUMPTION");
        OptionalDouble dose = FlowsRequest.base(request.saltDose());
        explanation.assume(dose.isPresent() ? Resolved.of("/saltDose", request.saltDose())
                : Resolved.inWords("/saltDose", Message.of("assumed.softener.eachCandidateOneCheapest")).estimated("TRADE-EFFICIENT"));
        boolean ownWell = duty.water().supply() == WaterAnalysis.Supply.PRIVATE_WELL;
        Terms terms = new Terms(prices.toDomain(ownWell, ownWell, explanation), Terms.ASSUMED_HORIZON_YEARS, Map.of());
        RunningCost cost = terms.running();
        List<Ranked> ranked = Sizing.rank(candidates(request, salt, duty, dose, model, explanation), duty, cost, dose);
        warn(duty, salt, ranked, explanation);
        request.water().questionUnit(explanation);
        explain(request, ranked, prices.currency(), units, explanation);
        Map<String, CandidateRequest> bySku = request.candidates() == null ? Map.of() : request.candidates().stream()
                .collect(Collectors.toMap(CandidateRequest::sku, Function.identity()));
        List<SizedSoftener> sized = new ArrayList<>();
        for (Ranked one : ranked) {
            sized.add(SizedSoftener.of(sized.size() + 1, one, bySku.get(one.candidate().name()), units,
                    prices.currency()));
        }
        boolean found = ranked.get(0).fit().fits();
        VerdictAnswer verdict = VerdictAnswer.of(Ladder.withoutSoftener(ranked.get(0), duty, terms), duty,
                cost, prices.currency(), units, "/verdict", explanation);
        Message why = found ? CandidateChoice.why(ranked, prices.currency(), units) : CandidateChoice.whyNone(ranked, units);
        String choice = found ? ranked.get(0).candidate().name() : null;
        return new SizingAnswer(explanation.behindStops(verdict.step() == Step.NONE_NEEDED || verdict.step() == Step.TREAT_FIRST
                ? verdict.sentence() : why), verdict,
                HardnessLines.of(duty.hardness(), duty.water().hardnessUncertaintyMgPerL(), duty.controller().hardness(), units,
                        "/hardness", explanation),
                units.volume(duty.meanLitres()), units.capacity(duty.dailyLoadGrams()), choice, why, sized,
                ranked.get(0).choice().map(chosen -> DoseTradeOff.of(chosen, duty, cost, prices.currency(), units,
                        "/tradeOff", explanation)).orElse(null),
                explanation.cautions(), explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    private static DesignConditions duty(SizingRequest request, Model model, Explanation explanation) {
        WaterAnalysis water = request.water().toDomain(explanation);
        CompensatedHardness hardness = water.compensated(request.water().factors(explanation));
        SoftenerCase.requireHardness(hardness);
        PreferencesRequest preferences = PreferencesRequest.orNone(request.preferences());
        ControllerTerms controller = preferences.controllerTerms(null, request.household().country(),
                HomeCountry.units(request.units(), request.household().country()), model, explanation);
        return preferences.duty(water, hardness, request.household().resolved().toDomain(explanation), Days.PER_YEAR, request.seed(),
                controller, PreferencesRequest.practice(model, request.household().country()), explanation).forNewBed();
    }

    private static List<Candidate> candidates(SizingRequest request, Salt salt, DesignConditions duty, OptionalDouble dose,
            Model model, Explanation explanation) {
        Function<ResinState, CapacityModel> capacity = state -> PreferencesRequest.orNone(request.preferences())
                .capacity(request.water(), duty.water(), state, explanation);
        List<Candidate> candidates = request.candidates() == null ? StandardTank.all().stream()
                .map(tank -> new Candidate(name(tank), new Softener(new ResinBed(tank.resinLitres(), tank.diameterMetres()),
                        tank.heightMetres(), salt, capacity.apply(ResinState.NEW), CycleFlows.UNKNOWN),
                        Fit.Datasheet.TANK_ALONE, OptionalDouble.empty())).toList()
                : request.candidates().stream().map(candidate -> new Candidate(candidate.sku(),
                        candidate.asSoftener(salt).resolved(model).toDomain(capacity.apply(candidate.resinState()), new Explanation()),
                        candidate.datasheet(model), candidate.price() == null ? OptionalDouble.empty()
                                : OptionalDouble.of(candidate.price().value().doubleValue()))).toList();
        double highest = salt.fromSodiumChloride(SaltDoseUnit.POUND_PER_CUBIC_FOOT.toBase(
                DoseChoice.HIGHEST_POUNDS_PER_CUBIC_FOOT));
        assumeTanks(request, model, explanation);
        candidates.forEach(candidate -> SoftenerCase.requireCapacity(candidate.softener(), dose.orElse(highest),
                dose.isPresent() ? "/saltDose" : "/water"));
        return candidates;
    }

    /** Records the size of every tank that is not given. */
    private static void assumeTanks(SizingRequest request, Model model, Explanation explanation) {
        for (int i = 0; request.candidates() != null && i < request.candidates().size(); i++) {
            request.candidates().get(i).asSoftener(null).resolved(model).assumeTank("/candidates/" + i, explanation);
        }
    }

    private static String name(StandardTank tank) {
        return Text.number(tank.diameterMetres() / Exact.INCH_METRES) + " x "
                + Text.number(tank.heightMetres() / Exact.INCH_METRES) + " in";
    }

    private static void warn(DesignConditions duty, Salt salt, List<Ranked> ranked, Explanation explanation) {
        explanation.cautions(duty.cautions());
        explanation.cautions(duty.softenedWith(salt).cautions());
        explanation.caution(Caution.EFFICIENCY_NOT_CERTIFIED);
        explanation.cautions(Caution.OF_INSTALLATION);
        explanation.cautions(WaterCautions.ofDischarge(duty.water().supply()));
        if (ranked.get(0).fit().largerThanNeeded()) {
            explanation.caution(Caution.BED_LARGER_THAN_NEEDED);
        }
        if (!ranked.get(0).notChecked().isEmpty()) {
            explanation.caution(Caution.TANK_SIZE_NOT_GIVEN);
        }
        if (!ranked.get(0).option().settings().keepsStandard()) {
            explanation.caution(Caution.RUNS_HARD);
        }
    }

    private static void explain(SizingRequest request, List<Ranked> ranked, Currency currency, AnswerUnits units, Explanation explanation) {
        SizedSoftener.explain(request, ranked, currency, units, explanation);
        FlowCheckAnswer.explain("/candidates/*", units, explanation);
        if (request.candidates() != null) {
            if (ranked.stream().anyMatch(one -> !one.notChecked().isEmpty())) {
                FlowCheckAnswer.explainByResinAlone("/candidates/*", explanation);
            }
            Message rating = Message.of("sizeSoftener.ratingGivenRequestWhere");
            explanation.because("/candidates/*/continuousFlow/limit", rating, "REQUEST");
            explanation.because("/candidates/*/peakFlow/limit", rating, "REQUEST");
        }
    }
}
