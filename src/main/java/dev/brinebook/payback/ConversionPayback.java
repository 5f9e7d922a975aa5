package dev.brinebook.payback;

import dev.brinebook.guard.Figure;
import dev.brinebook.guard.NoAnswer;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * What a conversion is worth: every measure of it, because each hides something the others show.
 *
 * @param investment cost less rebate, any currency
 * @param yearlySaving first year, by what is no longer paid for; a line, or all, may be negative
 * @param simplePaybackYears undiscounted, without growth
 * @param discountedPaybackYears end-of-year discounting, shared out evenly within the last year
 * @param netPresentValue over the horizon
 * @param rateOfReturn internal, with its flag
 * @param savingsToInvestmentRatio over the horizon
 * @param adjustedRateOfReturn over the horizon, share per year
 * @param cashFlows from today to the end of the horizon
 */
public record ConversionPayback(double investment, YearlyCost yearlySaving, Figure simplePaybackYears,
        Figure discountedPaybackYears, double netPresentValue, RateOfReturn rateOfReturn,
        Figure savingsToInvestmentRatio, Figure adjustedRateOfReturn, List<Double> cashFlows) {

    public ConversionPayback {
        cashFlows = List.copyOf(cashFlows);
    }

    /** All measures of one conversion. Where nothing is invested, only the saving and the net present value exist. */
    public static ConversionPayback of(Conversion conversion, Prices prices) {
        YearlyCost saving = YearlyCost.of(conversion.asFound(), prices)
                .minus(YearlyCost.of(conversion.converted(), prices));
        double investment = conversion.investment();
        double discount = prices.discountSharePerYear();
        int years = conversion.horizonYears();
        double[] savings = CashFlows.growing(saving.total(), prices.growthSharePerYear(), years);
        double[] flows = CashFlows.of(investment, savings);
        Figure ratio = SavingsToInvestment.ratio(investment, CashFlows.presentValueOfSavings(discount, savings));
        return new ConversionPayback(investment, saving, Payback.simpleYears(investment, saving.total(), years),
                Payback.discountedYears(investment, discount, savings), CashFlows.netPresentValue(discount, flows),
                rateOfReturn(investment, flows), ratio,
                SavingsToInvestment.adjustedRateOfReturn(ratio, discount, years), DoubleStream.of(flows).boxed().toList());
    }

    private static RateOfReturn rateOfReturn(double investment, double[] flows) {
        return investment == 0 ? new RateOfReturn(Figure.none(NoAnswer.NO_INVESTMENT), 0) : RateOfReturn.of(flows);
    }
}
