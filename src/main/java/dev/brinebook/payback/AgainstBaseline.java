package dev.brinebook.payback;

import dev.brinebook.guard.Figure;
import dev.brinebook.guard.Guard;
import dev.brinebook.guard.NoAnswer;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * What an alternative is worth against another, by every measure.
 *
 * @param investment what its first purchase costs more, less rebate and however paid; negative where it costs less
 * @param firstYearSaving what it saves in the first year's running costs
 * @param netPresentValue life-cycle cost of the baseline less its own
 * @param simplePaybackYears investment over the first year's saving
 * @param discountedPaybackYears until discounted savings, with replacements and what is left in the years in which they
 *     fall, first make up the first purchase, a loan counted at its worth today
 * @param rateOfReturn internal, with its flag; of one's own money where a part is borrowed
 * @param savingsToInvestmentRatio savings in running costs over all that is invested, both in today's worth
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
     * The measures of {@code alternative} over a common horizon. A measure of what is invested has no number where
     * nothing more is: the paybacks where its first purchase costs no more, the ratios where purchase, replacements and
     * what is left together cost no more, the rate of return where it brings money before it takes any.
     *
     * <pre>SIR = PV(running costs saved) / PV(outlay of the alternative less that of the baseline)</pre>
     *
     * <p>Source: [NIST-HB135] and [CFR-436] sections 436.20 to 436.23, with replacements and residual values in the
     * denominator.
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
        Figure ratio = SavingsToInvestment.ratio(invested(allToday, scale),
                CashFlows.presentValueOfSavings(discount, savings));
        return new AgainstBaseline(investment, saving, CashFlows.netPresentValue(discount, flows),
                Payback.simpleYears(invested(investment, scale), saving.total(), horizonYears),
                Payback.discountedYears(invested(purchaseToday, scale), discount, savings, received(later)),
                rateOfReturn(flows), ratio, SavingsToInvestment.adjustedRateOfReturn(ratio, discount, horizonYears),
                DoubleStream.of(flows).boxed().toList());
    }

    /** Nothing where it costs no more, or only by the rounding of outlays that cost the same. */
    private static double invested(double costsMore, double scale) {
        return costsMore > Guard.ROUNDING * scale ? costsMore : 0;
    }

    private static double[] received(double[] paid) {
        return Arrays.stream(paid).skip(1).map(payment -> 0 - payment).toArray();
    }

    /** Flows that bring money first are borrowing, of which a high rate is bad: it would be read the wrong way round. */
    private static RateOfReturn rateOfReturn(double[] flows) {
        boolean paysFirst = DoubleStream.of(flows).filter(flow -> flow != 0).findFirst().orElse(0) < 0;
        return paysFirst ? RateOfReturn.of(flows)
                : new RateOfReturn(Figure.none(NoAnswer.NO_INVESTMENT), CashFlows.signChanges(flows));
    }

    private static double[] minus(double[] one, double[] other) {
        double[] difference = new double[one.length];
        for (int year = 0; year < one.length; year++) {
            difference[year] = one[year] - other[year];
        }
        return difference;
    }
}
