// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.answer.payback.MeteringWorthAnswer;
import dev.brinebook.answer.verdict.VerdictAnswer;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.caution.Caution;
import dev.brinebook.household.Days;
import dev.brinebook.model.Model;
import dev.brinebook.payback.AlternativePlan;
import dev.brinebook.payback.Bills;
import dev.brinebook.payback.Comparison;
import dev.brinebook.payback.Outlay;
import dev.brinebook.payback.Prices;
import dev.brinebook.payback.Retrofit;
import dev.brinebook.payback.UncertainCases;
import dev.brinebook.payback.UncertainWorth;
import dev.brinebook.payback.UncertainWorth.UncertainInput;
import dev.brinebook.payback.WaterTariff;
import dev.brinebook.request.prices.LocalPrices;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.SoftenerCase;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.ExistingSoftener;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.softener.Sizing;
import dev.brinebook.text.Message;
import dev.brinebook.verdict.Improvement;
import dev.brinebook.verdict.Ladder;
import dev.brinebook.verdict.Step;
import dev.brinebook.verdict.Terms;
import dev.brinebook.water.WaterAnalysis.Supply;
import dev.brinebook.water.WaterCautions;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Which option pays, for whom, and with which probability. */
public final class CompareAlternatives {

    public static final Operation<AlternativesRequest, AlternativesAnswer> OPERATION = new Operation<>(
            "compareAlternatives", "/v1/alternatives", "Compare options, with their uncertainty",
            "Choose this when several options are open. It compares keeping, correcting the settings, converting, replacing, twin tanks "
                    + "or no softening over a common horizon, with first cost, life, loan, rebate, salt, water, sewer and visits. It "
                    + "gives net present value, annual equivalent, paybacks and rates of return. It simulates uncertain inputs to find "
                    + "how likely each option pays and which input matters most, and finds the hardness, use, price or interval at "
                    + "which it breaks even. For one conversion with known costs use estimatePayback.",
            AlternativesRequest.class, AlternativesAnswer.class, CompareAlternatives::answer, List.of(),
            List.of("well-family", "apartment"));

    private CompareAlternatives() {
    }

