// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.answer.payback.MeteringWorthAnswer;
import dev.brinebook.answer.payback.PaybackFigures;
import dev.brinebook.answer.softener.SiteReadiness;
import dev.brinebook.answer.verdict.VerdictAnswer;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.HomeCountry;
import dev.brinebook.caution.Caution;
import dev.brinebook.model.Model;
import dev.brinebook.operation.payback.RetrofitPaybackAnswer.Comparison;
import dev.brinebook.payback.ConvertedYears;
import dev.brinebook.payback.Prices;
import dev.brinebook.payback.RetrofitPayback;
import dev.brinebook.payback.YearlyUse;
import dev.brinebook.request.prices.LocalPrices;
import dev.brinebook.request.prices.PricesRequest;
import dev.brinebook.request.softener.RetrofitRequest;
import dev.brinebook.request.softener.SiteRequest;
import dev.brinebook.request.softener.SoftenerCase;
import dev.brinebook.softener.DesignConditions;
import dev.brinebook.softener.ExistingSoftener;
import dev.brinebook.softener.SoftenerSettings;
import dev.brinebook.text.Message;
import dev.brinebook.verdict.Ladder;
import dev.brinebook.verdict.Terms;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.water.WaterCautions;
import java.util.Currency;
import java.util.List;

/**
 * Whether a metered control pays. Every answer has what is known of real conversions, because the evidence is mixed: settings alone
 * achieve much of it [WCP-2016], and a programme that paid for conversions was not worth scaling up [EEG-31].
 */
public final class EstimatePayback {

    public static final Operation<RetrofitPaybackRequest, RetrofitPaybackAnswer> OPERATION = new Operation<>(
            "estimatePayback", "/v1/retrofit-payback", "Estimate the payback of a metered control",
            "Choose this to find what converting a softener from a clock to a meter saves in salt, water and money, and after how many "
                    + "years it pays back. Give the use of a year before and after, or the softener and household. In that case both "
                    + "controls are compared for the same household in the long run. It gives simple and discounted payback, net "
                    + "present value, rates of return and the cash flow by year. If nothing is saved there is no payback, and the "
                    + "answer gives the reason. For more than two options, loans or uncertain inputs choose compareAlternatives.",
            RetrofitPaybackRequest.class, RetrofitPaybackAnswer.class, EstimatePayback::answer, List.of(),
            List.of("well-family", "apartment", "holiday-cabin"));

    /** The consumption of both sides, and its explanation. */
    private record Sides(YearlyUse asFound, YearlyUse converted, YearlyUseAnswer asFoundAnswer,
            YearlyUseAnswer convertedAnswer, boolean counted, Comparison comparedBy, SavingByChange byChange,
            MeteringWorthAnswer overClock, VerdictAnswer verdict,
            SiteReadiness readiness) {
    }

    private EstimatePayback() {
    }

