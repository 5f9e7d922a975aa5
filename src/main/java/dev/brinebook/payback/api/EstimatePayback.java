package dev.brinebook.payback.api;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.ModelVersion;
import dev.brinebook.api.Operation;
import dev.brinebook.caution.Caution;
import dev.brinebook.payback.ConversionPayback;
import dev.brinebook.payback.ConvertedYears;
import dev.brinebook.payback.Prices;
import dev.brinebook.payback.YearlyUse;
import dev.brinebook.payback.api.ConversionPaybackAnswer.Comparison;
import dev.brinebook.prices.api.PricesRequest;
import dev.brinebook.quantity.api.AnswerUnits;
import dev.brinebook.softener.DoseChoice;
import dev.brinebook.softener.Duty;
import dev.brinebook.softener.RunningCost;
import dev.brinebook.softener.Setup;
import dev.brinebook.softener.api.MeteringWorthAnswer;
import dev.brinebook.softener.api.SoftenerCase;
import dev.brinebook.water.WaterAnalysis;
import dev.brinebook.wording.Message;
import java.util.Currency;
import java.util.List;

/**
 * Whether a metered control pays. What is known of real conversions stands in every answer, because it is mixed: settings
 * alone do much of it [WCP-2016], and a programme that paid for conversions was not worth scaling up [EEG-31].
 */
public final class EstimatePayback {

    public static final Operation<ConversionPaybackRequest, ConversionPaybackAnswer> OPERATION = new Operation<>(
            "estimatePayback", "/v1/conversion-payback", "Find whether a metered control pays back",
            "Choose this to tell what converting a softener from a clock to a meter saves in salt, water and money,"
                    + " and after how many years it has paid for itself: from a year's use before and after, or from"
                    + " the softener and household, both controls then being held to the same household in the long run. Gives simple and"
                    + " discounted payback, net present value, rates of return and the cash flow by year; where"
                    + " nothing is saved there is no payback, and the reason instead. To hold more than these two"
                    + " ways, loans or what is not known exactly against each other choose compareAlternatives.",
            ConversionPaybackRequest.class, ConversionPaybackAnswer.class, EstimatePayback::answer, List.of(),
            List.of("well-family", "apartment", "holiday-cabin"));

    /** What the two sides use, and how that is told. */
    private record Sides(YearlyUse asFound, YearlyUse converted, YearlyUseAnswer asFoundAnswer,
            YearlyUseAnswer convertedAnswer, boolean counted, Comparison comparedBy, SavingByChange byChange,
            MeteringWorthAnswer overClock) {
    }

    private EstimatePayback() {
    }

    private static ConversionPaybackAnswer answer(ConversionPaybackRequest request) {
        AnswerUnits units = AnswerUnits.orDefault(request.units());
        Explanation explanation = units.explanation();
        PricesRequest pricesRequest = PricesRequest.orNone(request.prices());
        Currency currency = pricesRequest.currency();
        Prices prices = pricesRequest.toDomain(ownWell(request), false, explanation);
        Sides sides = request.isTrial() ? tried(request, prices, currency, units, explanation)
                : given(request, units, explanation);
        ConversionPayback payback = ConversionPayback.of(
                request.conversion().toDomain(sides.asFound(), sides.converted(), explanation), prices);
        PaybackFigures figures = PaybackFigures.of(payback, prices, currency, "/payback", explanation);
        tellEvidence(explanation);
        explanation.caution(Caution.POWER_AND_PRESSURE, Caution.LOCAL_CODE_DECIDES, Caution.SETTINGS_BEFORE_PARTS);
        cautionOfDischarge(request.prices(), explanation);
        return new ConversionPaybackAnswer(explanation.behindStops(figures.sentence()), sides.comparedBy(), sides.asFoundAnswer(),
                sides.convertedAnswer(),
                YearlyDifference.of(sides.asFound(), sides.converted(), sides.counted(), units), figures,
                sides.byChange(), sides.overClock(),
                explanation.cautions(), explanation.assumptions(), explanation.basis(), ModelVersion.CURRENT);
    }

