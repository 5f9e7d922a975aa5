// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.household;

import dev.brinebook.guard.Guard;
import java.time.LocalDate;
import java.util.Random;
import org.hipparchus.distribution.continuous.GammaDistribution;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.special.Gamma;

/**
 * How the days of one household scatter about their mean, and the typical year made from it.
 *
 * <p>A typical year is no random draw: every year holds the same 365 equally probable days and only their order is
 * shuffled, so its total is the sum of the means whatever the seed, and a rare large day occurs as often as it should.
 * Not for the spread between years.
 *
 * <p>Holds the 365 quantiles, which take milliseconds to find; keep the value rather than making it again.
 */
public final class DayVariation {

    public static final double MIN_CV = 0;
    public static final double MAX_CV = 1.5;
    public static final double MIN_PROBABILITY = 1e-6;
    public static final double MAX_PROBABILITY = 1 - 1e-6;

    /** Source: [DAIAD] CV of the day's use in homes of one person, days at home only. */
    public static final double ONE_PERSON_CV = 0.60;
    /** Source: [DAIAD] the same, two or three persons. */
    public static final double TWO_OR_THREE_PERSONS_CV = 0.42;
    /** Source: [DAIAD] the same, four persons or more. */
    public static final double FOUR_OR_MORE_PERSONS_CV = 0.38;
    /** Source: [DAIAD] the same, where the number of persons is not known. */
    public static final double UNKNOWN_PERSONS_CV = 0.45;

    public static final DayVariation ONE_PERSON = new DayVariation(ONE_PERSON_CV);
    public static final DayVariation TWO_OR_THREE_PERSONS = new DayVariation(TWO_OR_THREE_PERSONS_CV);
    public static final DayVariation FOUR_OR_MORE_PERSONS = new DayVariation(FOUR_OR_MORE_PERSONS_CV);
    public static final DayVariation UNKNOWN_PERSONS = new DayVariation(UNKNOWN_PERSONS_CV);

    /** Below this the iteration of the gamma distribution grows long and its normal limit is as good. */
    static final double NARROW_CV = 0.01;
    private static final double QUANTILE_ACCURACY = 1e-13;

    private final double cv;
    /** Calculated when first needed: only simulated days need them. */
    private volatile double[] quantiles;

    private DayVariation(double cv) {
        this.cv = Guard.within(cv, MIN_CV, MAX_CV, "cv");
    }

    private double[] quantiles() {
        double[] known = quantiles;
        if (known == null) {
            known = new double[Days.PER_YEAR];
            for (int i = 0; i < Days.PER_YEAR; i++) {
                known[i] = gammaQuantile(cv, (i + 0.5) / Days.PER_YEAR);
            }
            quantiles = known;
        }
        return known;
    }

    /** Days that scatter with this coefficient of variation. */
    public static DayVariation ofCv(double cv) {
        return new DayVariation(cv);
    }

    /** The default for a household of this size. */
    public static DayVariation forPersons(int persons) {
        Guard.positive(persons, "persons");
        return persons == 1 ? ONE_PERSON : persons <= 3 ? TWO_OR_THREE_PERSONS : FOUR_OR_MORE_PERSONS;
    }

    /** Standard deviation of a day's use over its mean. */
    public double cv() {
        return cv;
    }

    /**
     * The use, over its mean, that a day stays below with the given probability.
     *
     * <pre>P(a, a x) = p,   a = 1 / CV²</pre>
     *
     * <p>P regularized lower incomplete gamma function; x quantile, over the mean; CV coefficient of variation; p probability.
     * Validity: CV from {@value #MIN_CV} to {@value #MAX_CV}, p from 1e-6 to 1 - 1e-6. CV 0 gives 1.
     * Source: [DAIAD] gamma is the best family for day-to-day use.
     * Deviation: below CV 0.01 the cube-root normal form {@code x = (1 - CV²/9 + z CV/3)³} is used, z the normal quantile:
     * [WILSON-HILFERTY]; there the two differ by less than 2e-7.
     */
    public static double gammaQuantile(double cv, double probability) {
        Guard.within(cv, MIN_CV, MAX_CV, "cv");
        Guard.within(probability, MIN_PROBABILITY, MAX_PROBABILITY, "probability");
        if (cv < NARROW_CV) {
            double z = new NormalDistribution().inverseCumulativeProbability(probability);
            double root = 1 - cv * cv / 9 + z * cv / 3;
            return root * root * root;
        }
        return new GammaDistribution(1 / (cv * cv), cv * cv, QUANTILE_ACCURACY).inverseCumulativeProbability(probability);
    }