    private static RetrofitPaybackAnswer answer(RetrofitPaybackRequest request, Model model) {
        AnswerUnits units = HomeCountry.units(request.units(),
                request.household() == null ? null : request.household().country());
        Explanation explanation = units.explanation();
        LocalPrices pricesRequest = LocalPrices.of(request.prices(), request.household());
        Currency currency = pricesRequest.currency();
        Prices prices = pricesRequest.toDomain(ownWell(request), ownSewage(request), explanation);
        Sides sides = request.isTrial() ? tried(request, prices, currency, units, model, explanation)
                : given(request, units, explanation);
        RetrofitPayback payback = RetrofitPayback.of(
                request.retrofit().toDomain(sides.asFound(), sides.converted(), sides.readiness().cost(), explanation), prices);
        PaybackFigures figures = PaybackFigures.of(payback, prices, currency);
        explanation.caution(Caution.POWER_AND_PRESSURE, Caution.LOCAL_CODE_DECIDES, Caution.SETTINGS_BEFORE_PARTS);
        cautionOfDischarge(request, explanation);
        return new RetrofitPaybackAnswer(explanation.behindStops(sides.verdict() == null ? figures.sentence()
                : Message.sentences(List.of(sides.verdict().sentence(), sides.verdict().action()))), sides.verdict(),
                sides.comparedBy(), sides.asFoundAnswer(), sides.convertedAnswer(),
                YearlyDifference.of(sides.asFound(), sides.converted(), sides.counted(), units, model), figures,
                sides.byChange(), sides.overClock(), sides.verdict() == null ? null : sides.readiness().checks(),
                explanation.cautions(), explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    private static Sides given(RetrofitPaybackRequest request, AnswerUnits units, Explanation explanation) {
        YearlyUse asFound = request.asFound().toDomain("/asFound", explanation);
        YearlyUse converted = request.converted().toDomain("/converted", explanation);
        boolean counted = request.asFound().regenerationsPerYear() != null
                && request.converted().regenerationsPerYear() != null;
        explanation.given("/asFound", "/converted");
        explanation.because("/difference", Message.of("formula.payback.nowConvertedBothGiven"), "NIST-HB135");
        return new Sides(asFound, converted,
                YearlyUseAnswer.given(asFound, request.asFound().regenerationsPerYear() != null, units),
                YearlyUseAnswer.given(converted, request.converted().regenerationsPerYear() != null, units), counted,
                Comparison.ANNUAL_AVERAGES, null, null, null, SiteReadiness.NOT_ASKED);
    }

    private static Sides tried(RetrofitPaybackRequest request, Prices prices, Currency currency, AnswerUnits units,
            Model model, Explanation explanation) {
        SoftenerCase given = SoftenerCase.of(request, model, explanation);
        DesignConditions duty = given.duty();
        ExistingSoftener asFound = request.softener().resolved(model).found(given, explanation);
        SoftenerSettings found = asFound.setup();
        ConvertedYears years = ControlTrial.of(found, duty, request.metered(), request.meteredSaltDose(), explanation);
        Message how = Message.of("payback.expectedRegenerationsYearSalt");
        explanation.because("/asFound", how, "FELLER");
        explanation.because("/converted", how, "FELLER");
        explanation.because("/difference", Message.of("formula.payback.nowConverted"), "DAIAD");
        explanation.cautions(duty.softenedWith(found.softener().salt()).cautions());
        double most = duty.standard().hardDaysPerYear();
        if (years.asFound().totals().hardDays() > most || years.converted().totals().hardDays() > most) {
            explanation.caution(Caution.RUNS_HARD);
        }
        SiteReadiness readiness = SiteReadiness.of(request.site(), request.softener(), asFound, duty, explanation);
        Terms terms = RetrofitRequest.terms(request.retrofit(), readiness.cost(), prices, request, given);
        Ladder ladder = Ladder.of(asFound, duty, terms);
        MeteringWorthAnswer overClock = ladder.worth().map(worth -> MeteringWorthAnswer.of(worth, duty, currency, units))
                .orElse(null);
        VerdictAnswer verdict = VerdictAnswer.of(ladder, duty, terms.running(), currency, units, "/verdict", explanation);
        return new Sides(ConvertedYears.use(years.asFound()), ConvertedYears.use(years.converted()),
                YearlyUseAnswer.tried(years.asFound(), units), YearlyUseAnswer.tried(years.converted(), units), true,
                Comparison.WHOLE_DAYS, request.meteredSaltDose() == null ? null
                        : SavingByChange.of(years, prices, currency, units), overClock, verdict, readiness);
    }

    private static boolean ownWell(RetrofitPaybackRequest request) {
        return request.water() != null && request.water().supply() == WaterAnalysis.Supply.PRIVATE_WELL;
    }

    private static boolean ownSewage(RetrofitPaybackRequest request) {
        return request.water() == null ? ownWell(request) : SiteRequest.orUnseen(request.site()).ownSewage(request.water().supply());
    }

    /** A sewer price shows where the brine goes: 0 means a septic system, more a sewer. Without a price the supply decides, if known. */
    private static void cautionOfDischarge(RetrofitPaybackRequest request, Explanation explanation) {
        PricesRequest prices = request.prices();
        if (request.site() != null && request.site().wasteWater() != null) {
            explanation.cautions(request.site().wasteWaterCautions(request.water().supply()));
        } else if (prices == null || prices.sewer() == null) {
            explanation.cautions(request.water() == null ? Caution.OF_DISCHARGE
                    : WaterCautions.ofDischarge(ownWell(request) ? WaterAnalysis.Supply.PRIVATE_WELL : WaterAnalysis.Supply.PUBLIC_SUPPLY));
        } else {
            explanation.caution(prices.sewer().price().value().signum() == 0 ? Caution.SEPTIC_SYSTEM : Caution.SEWER_SALT_LIMITS);
        }
    }
}
