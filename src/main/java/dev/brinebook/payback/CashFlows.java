// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.guard.Guard;

/**
 * Yearly cash flows and their present values. The flow at index t falls at the <em>end</em> of year t; index 0 is
 * today. All flows are in one currency, as plain doubles: money is rounded to the cent at the edge, never here.
 *
 * <p>Flows that some spreadsheets discount from the end of the first year are the same flows with a 0 put in front.
 */
public final class CashFlows {

    /** Below this a discount factor over the longest horizon means nothing any more. */
    public static final double MIN_RATE_SHARE_PER_YEAR = -0.9999;
    public static final double MAX_RATE_SHARE_PER_YEAR = 10_000;

    /** Longest horizon. */
    public static final int MAX_YEARS = 40;

    private CashFlows() {
    }

    /**
     * Net present value of the flows.
     *
     * <pre>NPV = sum over t from 0 of F(t) / (1 + d)^t</pre>
     *
     * <p>F(t) flow at the end of year t, any currency; d discount rate, share per year.
     * Validity: d from {@value #MIN_RATE_SHARE_PER_YEAR} to {@value #MAX_RATE_SHARE_PER_YEAR}, and finite flows.
     * Source: [NIST-HB135] present value of future amounts.
     * Deviation: summed from the last flow backwards, which needs no power and loses fewer digits.
     */
    public static double netPresentValue(double rateSharePerYear, double... flows) {
        double factor = 1 / (1 + Guard.within(rateSharePerYear, MIN_RATE_SHARE_PER_YEAR, MAX_RATE_SHARE_PER_YEAR,
                "rateSharePerYear"));
        double sum = 0;
        for (int year = flows.length - 1; year >= 0; year--) {
            sum = sum * factor + finite(flows[year], year);
        }
        return sum;
    }

    /** Names the flow only where it is refused: the check runs for each flow of each draw. */
    private static double finite(double flow, int year) {
        return Double.isFinite(flow) ? flow : Guard.finite(flow, "flow of year " + year);
    }

    /**
     * Present value of yearly savings, the first falling at the end of year 1.
     *
     * <pre>PV = sum over t from 1 of S(t) / (1 + d)^t</pre>
     *
     * <p>S(t) saving of year t, any currency, at index t - 1; d discount rate, share per year.
     * Validity: as {@link #netPresentValue}.
     * Source: [NIST-HB135] present value of future amounts, end-of-year discounting.
     * Deviation: none.
     */
    public static double presentValueOfSavings(double rateSharePerYear, double... savings) {
        return netPresentValue(rateSharePerYear, savings) / (1 + rateSharePerYear);
    }

    /**
     * Present value of each flow.
     *
     * <pre>P(t) = F(t) / (1 + d)^t</pre>
     *
     * <p>P(t) present value, F(t) flow at the end of year t, any currency; d discount rate, share per year.
     * Validity: as {@link #netPresentValue}, which is their sum.
     * Source: [NIST-HB135] present value of future amounts.
     * Deviation: none.
     */
    public static double[] discounted(double rateSharePerYear, double... flows) {
        Guard.within(rateSharePerYear, MIN_RATE_SHARE_PER_YEAR, MAX_RATE_SHARE_PER_YEAR, "rateSharePerYear");
        double[] present = new double[flows.length];
        for (int year = 0; year < flows.length; year++) {
            present[year] = finite(flows[year], year) / StrictMath.pow(1 + rateSharePerYear, year);
        }
        return present;
    }

    /**
     * Savings that grow by the same share every year.
     *
     * <pre>S(t) = S(1) (1 + g)^(t - 1)</pre>
     *
     * <p>S(1) saving of the first year, any currency, at today's prices; g growth, share per year; t year, at index t - 1.
     * Validity: g from {@value #MIN_RATE_SHARE_PER_YEAR} to {@value #MAX_RATE_SHARE_PER_YEAR}, t from 1 to {@code years}, which
     * is {@value #MAX_YEARS} at most.
     * Source: [NIST-HB135] geometrically escalating annual amounts.
     * Deviation: the handbook already escalates the first year, S(1) = A(0)(1 + g). Here the first year is paid at
     * today's prices, because that is the figure the caller sees as "saved a year". On 350 invested, 90 saved, 10
     * years, growth 3 %, discount 5 %, the rival reading gives a net present value of 460.90 instead of 437.28.
     */
    public static double[] growing(double firstYearSaving, double growthSharePerYear, int years) {
        double[] savings = new double[Guard.within(years, 1, MAX_YEARS, "years")];
        addGrowing(savings, 0, firstYearSaving, growthSharePerYear);
        return savings;
    }

    /** Adds savings that grow as {@link #growing} to flows from {@code first} on. */
    static void addGrowing(double[] flows, int first, double firstYearSaving, double growthSharePerYear) {
        Guard.finite(firstYearSaving, "firstYearSaving");
        double factor = 1 + Guard.within(growthSharePerYear, MIN_RATE_SHARE_PER_YEAR, MAX_RATE_SHARE_PER_YEAR,
                "growthSharePerYear");
        double grown = 1;
        for (int year = first; year < flows.length; year++) {
            flows[year] += firstYearSaving * grown;
            grown *= factor;
        }
    }

    /**
     * Uniform capital recovery factor: the equal amount at the end of each year that is worth 1 today.
     *
     * <pre>UCR = d / (1 - (1 + d)^-N);   1 / N where d is 0</pre>
     *
     * <p>d discount or interest rate, share per year; N number of payments.
     * Validity: d from 0 to {@value #MAX_RATE_SHARE_PER_YEAR}, N from 1 to {@value #MAX_YEARS}.
     * Source: [NIST-HB135] uniform capital recovery.
     * Deviation: the denominator is taken as -expm1(-N log1p(d)), the same without the cancellation that leaves it 0
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
