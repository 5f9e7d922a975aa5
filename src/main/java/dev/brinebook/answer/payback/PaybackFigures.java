// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.payback;

import dev.brinebook.api.Explanation;
import dev.brinebook.api.OptionalResultAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.payback.Prices;
import dev.brinebook.payback.RetrofitPayback;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;

@SchemaDescription("Financial results of a conversion, by several measures. Each shows something that the others do not.")
public record PaybackFigures(
        @Property("Saving in the first year, at today's prices.") MoneyLines firstYearSaving,
        @Property("Investment: cost plus the prices of unmet conditions, less rebate.") Money investment,
        @Property("Simple payback in years: investment divided by the saving in the first year, if within the horizon.")
        OptionalResultAnswer simplePaybackYears,
        @Property("Discounted payback in years, interpolated within the last year.")
        OptionalResultAnswer discountedPaybackYears,
        @Property("Net present value: all discounted savings over the horizon, less the investment.") Money netPresentValue,
        @Property("Internal rate of return, in percent a year. If there are several, the one nearest zero.")
        OptionalResultAnswer internalRateOfReturnPercent,
        @Property(value = "Number of sign changes in the cash flows.", min = 0, example = "1")
        Integer signChanges,
        @Property(value = "Whether the cash flows may have several internal rates of return. "
                + "If so, use the net present value.", example = "false") Boolean severalRates,
        @Property("Savings-to-investment ratio, discounted. Above 1 the conversion pays.") OptionalResultAnswer savingsToInvestmentRatio,
        @Property("Modified internal rate of return, in percent a year: savings are reinvested at the discount rate.")
        OptionalResultAnswer adjustedRateOfReturnPercent,
        @Property("Cash flows from today to the end of the horizon.") List<CashFlowYear> cashFlows) {

    private static final double PERCENT = 100;
    private static final BigDecimal SHORTEST_YEARS = new BigDecimal("0.1");

    /** The figures in {@code currency}, with their basis recorded below {@code pointer}. */
    public static PaybackFigures of(RetrofitPayback payback, Prices prices, Currency currency, String pointer,
            Explanation explanation) {
        explain(pointer, explanation);
        int signChanges = payback.rateOfReturn().signChanges();
        return new PaybackFigures(MoneyLines.of(payback.yearlySaving(), currency),
                Money.of(payback.investment(), currency), OptionalResultAnswer.of(payback.simplePaybackYears(), 1),
                OptionalResultAnswer.of(payback.discountedPaybackYears(), 1), Money.of(payback.netPresentValue(), currency),
                OptionalResultAnswer.of(payback.rateOfReturn().rate(), PERCENT), signChanges, signChanges > 1,
                OptionalResultAnswer.of(payback.savingsToInvestmentRatio(), 1),
                OptionalResultAnswer.of(payback.adjustedRateOfReturn(), PERCENT),
                CashFlowYear.of(payback.cashFlows(), prices.discountSharePerYear(), currency));
    }

    private static void explain(String pointer, Explanation explanation) {
        explanation.because(pointer + "/firstYearSaving", Message.of("formula.payback.saltWaterVisitsSaved"), "NIST-HB135");
        explanation.because(pointer + "/investment", Message.of("formula.common.costPricesConditionsMet"), "CFR-436");
        explanation.because(pointer + "/discountedPaybackYears", Message.of("formula.payback.yearsUntilSavingsAdd"),
                "NIST-HB135");
        explanation.because(pointer + "/netPresentValue", Message.of("formula.payback.sameSavingsOverHorizon"),
                "NIST-HB135");
        explanation.because(pointer + "/signChanges", Message.of("formula.payback.changesSignCashFlows"), "NIST-HB135");
        explanation.because(pointer + "/savingsToInvestmentRatio", Message.of("formula.payback.discountedSavingsInvestment"), "CFR-436");
        explainReturns(pointer, explanation);
    }

    /** Basis of these figures, for any origin of the flows. */
    public static void explainReturns(String pointer, Explanation explanation) {
        explanation.because(pointer + "/simplePaybackYears", Message.of("formula.payback.investmentSavingFirstYear"), "CFR-436");
        explanation.because(pointer + "/internalRateOfReturnPercent", Message.of("formula.payback.discountRateNetPresent"), "NIST-HB135");
        explanation.because(pointer + "/adjustedRateOfReturnPercent", Message.of("formula.payback.of1DiscountRateRatio"), "CFR-436");
        explanation.because(pointer + "/cashFlows", Message.of("formula.payback.eachFlow1Discount"), "NIST-HB135");
    }

    /** The result as a sentence that a person can quote. */
    public Message sentence() {
        double saved = firstYearSaving.total().value().doubleValue();
        Currency currency = firstYearSaving.total().currency();
        Message amount = Text.rounded(Math.abs(saved), currency);
        if (saved < 0) {
            return Message.of("payback.convertingCostsMoreFirst", amount);
        }
        BigDecimal years = simplePaybackYears.value();
        if (years == null) {
            return saved == 0 ? Message.of("payback.convertingSavesNothingFirst") : Message.of("payback.convertingSavesFirstYear", amount,
                    WireNames.of(simplePaybackYears.reason()), cashFlows.size() - 1);
        }
        return years.compareTo(SHORTEST_YEARS) < 0 ? Message.of("payback.convertingSavesFirstYearPays", amount, SHORTEST_YEARS)
                : Message.of("payback.convertingSavesFirstYearPaysBack", amount, Text.years(years.doubleValue()));
    }
}
