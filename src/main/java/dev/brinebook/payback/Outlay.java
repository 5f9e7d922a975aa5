package dev.brinebook.payback;

import dev.brinebook.guard.Guard;

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
        Guard.within(firstCost, 0, Conversion.MAX_COST, "firstCost");
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

    /**
     * Payments of each year, today first: what is not financed, the loan, replacements when the life is over, and at the
     * end, as a negative payment, the part of the last one's life that is left.
     *
     * <pre>
     * P_0 = (1 − f) I,   A = f I i / (1 − (1 + i)^−m)  in years 1 … m,
     * P_kL += C (1 + g)^kL  for kL &lt; N,   P_N −= C (1 + g)^s (1 − (N − s)/L)
     * </pre>
     *
     * <p>I first cost less rebate; C first cost; f share financed; i interest; m years of the loan, those after the horizon
     * falling into its last year; L life; N horizon; g growth of prices; s year of the last purchase.
     * Source: [NIST-HB135] replacement and residual value, the latter in proportion to the life that is left; level payments
     * of a loan by definition of its present value.
     * Deviation: a rebate is paid once, for the first purchase.
     */
    public double[] payments(int horizonYears, double growthSharePerYear) {
        Guard.within(horizonYears, 1, CashFlows.MAX_YEARS, "horizonYears");
        double[] payments = new double[horizonYears + 1];
        double net = firstCost - rebate;
        payments[0] = (1 - financedShare) * net;
        double yearly = yearlyPayment();
        for (int year = 1; year <= loanYears; year++) {
            payments[Math.min(year, horizonYears)] += yearly;
        }
        int last = 0;
        for (int year = lifeYears; year < horizonYears; year += lifeYears) {
            payments[year] += grown(growthSharePerYear, year);
            last = year;
        }
        payments[horizonYears] -= grown(growthSharePerYear, last) * (1 - (double) (horizonYears - last) / lifeYears);
        return payments;
    }

    /** Payment of each year of the loan. */
    public double yearlyPayment() {
        double loan = financedShare * (firstCost - rebate);
        return loanSharePerYear == 0 ? loan / loanYears
                : loan * loanSharePerYear / (1 - StrictMath.pow(1 + loanSharePerYear, -loanYears));
    }

    private double grown(double growthSharePerYear, int year) {
        return firstCost * StrictMath.pow(1 + growthSharePerYear, year);
    }
}
