// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.payback;

import dev.brinebook.guard.Guard;
import java.util.function.IntToDoubleFunction;

/**
 * What an alternative costs to have: bought today, bought again when it is worn out, and worth something at the end.
 *
 * @param firstCost parts and work today, any currency
 * @param rebate paid back towards the first cost, same currency, at most that
 * @param lifeYears years until it is bought again
 * @param financedShare share of the first cost less rebate that is borrowed, 0 to 1
 * @param loanYears years over which it is paid back, in equal payments at the end of each
 * @param loanSharePerYear interest, share per year
 */
public record Outlay(double firstCost, double rebate, int lifeYears, double financedShare, int loanYears,
        double loanSharePerYear) {

    public static final int MAX_LIFE_YEARS = 40;
    public static final int MAX_LOAN_YEARS = 30;
    public static final double MAX_LOAN_SHARE_PER_YEAR = 0.5;

    /** Nothing is bought. */
    public static final Outlay NONE = new Outlay(0, 0, MAX_LIFE_YEARS);

    public Outlay {
        Guard.within(firstCost, 0, Retrofit.MAX_COST, "firstCost");
        Guard.within(rebate, 0, firstCost, "rebate");
        Guard.within(lifeYears, 1, MAX_LIFE_YEARS, "lifeYears");
        Guard.within(financedShare, 0, 1, "financedShare");
        Guard.within(loanYears, 1, MAX_LOAN_YEARS, "loanYears");
        Guard.within(loanSharePerYear, 0, MAX_LOAN_SHARE_PER_YEAR, "loanSharePerYear");
    }

    /** Paid at once. */
    public Outlay(double firstCost, double rebate, int lifeYears) {
        this(firstCost, rebate, lifeYears, 0, 1, 0);
    }

    /** What the first purchase costs, however it is paid: first cost less rebate. */
    public double investment() {
        return firstCost - rebate;
    }

    /** All payments of each year, today first: those of the first purchase and those that come after it. */
    public double[] payments(int horizonYears, double growthSharePerYear) {
        return payments(horizonYears, priceLevels(growthSharePerYear));
    }

    /** The same, by the {@link #priceLevels}. */
    double[] payments(int horizonYears, IntToDoubleFunction priceLevels) {
        double[] payments = purchase(horizonYears);
        addLater(payments, priceLevels);
        return payments;
    }

    /**
     * Payments of each year for the first purchase, today first: the part not financed, and the loan.
     *
     * <pre>
     * P_0 = (1 − f) I,   P_t = A = f I UCR(i, m) in years 1 … min(m, N),
     * P_N += A / UCR(i, m − N) where m &gt; N
     * </pre>
     *
     * <p>P_t payment of year t, I first cost less rebate, in one currency; f share financed; i interest, share per year; m years of
     * the loan; N horizon, years; UCR {@link CashFlows#uniformCapitalRecovery}.
     * Validity: interest in the money that the discount rate is in, usually nominal; the payments do not grow.
     * Source: [NIST-HB135] uniform capital recovery; what is still owed at the horizon is the present value, at the
     * loan's own interest, of the payments after it, and is paid back then.
     * Deviation: a rebate is paid once, for the first purchase, and today; replacements are not financed.
     */
    public double[] purchase(int horizonYears) {
        double[] payments = new double[Guard.within(horizonYears, 1, CashFlows.MAX_YEARS, "horizonYears") + 1];
        payments[0] = (1 - financedShare) * investment();
        double yearly = yearlyPayment();
        for (int year = 1; year <= Math.min(loanYears, horizonYears); year++) {
            payments[year] = yearly;
        }
        if (loanYears > horizonYears) {
            int yearsLeft = loanYears - horizonYears;
            payments[horizonYears] += yearly / CashFlows.uniformCapitalRecovery(loanSharePerYear, yearsLeft);
        }
        return payments;
    }

    /**
     * Payments of each year after the first purchase, today first: replacements at the end of each life, and at the horizon the
     * residual value of the last one, as a negative payment.
     *
     * <pre>P_kL = C (1 + g)^kL  for kL &lt; N,   P_N = −C (1 + g)^N (1 − (N − s)/L)</pre>
     *
     * <p>P_t payment of year t, C first cost, in one currency; L life and N horizon, years; k number of the replacement; g growth of
     * prices, share per year; s year of the last purchase.
     * Validity: 1 to {@link CashFlows#MAX_YEARS} years.
     * Source: [NIST-HB135] replacement and residual value, the latter in proportion to the life that is left.
     * Deviation: the handbook calculates the residual value from the first cost in constant money. In the money of the day
     * that first cost has grown with the prices up to the horizon, not only up to the last purchase: so both methods
     * agree. An item of 900 that lasts 15 years is worth 444.07 after 10 at 4 % growth; without the growth, 300.
     */
    public double[] later(int horizonYears, double growthSharePerYear) {
        double[] payments = new double[Guard.within(horizonYears, 1, CashFlows.MAX_YEARS, "horizonYears") + 1];
        addLater(payments, priceLevels(growthSharePerYear));
        return payments;
    }

    private void addLater(double[] payments, IntToDoubleFunction priceLevels) {
        int horizonYears = payments.length - 1;
        int last = 0;
        for (int year = lifeYears; year < horizonYears; year += lifeYears) {
            payments[year] += firstCost * priceLevels.applyAsDouble(year);
            last = year;
        }
        double lifeLeftShare = (double) (last + lifeYears - horizonYears) / lifeYears;
        payments[horizonYears] -= firstCost * priceLevels.applyAsDouble(horizonYears) * lifeLeftShare;
    }

    /**
     * Payment of each year of the loan.
     *
     * <pre>A = f I UCR(i, m)</pre>
     *
     * <p>A payment per year, I first cost less rebate, in one currency; f share financed; i interest, share per year; m years of the
     * loan; UCR {@link CashFlows#uniformCapitalRecovery}.
     * Validity: equal payments at the end of each year.
     * Source: [NIST-HB135] uniform capital recovery.
     * Deviation: none.
     */
    public double yearlyPayment() {
        return financedShare * investment() * CashFlows.uniformCapitalRecovery(loanSharePerYear, loanYears);
    }

    /** Prices at the end of each year over those of today. */
    static IntToDoubleFunction priceLevels(double growthSharePerYear) {
        Guard.within(growthSharePerYear, Prices.MIN_GROWTH_SHARE_PER_YEAR, Prices.MAX_GROWTH_SHARE_PER_YEAR,
                "growthSharePerYear");
        return year -> StrictMath.pow(1 + growthSharePerYear, year);
    }
}
