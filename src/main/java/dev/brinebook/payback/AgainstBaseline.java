package dev.brinebook.payback;

import dev.brinebook.guard.Figure;
import dev.brinebook.guard.NoAnswer;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * What an alternative is worth against another, by every measure.
 *
 * @param investment what it costs more today, negative where it costs less
 * @param firstYearSaving what it saves in the first year's running costs
 * @param netPresentValue life-cycle cost of the baseline less its own
 * @param simplePaybackYears investment over the first year's saving
 * @param discountedPaybackYears until the discounted savings make up all that is invested
 * @param rateOfReturn internal, with its flag
 * @param savingsToInvestmentRatio savings in running costs over what is invested, both in today's worth
 * @param adjustedRateOfReturn over the horizon, share per year
 * @param cashFlows payments of the baseline less its own, today first
 */
public record AgainstBaseline(double investment, YearlyCost firstYearSaving, double netPresentValue,
        Figure simplePaybackYears, Figure discountedPaybackYears, RateOfReturn rateOfReturn,
        Figure savingsToInvestmentRatio, Figure adjustedRateOfReturn, List<Double> cashFlows) {

    public AgainstBaseline {
        cashFlows = List.copyOf(cashFlows);
    }

    /**
     * The measures of {@code alternative} over a common horizon. Where it costs no more to have than the baseline, nothing is
     * invested and only saving and net present value exist.
     *
     * <pre>SIR = PV(running costs saved) / PV(outlay of the alternative less that of the baseline)</pre>
     *
     * <p>Source: [NIST-HB135] and [CFR-436] sections 436.21 to 436.23, with replacements and residual values in the
     * denominator.
     */
    public static AgainstBaseline of(Alternative alternative, Alternative baseline, int horizonYears, Prices prices) {
        double growth = prices.growthSharePerYear();
        double discount = prices.discountSharePerYear();
        double[] outlay = minus(alternative.outlay().payments(horizonYears, growth),
                baseline.outlay().payments(horizonYears, growth));
        YearlyCost saving = baseline.yearly().minus(alternative.yearly());
        double[] savings = CashFlows.growing(saving.total(), growth, horizonYears);
        double[] flows = new double[horizonYears + 1];
        flows[0] = -outlay[0];
        for (int year = 1; year <= horizonYears; year++) {
            flows[year] = savings[year - 1] - outlay[year];
        }
        double invested = CashFlows.netPresentValue(discount, outlay);
        boolean invests = invested > 0;
        Figure none = Figure.none(NoAnswer.NO_INVESTMENT);
        Figure ratio = invests ? SavingsToInvestment.ratio(invested, CashFlows.presentValueOfSavings(discount, savings)) : none;
        return new AgainstBaseline(outlay[0], saving, CashFlows.netPresentValue(discount, flows),
                outlay[0] > 0 ? Payback.simpleYears(outlay[0], saving.total()) : none,
                invests ? Payback.discountedYears(invested, discount, savings) : none,
                invests ? RateOfReturn.of(flows) : new RateOfReturn(none, CashFlows.signChanges(flows)), ratio,
                SavingsToInvestment.adjustedRateOfReturn(ratio, discount, horizonYears),
                DoubleStream.of(flows).boxed().toList());
    }

    private static double[] minus(double[] one, double[] other) {
        double[] difference = new double[one.length];
        for (int year = 0; year < one.length; year++) {
            difference[year] = one[year] - other[year];
        }
        return difference;
    }
}
