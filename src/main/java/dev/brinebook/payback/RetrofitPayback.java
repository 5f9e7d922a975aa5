// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * The value of a retrofit, by every measure, because each hides something that the others show.
 *
 * @param investment cost less rebate, any currency
 * @param yearlySaving saving of the first year, line by line; a line, or all, may be negative
 * @param simplePaybackYears undiscounted, without growth
 * @param discountedPaybackYears end-of-year discounting, spread evenly over the last year
 * @param netPresentValue over the horizon
 * @param rateOfReturn internal, with its flag
 * @param savingsToInvestmentRatio over the horizon
 * @param adjustedRateOfReturn over the horizon, share per year
 * @param cashFlows from today to the end of the horizon
 */
public record RetrofitPayback(double investment, YearlyCost yearlySaving, OptionalResult simplePaybackYears,
        OptionalResult discountedPaybackYears, double netPresentValue, RateOfReturn rateOfReturn,
        OptionalResult savingsToInvestmentRatio, OptionalResult adjustedRateOfReturn, List<Double> cashFlows) {

    public RetrofitPayback {
        cashFlows = List.copyOf(cashFlows);
    }

    /** All measures of one conversion. Where nothing is invested, only the saving and the net present value exist. */
    public static RetrofitPayback of(Retrofit retrofit, Prices prices) {
        YearlyCost saving = YearlyCost.of(retrofit.asFound(), prices)
                .minus(YearlyCost.of(retrofit.converted(), prices));
        double investment = retrofit.investment();
        double discount = prices.discountSharePerYear();
        int years = retrofit.horizonYears();
        double[] savings = CashFlows.growing(saving.total(), prices.growthSharePerYear(), years);
        double[] flows = CashFlows.of(investment, savings);
        OptionalResult ratio = SavingsToInvestment.ratio(investment, CashFlows.presentValueOfSavings(discount, savings));
        return new RetrofitPayback(investment, saving, Payback.simpleYears(investment, saving.total(), years),
                Payback.discountedYears(investment, discount, savings), CashFlows.netPresentValue(discount, flows),
                rateOfReturn(investment, flows), ratio,
                SavingsToInvestment.adjustedRateOfReturn(ratio, discount, years), DoubleStream.of(flows).boxed().toList());
    }

    private static RateOfReturn rateOfReturn(double investment, double[] flows) {
        return investment == 0 ? new RateOfReturn(OptionalResult.none(NoResultReason.NO_INVESTMENT), 0) : RateOfReturn.of(flows);
    }
}
