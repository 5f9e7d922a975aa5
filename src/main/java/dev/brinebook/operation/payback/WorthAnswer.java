package dev.brinebook.operation.payback;

import dev.brinebook.answer.payback.CashFlowYear;
import dev.brinebook.answer.payback.MoneyLines;
import dev.brinebook.api.About;
import dev.brinebook.api.FigureAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.quantity.Money;
import dev.brinebook.payback.AgainstBaseline;
import dev.brinebook.payback.Prices;
import java.util.Currency;
import java.util.List;

@About("What a way is worth against the baseline, on the days tried, as told.")
public record WorthAnswer(
        @Property("What its purchase costs more, less rebate and however it is paid; negative where it costs less.")
        Money investment,
        @Property("What it saves in the first year's bills.") MoneyLines firstYearSaving,
        @Property("Life-cycle cost of the baseline less its own.") Money netPresentValue,
        @Property("Investment over the first year's saving, where that is within the horizon.") FigureAnswer simplePaybackYears,
        @Property("Years until the discounted savings, with replacements and what is left in their years, make up the purchase.")
        FigureAnswer discountedPaybackYears,
        @Property("Internal rate of return, in percent a year; of several, the one nearest zero.")
        FigureAnswer internalRateOfReturnPercent,
        @Property(value = "Whether the cash flows may have several; go by the net present value then.", example = "false")
        Boolean severalRates,
        @Property("Savings in bills over what is invested, both in today's worth.") FigureAnswer savingsToInvestmentRatio,
        @Property("Adjusted internal rate of return, in percent a year.") FigureAnswer adjustedRateOfReturnPercent,
        @Property("What it costs less than the baseline in each year, from today to the end of the horizon.")
        List<CashFlowYear> cashFlows) {

    private static final double PERCENT = 100;

    static WorthAnswer of(AgainstBaseline worth, Prices prices, Currency currency) {
        return new WorthAnswer(Money.of(worth.investment(), currency), MoneyLines.of(worth.firstYearSaving(), currency),
                Money.of(worth.netPresentValue(), currency), FigureAnswer.of(worth.simplePaybackYears(), 1),
                FigureAnswer.of(worth.discountedPaybackYears(), 1), FigureAnswer.of(worth.rateOfReturn().rate(), PERCENT),
                worth.rateOfReturn().signChanges() > 1, FigureAnswer.of(worth.savingsToInvestmentRatio(), 1),
                FigureAnswer.of(worth.adjustedRateOfReturn(), PERCENT),
                CashFlowYear.of(worth.cashFlows(), prices.discountSharePerYear(), currency));
    }
}
