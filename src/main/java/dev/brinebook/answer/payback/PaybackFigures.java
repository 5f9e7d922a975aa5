// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.answer.payback;

import dev.brinebook.api.Basis;
import dev.brinebook.api.From;
import dev.brinebook.api.OptionalResultAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.Text;
import dev.brinebook.api.WireNames;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.payback.CashFlows;
import dev.brinebook.payback.Prices;
import dev.brinebook.payback.RetrofitPayback;
import dev.brinebook.text.Message;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;

@SchemaDescription("Financial results of a retrofit, by several measures. Each shows something that the others do not.")
public record PaybackFigures(
        @Basis(formula = "formula.payback.saltWaterVisitsSaved", source = "NIST-HB135")
        @Property("Saving in the first year, at today's prices.") MoneyLines firstYearSaving,
        @Basis(formula = "formula.common.costPricesConditionsMet", source = "CFR-436")
        @Property("Investment: cost plus the prices of unmet conditions, less rebate.") Money investment,
        @Basis(formula = "formula.payback.investmentSavingFirstYear", source = "CFR-436")
        @From({"investment", "firstYearSaving/total"})
        @Property("Simple payback in years: investment divided by the saving in the first year, if within the horizon.")
        OptionalResultAnswer simplePaybackYears,
        @Basis(formula = "formula.payback.yearsUntilSavingsAdd", source = "NIST-HB135")
        @From({"investment", "cashFlows/*/discounted"})
        @Property("Discounted payback in years, interpolated within the last year.")
        OptionalResultAnswer discountedPaybackYears,
        @Basis(formula = "formula.payback.sameSavingsOverHorizon", source = "NIST-HB135")
        @From("cashFlows/*/discounted")
        @Property("Net present value: all discounted savings over the horizon, less the investment.") Money netPresentValue,
        @Basis(formula = "formula.payback.discountRateNetPresent", source = "NIST-HB135")
        @From("cashFlows/*/cashFlow")
        @Property("Internal rate of return, in percent a year. If there are several, the one nearest zero.")
        OptionalResultAnswer internalRateOfReturnPercent,
        @Basis(formula = "formula.payback.changesSignCashFlows", source = "NIST-HB135")
        @From("cashFlows/*/cashFlow")
        @Property(value = "Number of sign changes in the cash flows.", min = 0, example = "1")
        Integer signChanges,
        @Property(value = "Whether the cash flows may have several internal rates of return. "
                + "If so, use the net present value.", example = "false") Boolean severalRates,
        @Basis(formula = "formula.payback.discountedSavingsInvestment", source = "CFR-436")
        @From({"netPresentValue", "investment"})
        @Property("Savings-to-investment ratio, discounted. Above 1 the conversion pays.") OptionalResultAnswer savingsToInvestmentRatio,
        @Basis(formula = "formula.payback.of1DiscountRateRatio", source = "CFR-436")
        @From("savingsToInvestmentRatio/value")
        @Property("Modified internal rate of return, in percent a year: savings are reinvested at the discount rate.")
        OptionalResultAnswer adjustedRateOfReturnPercent,
        @Basis(formula = "formula.payback.eachFlow1Discount", source = "NIST-HB135")
        @Property(value = "Cash flows from today to the end of the horizon.", maxItems = CashFlows.MAX_YEARS + 1)
        List<CashFlowYear> cashFlows) {

    private static final double PERCENT = 100;
    private static final BigDecimal SHORTEST_YEARS = new BigDecimal("0.1");

    /** The figures in {@code currency}. */
    public static PaybackFigures of(RetrofitPayback payback, Prices prices, Currency currency) {
        int signChanges = payback.rateOfReturn().signChanges();
        return new PaybackFigures(MoneyLines.of(payback.yearlySaving(), currency),
                Money.of(payback.investment(), currency), OptionalResultAnswer.of(payback.simplePaybackYears(), 1),
                OptionalResultAnswer.of(payback.discountedPaybackYears(), 1), Money.of(payback.netPresentValue(), currency),
                OptionalResultAnswer.of(payback.rateOfReturn().rate(), PERCENT), signChanges, signChanges > 1,
                OptionalResultAnswer.of(payback.savingsToInvestmentRatio(), 1),
                OptionalResultAnswer.of(payback.adjustedRateOfReturn(), PERCENT),
                CashFlowYear.of(payback.cashFlows(), prices.discountSharePerYear(), currency));
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