    /**
     * Share of the days whose use, over its mean, stays below {@code relativeUse}: the inverse of {@link #gammaQuantile}.
     *
     * <pre>p = P(a, a x),   a = 1 / CV²</pre>
     *
     * <p>Symbols as in {@link #gammaQuantile}; x is {@code relativeUse}.
     * Validity: CV from {@value #MIN_CV} to {@value #MAX_CV}, x of 0 or more.
     * Source: [DAIAD] gamma days.
     * Deviation: below CV 0.01 all days are treated as equal.
     */
    public static double shareOfDaysBelow(double cv, double relativeUse) {
        Guard.within(cv, MIN_CV, MAX_CV, "cv");
        Guard.notNegative(relativeUse, "relativeUse");
        if (cv < NARROW_CV) {
            return relativeUse > 1 ? 1 : 0;
        }
        return Gamma.regularizedGammaP(1 / (cv * cv), relativeUse / (cv * cv));
    }

    /**
     * A run of typical days.
     *
     * <pre>V(i) = s m(i) x(π(i)),   x(j) = quantile of (j + 0.5) / n,   s = Σ m(i) / Σ m(i) x(π(i))</pre>
     *
     * <p>V use of day i, L; m mean of its weekday, L; x {@link #gammaQuantile}; π order of the quantiles, shuffled by the seed;
     * n days of a block, 365 or what is left in the last one; the sums are over the block. The order comes from {@link Random},
     * whose algorithm its documentation fixes: the same seed gives the same days everywhere.
     * Validity: 1 to {@value Days#MAX_DAYS} days.
     * Source: [DAIAD] gamma days; equally spaced quantiles are our choice.
     * Deviation: a day is assumed not to depend on the one before it. A shorter last block takes every 365/n-th quantile.
     */
    public Days typicalDays(LocalDate firstDate, int size, WeekdayMeans means, long seed) {
        return typicalDays(firstDate, means.inOrder(firstDate, Guard.within(size, 1, Days.MAX_DAYS, "number of days")), seed);
    }

    /** The same with a mean for each day. */
    public Days typicalDays(LocalDate firstDate, double[] meanLitres, long seed) {
        int size = meanLitres.length;
        double[] uses = meanLitres.clone();
        Random random = new Random(seed);
        for (int start = 0; start < size; start += Days.PER_YEAR) {
            vary(uses, start, Math.min(Days.PER_YEAR, size - start), random);
        }
        return Days.series(firstDate, uses);
    }

    private void vary(double[] uses, int start, int length, Random random) {
        double[] factors = shuffled(length, random);
        double wanted = 0;
        double got = 0;
        for (int i = 0; i < length; i++) {
            wanted += uses[start + i];
            uses[start + i] *= factors[i];
            got += uses[start + i];
        }
        for (int i = 0; got > 0 && i < length; i++) {
            uses[start + i] *= wanted / got;
        }
    }

    /** Equally spaced quantiles in the order of a Fisher-Yates shuffle. */
    private double[] shuffled(int length, Random random) {
        double[] quantiles = quantiles();
        double[] factors = new double[length];
        for (int i = 0; i < length; i++) {
            factors[i] = quantiles[(int) ((i + 0.5) * Days.PER_YEAR / length)];
        }
        for (int i = length - 1; i > 0; i--) {
            int j = random.nextInt(i + 1);
            double swapped = factors[i];
            factors[i] = factors[j];
            factors[j] = swapped;
        }
        return factors;
    }
}
