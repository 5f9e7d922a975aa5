package dev.brinebook.operation.payback;

import dev.brinebook.answer.payback.MeteringWorthAnswer;
import dev.brinebook.answer.payback.PaybackFigures;
import dev.brinebook.answer.verdict.VerdictAnswer;
import dev.brinebook.answer.water.HardnessLines;
import dev.brinebook.api.AssumptionAnswer.Origin;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.Text;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.caution.Caution;
import dev.brinebook.household.Days;
import dev.brinebook.payback.Bills;
import dev.brinebook.payback.Comparison;
import dev.brinebook.payback.Conversion;
import dev.brinebook.payback.Outlay;
import dev.brinebook.payback.Prices;
import dev.brinebook.payback.UncertainWorth;
import dev.brinebook.payback.UncertainWorth.UncertainInput;
import dev.brinebook.payback.WaterTariff;
import dev.brinebook.payback.Way;
import dev.brinebook.request.prices.LocalPrices;
import dev.brinebook.request.softener.PreferencesRequest;
import dev.brinebook.request.softener.SoftenerCase;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.Found;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.softener.Sizing;
import dev.brinebook.verdict.Improvement;
import dev.brinebook.verdict.Ladder;
import dev.brinebook.verdict.Step;
import dev.brinebook.verdict.Terms;
import dev.brinebook.water.WaterAnalysis.Supply;
import dev.brinebook.water.WaterCautions;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Which way of going on is worth it, for whom, and how sure that is. */
public final class CompareAlternatives {

    public static final Operation<AlternativesRequest, AlternativesAnswer> OPERATION = new Operation<>(
            "compareAlternatives", "/v1/alternatives", "Compare ways of going on, and say how sure it is",
            "Choose this when it is not settled what to do: it holds keeping, tuning, converting, replacing, a pair of beds or no"
                    + " softening against each other over a common horizon, with first cost, life, loan, rebate, salt, water,"
                    + " sewer and visits; gives net present value, annual equivalent, paybacks and rates of return; draws what"
                    + " is not known to tell how likely each pays and what that depends on; and finds the hardness, use, price"
                    + " or interval at which it just pays. For one conversion with known costs use estimatePayback.",
            AlternativesRequest.class, AlternativesAnswer.class, CompareAlternatives::answer, List.of(),
            List.of("well-family", "apartment"));

    private CompareAlternatives() {
    }

