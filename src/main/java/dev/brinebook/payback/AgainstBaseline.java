// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * Comparison of an alternative with the baseline, by every measure.
 *
 * @param investment extra cost of its first purchase, less rebate and however paid; negative where it costs less
 * @param firstYearSaving saving in the first year's running costs
 * @param netPresentValue life-cycle cost of the baseline less its own
 * @param simplePaybackYears investment over the first year's saving
 * @param discountedPaybackYears until discounted savings, with replacements and residual values in the years in which they
 *     fall, first equal the first purchase, a loan included at its present value
 * @param rateOfReturn internal, with its flag; of one's own money where a part is borrowed
 * @param savingsToInvestmentRatio savings in running costs over all investment, both as present values
 * @param adjustedRateOfReturn over the horizon, share per year
 * @param cashFlows payments of the baseline less its own, today first
 */
public record AgainstBaseline(double investment, YearlyCost firstYearSaving, double netPresentValue,
        OptionalResult simplePaybackYears, OptionalResult discountedPaybackYears, RateOfReturn rateOfReturn,
        OptionalResult savingsToInvestmentRatio, OptionalResult adjustedRateOfReturn, List<Double> cashFlows) {

    public AgainstBaseline {
        cashFlows = List.copyOf(cashFlows);
    }

    /**
     * The measures of {@code alternative} over a common horizon.
     *
     * <pre>F(t) = paid(baseline, t) − paid(alternative, t),   NPV = Σ F(t) / (1 + d)^t
     * SIR = PV(running costs saved) / PV(outlay of the alternative less that of the baseline)</pre>
     *
     * <p>F cash flow of year t, today 0, in the currency of the prices; d discount rate, share per year; PV present value.
     * Validity: a measure of the investment has no number where there is no extra investment: the paybacks where the first
     * purchase costs no more, the ratios where purchase, replacements and residual values together cost no more, the rate of
     * return where money comes in before any is paid.
     * Source: [NIST-HB135] and [CFR-436] sections 436.20 to 436.23, with replacements and residual values in the
     * denominator.
     * Deviation: none.
     */
    public static AgainstBaseline of(Alternative alternative, Alternative baseline, int horizonYears, Prices prices) {
        double growth = prices.growthSharePerYear();
        double discount = prices.discountSharePerYear();
        double[] purchase = minus(alternative.outlay().purchase(horizonYears), baseline.outlay().purchase(horizonYears));
        double[] later = minus(alternative.outlay().later(horizonYears, growth),
                baseline.outlay().later(horizonYears, growth));
        YearlyCost saving = baseline.yearly().minus(alternative.yearly());
        double[] savings = CashFlows.growing(saving.total(), growth, horizonYears);
        double[] flows = minus(minus(CashFlows.of(0, savings), purchase), later);
        double scale = alternative.outlay().firstCost() + baseline.outlay().firstCost();
        double investment = alternative.outlay().investment() - baseline.outlay().investment();
        double purchaseToday = CashFlows.netPresentValue(discount, purchase);
        double allToday = purchaseToday + CashFlows.netPresentValue(discount, later);
        OptionalResult ratio = SavingsToInvestment.ratio(invested(allToday, scale),
                CashFlows.presentValueOfSavings(discount, savings));
        return new AgainstBaseline(investment, saving, CashFlows.netPresentValue(discount, flows),
                Payback.simpleYears(invested(investment, scale), saving.total(), horizonYears),
                Payback.discountedYears(invested(purchaseToday, scale), discount, savings, received(later)),
                rateOfReturn(flows), ratio, SavingsToInvestment.adjustedRateOfReturn(ratio, discount, horizonYears),
                DoubleStream.of(flows).boxed().toList());
    }

    /** Extra cost; 0 where there is none beyond the rounding of equal outlays. */
    private static double invested(double costsMore, double scale) {
        return costsMore > Guard.ROUNDING * scale ? costsMore : 0;
    }

    private static double[] received(double[] paid) {
        return Arrays.stream(paid).skip(1).map(payment -> 0 - payment).toArray();
    }

    /** Flows that bring money first are borrowing, for which a high rate is bad: it would be misread, so there is none. */
    private static RateOfReturn rateOfReturn(double[] flows) {
        boolean paysFirst = DoubleStream.of(flows).filter(flow -> flow != 0).findFirst().orElse(0) < 0;
        return paysFirst ? RateOfReturn.of(flows)
                : new RateOfReturn(OptionalResult.none(NoResultReason.NO_INVESTMENT), CashFlows.signChanges(flows));
    }

    private static double[] minus(double[] one, double[] other) {
        double[] difference = new double[one.length];
        for (int year = 0; year < one.length; year++) {
            difference[year] = one[year] - other[year];
        }
        return difference;
    }
}
