// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.answer.payback.CashFlowYear;
import dev.brinebook.answer.payback.MoneyLines;
import dev.brinebook.api.Basis;
import dev.brinebook.api.OptionalResultAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.payback.AgainstBaseline;
import dev.brinebook.payback.CashFlows;
import dev.brinebook.payback.Prices;
import java.util.Currency;
import java.util.List;

@SchemaDescription("Benefit of an option compared with the baseline, on the simulated days, with inputs as given.")
public record WorthAnswer(
        @Basis(formula = "formula.payback.firstCostRebateFirst", source = "CFR-436")
        @Property("Extra investment: its price less rebate, however it is paid, less that of the baseline. Negative if it costs less.")
        Money investment,
        @Basis(formula = "formula.payback.billsBaselineBillsOption", source = "NIST-HB135")
        @Property("Saving in the bills of the first year.") MoneyLines firstYearSaving,
        @Basis(formula = "formula.payback.lifeCycleCostBaseline", source = "NIST-HB135")
        @Property("Net present value: life-cycle cost of the baseline less its own.") Money netPresentValue,
        @Basis(formula = "formula.payback.investmentSavingFirstYear", source = "CFR-436")
        @Property("Simple payback: investment divided by the saving in the first year, if "
                + "within the horizon.") OptionalResultAnswer simplePaybackYears,
        @Basis(formula = "formula.payback.yearsUntilDiscountedFlows", source = "NIST-HB135")
        @Property("Discounted payback in years, with replacements and residual values in their years.")
        OptionalResultAnswer discountedPaybackYears,
        @Basis(formula = "formula.payback.discountRateNetPresent", source = "NIST-HB135")
        @Property("Internal rate of return, in percent a year; of several, the one nearest zero.")
        OptionalResultAnswer internalRateOfReturnPercent,
        @Property(value = "Whether the cash flows may have several internal rates of return. If so, use the net "
                + "present value.", example = "false")
        Boolean severalRates,
        @Basis(formula = "formula.payback.billsSavedInvestmentReplacements", source = "CFR-436")
        @Property("Savings-to-investment ratio: savings in bills divided by the investment, both in today's money.")
        OptionalResultAnswer savingsToInvestmentRatio,
        @Basis(formula = "formula.payback.of1DiscountRateRatio", source = "CFR-436")
        @Property("Adjusted internal rate of return, in percent a year.") OptionalResultAnswer adjustedRateOfReturnPercent,
        @Basis(formula = "formula.payback.eachFlow1Discount", source = "NIST-HB135")
        @Property(value = "Cash flow saved in each year compared with the baseline, from today to the end of the horizon.",
                maxItems = CashFlows.MAX_YEARS + 1)
        List<CashFlowYear> cashFlows) {

    private static final double PERCENT = 100;

    static WorthAnswer of(AgainstBaseline worth, Prices prices, Currency currency) {
        return new WorthAnswer(Money.of(worth.investment(), currency), MoneyLines.of(worth.firstYearSaving(), currency),
                Money.of(worth.netPresentValue(), currency), OptionalResultAnswer.of(worth.simplePaybackYears(), 1),
                OptionalResultAnswer.of(worth.discountedPaybackYears(), 1), OptionalResultAnswer.of(worth.rateOfReturn().rate(), PERCENT),
                worth.rateOfReturn().signChanges() > 1, OptionalResultAnswer.of(worth.savingsToInvestmentRatio(), 1),
                OptionalResultAnswer.of(worth.adjustedRateOfReturn(), PERCENT),
                CashFlowYear.of(worth.cashFlows(), prices.discountSharePerYear(), currency));
    }
}
