package dev.brinebook.answer.payback;

import dev.brinebook.api.About;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.FigureAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.payback.ConversionPayback;
import dev.brinebook.payback.Prices;
import dev.brinebook.wording.Message;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Currency;
import java.util.List;

@About("What a conversion is worth, by every measure: each hides something that the others show.")
public record PaybackFigures(
        @Property("Saving of the first year, at today's prices.") MoneyLines firstYearSaving,
        @Property("What is left to pay: cost and the prices of conditions that are not met, less rebate.") Money investment,
        @Property("Years until undiscounted savings of the first year's size make up the investment, where that is within"
                + " the horizon.")
        FigureAnswer simplePaybackYears,
        @Property("Years until the discounted savings make up the investment, interpolated within the last year.")
        FigureAnswer discountedPaybackYears,
        @Property("All discounted savings of the horizon less the investment.") Money netPresentValue,
        @Property("Discount rate at which the net present value is zero, in percent a year; of several, the one nearest"
                + " zero.") FigureAnswer internalRateOfReturnPercent,
        @Property(value = "How often the cash flows change from paying to receiving or back.", min = 0, example = "1")
        Integer signChanges,
        @Property(value = "Whether the cash flows may have several internal rates of return; go by the net present value"
                + " then.", example = "false") Boolean severalRates,
        @Property("Discounted savings per unit invested: worth doing above 1.") FigureAnswer savingsToInvestmentRatio,
        @Property("Yearly return over the horizon when savings are put by at the discount rate, in percent a year.")
        FigureAnswer adjustedRateOfReturnPercent,
        @Property("From today to the end of the horizon.") List<CashFlowYear> cashFlows) {

    private static final double PERCENT = 100;
    private static final MathContext SPOKEN = new MathContext(2, RoundingMode.HALF_EVEN);
    private static final BigDecimal SHORTEST_TOLD_YEARS = new BigDecimal("0.1");

    /** The figures in {@code currency}, with their basis told below {@code pointer}. */
    public static PaybackFigures of(ConversionPayback payback, Prices prices, Currency currency, String pointer,
            Explanation explanation) {
        explain(pointer, explanation);
        int signChanges = payback.rateOfReturn().signChanges();
        return new PaybackFigures(MoneyLines.of(payback.yearlySaving(), currency),
                Money.of(payback.investment(), currency), FigureAnswer.of(payback.simplePaybackYears(), 1),
                FigureAnswer.of(payback.discountedPaybackYears(), 1), Money.of(payback.netPresentValue(), currency),
                FigureAnswer.of(payback.rateOfReturn().rate(), PERCENT), signChanges, signChanges > 1,
                FigureAnswer.of(payback.savingsToInvestmentRatio(), 1),
                FigureAnswer.of(payback.adjustedRateOfReturn(), PERCENT),
                CashFlowYear.of(payback.cashFlows(), prices.discountSharePerYear(), currency));
    }

    private static void explain(String pointer, Explanation explanation) {
        explanation.because(pointer + "/firstYearSaving", Message.of("salt, water and visits no longer used, times their prices of"
                + " today; all regeneration water counts as bought and as sent to the sewer"), "NIST-HB135");
        explanation.because(pointer + "/investment", Message.of("cost and the prices of conditions that are not met,"
                + " less rebate"), "CFR-436");
        explanation.because(pointer + "/discountedPaybackYears", Message.of("years until savings that grow with prices and are"
                + " discounted at the end of each year add up to the investment; the last year is shared out evenly"),
                "NIST-HB135");
        explanation.because(pointer + "/netPresentValue", Message.of("the same savings over the horizon, less the investment"),
                "NIST-HB135");
        explanation.because(pointer + "/signChanges", Message.of("turns of the cash flows from negative to positive or back; with more"
                + " than one there may be several rates of return"), "NIST-HB135");
        explanation.because(pointer + "/savingsToInvestmentRatio", Message.of("discounted savings over the investment"), "CFR-436");
        explainReturns(pointer, explanation);
    }

    /** What these figures are, whatever the flows are that they come of. */
    public static void explainReturns(String pointer, Explanation explanation) {
        explanation.because(pointer + "/simplePaybackYears", Message.of("investment over the first year's saving, without growth or"
                + " discounting; given up to the horizon, as every other measure"), "CFR-436");
        explanation.because(pointer + "/internalRateOfReturnPercent", Message.of("the discount rate at which the net present value is"
                + " zero"), "NIST-HB135");
        explanation.because(pointer + "/adjustedRateOfReturnPercent", Message.of("(1 + discount rate) times the ratio to the power of"
                + " one over the horizon, less 1"), "CFR-436");
        explanation.because(pointer + "/cashFlows", Message.of("each flow over (1 + discount rate) to the power of its year, and their"
                + " running sum"), "NIST-HB135");
    }

    /** The result as a sentence that a person can quote. */
    public Message sentence() {
        Money saved = firstYearSaving.total();
        Message year = saved.value().signum() < 0 ? Message.of("Converting costs {0} more in the first year",
                new Money(saved.value().negate(), saved.unit()).inWords())
                : saved.value().signum() == 0 && simplePaybackYears.value() == null
                        ? Message.of("Converting saves nothing in the first year")
                        : Message.of("Converting saves {0} in the first year", saved.inWords());
        BigDecimal years = simplePaybackYears.value();
        if (years == null) {
            return Message.of("{0}: {1}.", year, simplePaybackYears.why());
        }
        return years.compareTo(SHORTEST_TOLD_YEARS) < 0
                ? Message.of("{0} and pays back in less than {1} years.", year, SHORTEST_TOLD_YEARS)
                : Message.of("{0} and pays back in {1}.", year, Message.counted("{0} year", "{0} years", years.round(SPOKEN)));
    }
}