    private static Sides given(ConversionPaybackRequest request, AnswerUnits units, Explanation explanation) {
        YearlyUse asFound = request.asFound().toDomain("asFound", explanation);
        YearlyUse converted = request.converted().toDomain("converted", explanation);
        boolean counted = request.asFound().regenerationsPerYear() != null
                && request.converted().regenerationsPerYear() != null;
        explanation.given("/asFound", "/converted");
        explanation.because("/difference", Message.of("as found less converted, both as given. Averages of a year leave out whole days,"
                + " day overrides and days above the mean, with which a meter regenerates more often"), "NIST-HB135");
        return new Sides(asFound, converted,
                YearlyUseAnswer.given(asFound, request.asFound().regenerationsPerYear() != null, units),
                YearlyUseAnswer.given(converted, request.converted().regenerationsPerYear() != null, units), counted,
                Comparison.ANNUAL_AVERAGES, null, null);
    }

    private static Sides tried(ConversionPaybackRequest request, Prices prices, Currency currency, AnswerUnits units,
            Explanation explanation) {
        SoftenerCase given = SoftenerCase.of(request, explanation);
        Duty duty = given.duty();
        Setup found = request.softener().found(given, explanation).setup();
        ConvertedYears years = ControlTrial.of(found, duty, request.metered(), request.meteredSaltDose(), explanation);
        Message how = Message.of("expected regenerations of a year times the salt and water of one");
        explanation.because("/asFound", how, "FELLER");
        explanation.because("/converted", how, "FELLER");
        explanation.because("/difference", Message.of("as found less converted"), "DAIAD");
        explanation.cautions(duty.softenedWith(found.softener().salt()).cautions());
        double most = duty.standard().hardDaysPerYear();
        if (years.asFound().totals().hardDays() > most || years.converted().totals().hardDays() > most) {
            explanation.caution(Caution.RUNS_HARD);
        }
        RunningCost cost = new RunningCost(prices.saltPerKilogram(), prices.waterPerCubicMetre() + prices.sewerPerCubicMetre());
        MeteringWorthAnswer overClock = MeteringWorthAnswer.of(DoseChoice.cheapest(found.softener(), duty, cost).best(), duty, cost,
                currency, units, "/overClockSetRight", explanation);
        return new Sides(ConvertedYears.use(years.asFound()), ConvertedYears.use(years.converted()),
                YearlyUseAnswer.tried(years.asFound(), units), YearlyUseAnswer.tried(years.converted(), units), true,
                Comparison.WHOLE_DAYS, request.meteredSaltDose() == null ? null
                        : SavingByChange.of(years, prices, currency, units, "/savingByChange", explanation), overClock);
    }

    private static void tellEvidence(Explanation explanation) {
        explanation.because("/difference", Message.of("evidence from the field: in one district tuning the settings alone cut chloride by"
                + " 27 % on average and replacing the softener by 47 %; metering saves only where the clock regenerates too"
                + " often"), "WCP-2016");
        explanation.because("/payback", Message.of("evidence from the field: after two years a programme of rebates was judged not worth"
                + " scaling up"), "EEG-31");
    }

    /** A sewer price tells where the brine goes: 0 a septic system, more a sewer. Without one both may be. */
    private static boolean ownWell(ConversionPaybackRequest request) {
        return request.water() != null && request.water().supply() == WaterAnalysis.Supply.PRIVATE_WELL;
    }

    private static void cautionOfDischarge(PricesRequest prices, Explanation explanation) {
        boolean known = prices != null && prices.sewer() != null;
        boolean septic = known && prices.sewer().price().value().signum() == 0;
        if (septic || !known) {
            explanation.caution(Caution.SEPTIC_SYSTEM);
        }
        if (!septic) {
            explanation.caution(Caution.SEWER_SALT_LIMITS);
        }
    }
}