    private static AlternativesAnswer answer(AlternativesRequest request, Model model) {
        AnswerUnits units = HomeCountry.units(request.units(), request.household().country());
        Explanation explanation = HomeCountry.explanation(units, request.household().country());
        SoftenerCase given = SoftenerCase.of(request, model, explanation);
        DesignConditions duty = given.duty();
        LocalPrices priced = LocalPrices.of(request.prices(), request.household());
        boolean ownWell = duty.water().supply() == Supply.PRIVATE_WELL;
        Prices prices = priced.toDomain(ownWell, ownWell, explanation);
        int horizon = (int) explanation.resolve(request.horizonYears(),
                Resolved.of("/horizonYears", Retrofit.ASSUMED_HORIZON_YEARS, "years").byDefault("OWN-ASSUMPTION"));
        Bills bills = bills(request, priced, prices, duty, horizon, explanation);
        RunningCost running = new RunningCost(prices.saltPerKilogram(),
                prices.waterPerCubicMetre() + prices.sewerPerCubicMetre());
        ExistingSoftener found = request.softener().resolved(model).found(given, explanation);
        Ladder ladder = Ladder.of(found, duty, terms(request, given, prices, horizon));
        AlternativePlans ways = new AlternativePlans(request, given, running, found.setup());
        List<AlternativePlan> all = request.alternatives().stream().map(ways::of).toList();
        int baseline = baseline(request);
        Comparison comparison = new Comparison(all, baseline, duty, bills);
        UncertainCases cases = request.uncertainty() == null ? null : cases(request, comparison);
        List<AlternativeAnswer> answers = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            answers.add(AlternativeLines.of(comparison, i, request.alternatives().get(i).kind(),
                    i == baseline ? null : uncertain(request, cases, all.get(i), explanation), request.household().people(),
                    priced.currency(), units, explanation));
        }
        String cheapest = all.stream().filter(way -> comparison.setup(way).isPresent())
                .min(Comparator.comparingDouble(comparison::lifeCycleCost)).orElse(comparison.baseline()).name();
        explain(given, explanation);
        VerdictAnswer verdict = VerdictAnswer.of(ladder, duty, running, priced.currency(), units, "/verdict", explanation);
        return new AlternativesAnswer(explanation.behindStops(Message.sentences(List.of(verdict.sentence(),
                summary(comparison, cheapest, answers)))), verdict,
                HardnessLines.of(duty.hardness(), duty.water().hardnessUncertaintyMgPerL(), duty.controller().hardness(), units,
                        "/hardness", explanation),
                units.volume(duty.meanLitres()), comparison.baseline().name(), cheapest, horizon, answers,
                ladder.worth().map(worth -> MeteringWorthAnswer.of(worth, duty, priced.currency(), units)).orElse(null),
                explanation.cautions(), explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    /** Every alternative as a step of the ladder, with its first cost: the first of its kind, and all replacements. */
    private static Terms terms(AlternativesRequest request, SoftenerCase given, Prices prices, int horizonYears) {
        Map<Step, Outlay> outlays = new EnumMap<>(Step.class);
        Map<Improvement, Outlay> improvements = new EnumMap<>(Improvement.class);
        List<Sizing.Candidate> goods = new ArrayList<>();
        for (AlternativeRequest asked : request.alternatives()) {
            double investment = asked.outlay().investment();
            Outlay paid = Terms.paidOnce(investment, 0, horizonYears);
            switch (asked.kind()) {
                case METERED -> outlays.putIfAbsent(Step.CONVERT, paid);
                case TWIN_BEDS -> {
                    if (asked.softener() == null) {
                        improvements.putIfAbsent(Improvement.SECOND_TANK, paid);
                    }
                }
                case REPLACEMENT -> {
                    if (asked.softener() != null) {
                        goods.add(asked.softener().asGoods(investment, request, given));
                    }
                }
                default -> {
                    // keeps the existing softener, or removes it
                }
            }
        }
        return new Terms(prices, horizonYears, outlays, improvements, goods, List.of());
    }

    private static int baseline(AlternativesRequest request) {
        if (request.baseline() == null) {
            return 0;
        }
        return request.alternatives().stream().map(AlternativeRequest::name).toList().indexOf(request.baseline());
    }

    private static Bills bills(AlternativesRequest request, LocalPrices priced, Prices prices, DesignConditions duty, int horizon,
            Explanation explanation) {
        explanation.assume(request.bagsPerTrip() == null
                ? Resolved.inWords("/bagsPerTrip", Message.of("assumed.payback.saltPricedWeight")).byDefault("OWN-ASSUMPTION")
                : Resolved.of("/bagsPerTrip", request.bagsPerTrip(), null));
        Bills.Bags bags = request.bagsPerTrip() == null ? null
                : new Bills.Bags(priced.bagKilograms(explanation), request.bagsPerTrip());
        return new Bills(prices, tariff(request.waterBlocks(), prices.waterPerCubicMetre()),
                tariff(request.sewerBlocks(), prices.sewerPerCubicMetre()),
                duty.meanLitres() * Days.PER_YEAR / 1000, bags, horizon);
    }

    private static WaterTariff tariff(List<TariffBlock> blocks, double flat) {
        return blocks == null ? WaterTariff.flat(flat) : new WaterTariff(blocks.stream().map(block -> new WaterTariff.Block(
                block.upTo() == null ? Double.POSITIVE_INFINITY : block.upTo().inBase() / 1000,
                block.price().perCubicMetre())).toList());
    }

    private static UncertainCases cases(AlternativesRequest request, Comparison comparison) {
        return new UncertainCases(comparison, inputs(request.uncertainty()).stream().map(one ->
                new UncertainInput(one.input(), one.factor())).toList(), PreferencesRequest.seed(request.seed()));
    }

    private static List<UncertainInputRequest> inputs(UncertaintyRequest asked) {
        return asked.inputs() == null ? UncertaintyRequest.ASSUMED : asked.inputs();
    }

    private static UncertainWorthAnswer uncertain(AlternativesRequest request, UncertainCases cases, AlternativePlan way,
            Explanation explanation) {
        UncertaintyRequest asked = request.uncertainty();
        if (asked == null) {
            return null;
        }
        Resolved named = Resolved.ofCode("/uncertainty/inputs", inputs(asked).stream().map(one -> WireNames.of(one.input()))
                .collect(Collectors.joining(", ")));
        explanation.assume(asked.inputs() == null ? named.byDefault("OWN-ASSUMPTION").noting(UncertaintyRequest.ASSUMED_IN_WORDS) : named);
        int draws = (int) explanation.resolve(asked.draws(),
                Resolved.of("/uncertainty/draws", UncertaintyRequest.DEFAULT_DRAWS, null).byDefault("OWN-ASSUMPTION"));
        double within = explanation.resolve(asked.paybackYears(), Resolved.of("/uncertainty/paybackYears",
                UncertaintyRequest.ASSUMED_PAYBACK_YEARS, "years").byDefault("OWN-ASSUMPTION"));
        double enough = asked.enoughStandardError() == null ? 0 : asked.enoughStandardError().value().doubleValue();
        Currency currency = LocalPrices.of(request.prices(), request.household()).currency();
        return UncertainWorthAnswer.of(UncertainWorth.of(cases, way, draws, enough), within, currency);
    }

    private static Message summary(Comparison comparison, String cheapest, List<AlternativeAnswer> answers) {
        int years = comparison.horizonYears();
        AlternativeAnswer best = answers.stream().filter(one -> one.name().equals(cheapest)).findFirst().orElseThrow();
        if (best.worth() == null) {
            return Message.of("compareAlternatives.overYearsCostsLeast", years, Message.named(cheapest));
        }
        Money less = best.worth().netPresentValue();
        Message least = Message.of("compareAlternatives.overYearsCostsLeastLess", years, Message.named(cheapest),
                Text.rounded(less.value().doubleValue(), less.currency()), Message.named(comparison.baseline().name()));
        if (best.uncertain() == null) {
            return least;
        }
        double percent = best.uncertain().worthwhilePercent().doubleValue();
        BigDecimal of20 = Text.whole(percent < 100 && percent > 0 ? Math.min(19, Math.max(1, percent / 5)) : percent / 5);
        return Message.sentences(Stream.concat(Stream.of(least,
                Message.of("compareAlternatives.pays20SimulatedCases", of20, Message.named(cheapest))),
                best.uncertain().drivers().stream().limit(1).map(driver -> Message.of(driver.input()))).toList());
    }

    private static void explain(SoftenerCase given, Explanation explanation) {
        explanation.cautions(given.duty().softenedWith(given.found().softener().salt()).cautions());
        explanation.caution(Caution.POWER_AND_PRESSURE, Caution.LOCAL_CODE_DECIDES, Caution.SETTINGS_BEFORE_PARTS,
                Caution.EFFICIENCY_NOT_CERTIFIED);
        explanation.cautions(WaterCautions.ofDischarge(given.duty().water().supply()));
        explanation.assume(Resolved.inWords("noSoftening", Message.of("assumed.payback.pricedEffectHardWater"))
                .byDefault("OWN-ASSUMPTION"));
        explanation.assume(Resolved.inWords("hardDays", Message.of("assumed.payback.pricedEitherIfOption")).byDefault("OWN-ASSUMPTION"));
    }
}
