package dev.brinebook.payback;

import dev.brinebook.guard.Guard;

/**
 * Yearly cash flows and what they are worth today. The flow at index t falls at the <em>end</em> of year t; index 0 is
 * today. All flows are in one currency, as plain doubles: money is rounded to the cent at the edge, never here.
 *
 * <p>Flows that some spreadsheets discount from the end of the first year are the same flows with a 0 put in front.
 */
public final class CashFlows {

    /** Below this a discount factor over the longest horizon means nothing any more. */
    public static final double MIN_RATE_SHARE_PER_YEAR = -0.9999;
    public static final double MAX_RATE_SHARE_PER_YEAR = 10_000;

    /** The longest row of savings looked at. */
    public static final int MAX_YEARS = 40;

    private CashFlows() {
    }

    /**
     * What the flows are worth today, all added up.
     * <pre>NPV = sum over t from 0 of F(t) / (1 + d)^t</pre>
     * F(t) flow at the end of year t, any currency; d discount rate, share per year.
     * <p>Valid for d from {@value #MIN_RATE_SHARE_PER_YEAR} to {@value #MAX_RATE_SHARE_PER_YEAR} and finite flows.
     * <p>Source: [NIST-HB135] present value of future amounts
     * <p>Deviation: summed from the last flow backwards, which needs no power and loses fewer digits.
     */
    public static double netPresentValue(double rateSharePerYear, double... flows) {
        double factor = 1 / (1 + Guard.within(rateSharePerYear, MIN_RATE_SHARE_PER_YEAR, MAX_RATE_SHARE_PER_YEAR,
                "rateSharePerYear"));
        double sum = 0;
        for (int year = flows.length - 1; year >= 0; year--) {
            sum = sum * factor + Guard.finite(flows[year], "flow of year " + year);
        }
        return sum;
    }

    /**
     * What yearly savings are worth today, the first falling at the end of year 1.
     * <pre>PV = sum over t from 1 of S(t) / (1 + d)^t</pre>
     * S(t) saving of year t, any currency, at index t - 1; d discount rate, share per year.
     * <p>Valid as {@link #netPresentValue}.
     * <p>Source: [NIST-HB135] present value of future amounts, end-of-year discounting
     */
    public static double presentValueOfSavings(double rateSharePerYear, double... savings) {
        return netPresentValue(rateSharePerYear, savings) / (1 + rateSharePerYear);
    }

    /**
     * Each flow in today's worth.
     * <pre>P(t) = F(t) / (1 + d)^t</pre>
     * P(t) present value, F(t) flow at the end of year t, any currency; d discount rate, share per year.
     * <p>Valid as {@link #netPresentValue}, which is their sum.
     * <p>Source: [NIST-HB135] present value of future amounts
     */
    public static double[] discounted(double rateSharePerYear, double... flows) {
        Guard.within(rateSharePerYear, MIN_RATE_SHARE_PER_YEAR, MAX_RATE_SHARE_PER_YEAR, "rateSharePerYear");
        double[] present = new double[flows.length];
        for (int year = 0; year < flows.length; year++) {
            present[year] = Guard.finite(flows[year], "flow of year " + year) / StrictMath.pow(1 + rateSharePerYear, year);
        }
        return present;
    }

    /**
     * Savings that grow by the same share every year.
     * <pre>S(t) = S(1) (1 + g)^(t - 1)</pre>
     * S(1) saving of the first year, any currency, at today's prices; g growth, share per year, above -1; t year, 1 to
     * {@code years}, at index t - 1.
     * <p>Source: [NIST-HB135] geometrically escalating annual amounts
     * <p>Deviation: the handbook already escalates the first year, S(1) = A(0)(1 + g). Here the first year is paid at
     * today's prices, because that is the figure the caller sees as "saved a year". On 350 invested, 90 saved, 10
     * years, growth 3 %, discount 5 %, the rival reading gives a net present value of 460.90 instead of 437.28.
     */
    public static double[] growing(double firstYearSaving, double growthSharePerYear, int years) {
        Guard.finite(firstYearSaving, "firstYearSaving");
        double factor = 1 + Guard.within(growthSharePerYear, MIN_RATE_SHARE_PER_YEAR, MAX_RATE_SHARE_PER_YEAR,
                "growthSharePerYear");
        double[] savings = new double[Guard.within(years, 1, MAX_YEARS, "years")];
        for (int year = 0; year < years; year++) {
            savings[year] = firstYearSaving * StrictMath.pow(factor, year);
        }
        return savings;
    }

    /**
     * The equal amount at the end of each year that is worth 1 today.
     * <pre>UCR = d / (1 - (1 + d)^-N);   1 / N where d is 0</pre>
     * d discount or interest rate, share per year; N number of payments, 1 to {@value #MAX_YEARS}.
     * <p>Valid for d from 0 to {@value #MAX_RATE_SHARE_PER_YEAR}.
     * <p>Source: [NIST-HB135] uniform capital recovery
     * <p>Deviation: the denominator is taken as -expm1(-N log1p(d)), the same without the cancellation that leaves it 0
     * at rates below 1e-16.
     */
    public static double uniformCapitalRecovery(double rateSharePerYear, int years) {
        Guard.within(rateSharePerYear, 0, MAX_RATE_SHARE_PER_YEAR, "rateSharePerYear");
        Guard.within(years, 1, MAX_YEARS, "years");
        return rateSharePerYear == 0 ? 1.0 / years
                : rateSharePerYear / -StrictMath.expm1(-years * StrictMath.log1p(rateSharePerYear));
    }

    /** The flows of an investment today that brings savings at the end of each year. */
    public static double[] of(double investment, double... savings) {
        double[] flows = new double[savings.length + 1];
        flows[0] = 0 - Guard.notNegative(investment, "investment");
        System.arraycopy(savings, 0, flows, 1, savings.length);
        return flows;
    }

    /** How often the flows change from paying to receiving or back; zeros are passed over. */
    public static int signChanges(double... flows) {
        int changes = 0;
        double before = 0;
        for (double flow : flows) {
            if (before * Math.signum(flow) < 0) {
                changes++;
            }
            before = Guard.finite(flow, "flow") == 0 ? before : Math.signum(flow);
        }
        return changes;
    }
}