    private static AlternativesAnswer answer(AlternativesRequest request) {
        AnswerUnits units = HomeCountry.units(request.units(), request.household().country());
        Explanation explanation = units.explanation();
        SoftenerCase given = SoftenerCase.of(request, explanation);
        Duty duty = given.duty();
        LocalPrices priced = LocalPrices.of(request.prices(), request.household());
        boolean ownWell = duty.water().supply() == Supply.PRIVATE_WELL;
        Prices prices = priced.toDomain(ownWell, ownWell, explanation);
        int horizon = (int) explanation.orDefault("horizonYears", request.horizonYears(), Conversion.ASSUMED_HORIZON_YEARS,
                years -> Message.of("{0} years", years));
        Bills bills = bills(request, priced, prices, duty, horizon, explanation);
        RunningCost running = new RunningCost(prices.saltPerKilogram(),
                prices.waterPerCubicMetre() + prices.sewerPerCubicMetre());
        Found found = request.softener().found(given, explanation);
        Ladder ladder = Ladder.of(found, duty, terms(request, given, prices, horizon));
        Ways ways = new Ways(request, given, running, found.setup());
        List<Way> all = request.alternatives().stream().map(ways::of).toList();
        int baseline = baseline(request);
        Comparison comparison = new Comparison(all, baseline, duty, bills);
        List<AlternativeAnswer> answers = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            answers.add(AlternativeLines.of(comparison, i, request.alternatives().get(i).kind(),
                    i == baseline ? null : uncertain(request, comparison, all.get(i), explanation), request.household().people(),
                    priced.currency(), units, explanation));
        }
        String cheapest = all.stream().filter(way -> comparison.setup(way).isPresent())
                .min(Comparator.comparingDouble(comparison::lifeCycleCost)).orElse(comparison.baseline()).name();
        explain(given, explanation);
        VerdictAnswer verdict = VerdictAnswer.of(ladder, duty, running, priced.currency(), units, "/verdict", explanation);
        return new AlternativesAnswer(explanation.behindStops(Message.joined(" ", List.of(verdict.sentence(),
                summary(comparison, cheapest, answers)))), verdict,
                HardnessLines.of(duty.hardness(), duty.water().hardnessUncertaintyMgPerL(), duty.controller().hardness(), units,
                        "/hardness", explanation),
                units.volume(duty.meanLitres()), comparison.baseline().name(), cheapest, horizon, answers,
                ladder.worth().map(worth -> MeteringWorthAnswer.of(worth, duty, priced.currency(), units, "/meterOverClockSetRight",
                        explanation)).orElse(null),
                explanation.cautions(), explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    /** Every alternative as a step of the ladder, with what it costs to have: the first of its kind, and all replacements. */
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
                    // keeps what is there, or takes it away
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

    private static Bills bills(AlternativesRequest request, LocalPrices priced, Prices prices, Duty duty, int horizon,
            Explanation explanation) {
        explanation.assume("bagsPerTrip", request.bagsPerTrip() == null ? Message.of("salt counts by weight")
                : Message.counted("{0} whole bag at a time", "{0} whole bags at a time", request.bagsPerTrip()),
                request.bagsPerTrip() == null ? Origin.DEFAULT : Origin.CALLER);
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

    private static UncertainWorthAnswer uncertain(AlternativesRequest request, Comparison comparison, Way way,
            Explanation explanation) {
        UncertaintyRequest asked = request.uncertainty();
        if (asked == null) {
            return null;
        }
        List<UncertainInputRequest> inputs = asked.inputs() == null ? UncertaintyRequest.ASSUMED : asked.inputs();
        explanation.assume("uncertainty.inputs", asked.inputs() == null
                ? Message.of("prices normal by 15 %, hardness and daily use by 10 %, first cost triangular from 0.9 to 1.25")
                : Message.of("{0} as given", inputs.size()),
                asked.inputs() == null ? Origin.DEFAULT : Origin.CALLER);
        int draws = (int) explanation.orDefault("uncertainty.draws", asked.draws(), UncertaintyRequest.DEFAULT_DRAWS,
                draw -> Message.of("{0}", draw));
        double within = explanation.orDefault("uncertainty.paybackYears", asked.paybackYears(),
                UncertaintyRequest.ASSUMED_PAYBACK_YEARS, years -> Message.of("{0} years", years));
        double enough = asked.enoughStandardError() == null ? 0 : asked.enoughStandardError().value().doubleValue();
        Currency currency = LocalPrices.of(request.prices(), request.household()).currency();
        return UncertainWorthAnswer.of(UncertainWorth.of(comparison, way,
                inputs.stream().map(one -> new UncertainInput(one.input(), one.factor())).toList(), draws, enough,
                PreferencesRequest.seed(request.seed())), within, currency);
    }

    private static Message summary(Comparison comparison, String cheapest, List<AlternativeAnswer> answers) {
        int years = comparison.horizonYears();
        AlternativeAnswer best = answers.stream().filter(one -> one.name().equals(cheapest)).findFirst().orElseThrow();
        if (best.worth() == null) {
            return Message.of("Over {0} years \"{1}\" costs least: nothing else is worth its cost against it.", years, cheapest);
        }
        Message least = Message.of("Over {0} years \"{1}\" costs least, {2} less than \"{3}\" in today's worth", years, cheapest,
                best.worth().netPresentValue().inWords(), comparison.baseline().name());
        if (best.uncertain() == null) {
            return Message.of("{0}.", least);
        }
        BigDecimal sure = Text.number(best.uncertain().worthwhilePercent().doubleValue());
        return best.uncertain().drivers().stream().findFirst().map(driver -> Message.of("{0}; it is worth something in {1} % of"
                + " the cases drawn, and depends most on {2}.", least, sure, Message.saying(driver.input()))).orElseGet(
                () -> Message.of("{0}; it is worth something in {1} % of the cases drawn.", least, sure));
    }

    private static void explain(SoftenerCase given, Explanation explanation) {
        explanation.cautions(given.duty().softenedWith(given.found().softener().salt()).cautions());
        explanation.caution(Caution.POWER_AND_PRESSURE, Caution.LOCAL_CODE_DECIDES, Caution.SETTINGS_BEFORE_PARTS,
                Caution.EFFICIENCY_NOT_CERTIFIED);
        explanation.cautions(WaterCautions.ofDischarge(given.duty().water().supply()));
        explanation.assume("noSoftening", Message.of("costs nothing here: what hard water does to appliances, soap and energy is left out,"
                + " as no source settles it"), Origin.DEFAULT);
        explanation.assume("hardDays", Message.of("cost nothing either: where a break-even goes so far that a way runs hard, the salt it"
                + " does not use counts for it"), Origin.DEFAULT);
        explanation.given("/dailyUse", "/horizonYears");
        explanation.because("/alternatives/*/saltDose", Message.of("that of the control as found, or of those that a controller"
                + " takes the one that costs least in salt and water in the long run while the service standard is kept"),
                "CP-PRICES");
        explanation.because("/alternatives/*/clockDays", Message.of("the interval as found, or the longest that keeps to the"
                + " service standard"), "FELLER");
        explanation.because("/alternatives/*/meterVolume", Message.of("capacity that the dose restores over the compensated"
                + " hardness"), "WQP-2009");
        explanation.because("/alternatives/*/year", Message.of("expected regenerations of a year times the salt and"
                + " water of one"), "FELLER");
        explanation.because("/alternatives/*/lifeCycleCost", Message.of("first cost less rebate, replacements at the end of each life,"
                + " bills that grow with prices, less the worth that is left at the end of the horizon, all discounted"), "NIST-HB135");
        explanation.because("/alternatives/*/annualEquivalent", Message.of("life-cycle cost times d / (1 - (1 + d)^-N)"), "NIST-HB135");
        explanation.because("/alternatives/*/bills", Message.of("an expected year: salt, water and visits times their prices;"
                + " water on top of the household's where it is sold by blocks"), "DAIAD");
        explanation.because("/alternatives/*/worth/netPresentValue", Message.of("life-cycle cost of the baseline less its own"),
                "NIST-HB135");
        explanation.because("/alternatives/*/worth/investment", Message.of("first cost less rebate, less that of the baseline"),
                "CFR-436");
        explanation.because("/alternatives/*/worth/firstYearSaving", Message.of("bills of the baseline less its own"),
                "NIST-HB135");
        explanation.because("/alternatives/*/worth/discountedPaybackYears", Message.of("years until the discounted flows add up to"
                + " nothing; the last year is shared out evenly"), "NIST-HB135");
        PaybackFigures.explainReturns("/alternatives/*/worth", explanation);
        explanation.because("/alternatives/*/worth/savingsToInvestmentRatio", Message.of("bills saved over what is invested,"
                + " replacements and"
                + " worth left included, both in today's worth"), "CFR-436");
        explanation.because("/alternatives/*/uncertain", Message.of("each draw a value of every input, by Latin hypercubes of 250;"
                + " salt and water are then those of an expected year, with the settings that cost least there, but for those"
                + " that the request fixes"), "MCKAY-1979");
        explanation.because("/alternatives/*/uncertain/drivers/*/rankCorrelation", Message.of("correlation of ranks over the draws"),
                "SPEARMAN-1904");
        explanation.because("/alternatives/*/breakEven", Message.of("the net present value of expected years, solved for zero"
                + " between the ends given; of several zeros the nearest to what was given. Settings are chosen anew along the"
                + " way, but for those that the request fixes"), "NIST-HB135");
        explanation.because("/alternatives/*/discharge", Message.of("chloride by atomic weights; waste water is the softened use and the"
                + " regeneration water"), "CIAAW");
    }
}
