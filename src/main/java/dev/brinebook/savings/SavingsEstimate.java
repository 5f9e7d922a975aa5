// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.savings;

import dev.brinebook.guard.Guard;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * A saving of salt at the use before the change, and how sure it is.
 *
 * @param before salt a day before, kg, at that use
 * @param after salt a day after, kg, at that use
 * @param regenerationsBefore a day
 * @param regenerationsAfter a day, at that use
 * @param variances of the logarithm of {@code after / before}, by what causes them
 * @param saltAgrees whether the ways to measure the salt agree in both periods
 */
public record SavingsEstimate(double before, double after, double regenerationsBefore, double regenerationsAfter,
        Map<SavingsError, Double> variances, boolean saltAgrees) {

    /** Probability of the interval. */
    public static final double INTERVAL = 0.9;

    private static final NormalDistribution NORMAL = new NormalDistribution();

    public SavingsEstimate {
        Guard.positive(before, "before");
        Guard.positive(after, "after");
        variances = Map.copyOf(variances);
    }

    /**
     * The saving from the readings of two periods.
     *
     * <pre>
     * s = 1 − r_a / r_b,   u² = Σ u_i²  of  ln(r_a / r_b)
     * </pre>
     *
     * <p>r salt a day by {@link SaltRate}, b before and a after, at the mean use of the period before. Where a clock was replaced by a
     * meter, u² has e² v / T_b more where the water was read, as the days before are a sample of the long run, and e² s² more where
     * it was not, as both levels are unknown.
     * Validity: the water read in both periods, else the level of use is uncertain; hardness compared where it is known in both.
     * Source: [IPMVP] retrofit isolation, normalised saving; [GUM] 5.1.6 for the sum of relative variances.
     * Deviation: the logarithm is taken as normal, so that a saving is never above all of the salt.
     */
    public static SavingsEstimate of(SavingsPeriod before, SavingsPeriod after, UseScatter scatter) {
        boolean read = before.litresPerDay().isPresent() && after.litresPerDay().isPresent();
        boolean tested = before.hardness().isPresent() && after.hardness().isPresent();
        OptionalDouble litres = read ? before.litresPerDay() : OptionalDouble.empty();
        OptionalDouble hardness = tested ? before.hardness() : OptionalDouble.empty();
        SaltRate b = SaltRate.of(before, litres, hardness, scatter);
        SaltRate a = SaltRate.of(after, litres, hardness, scatter);
        Map<SavingsError, Double> variances = new EnumMap<>(SavingsError.class);
        b.variances().forEach((error, variance) -> variances.merge(error, variance, Double::sum));
        a.variances().forEach((error, variance) -> variances.merge(error, variance, Double::sum));
        if (before.startedBy().byWater() != after.startedBy().byWater()) {
            double response = SaltRate.response(before.startedBy().byWater() ? before : after, scatter);
            variances.merge(read ? SavingsError.DAYS : SavingsError.LEVEL, response * response * (read
                    ? scatter.longRunVariance() / before.days() : scatter.levelSpread() * scatter.levelSpread()), Double::sum);
        }
        return new SavingsEstimate(b.kilogramsPerDay(), a.kilogramsPerDay(), b.regenerationsPerDay(), a.regenerationsPerDay(),
                variances, b.agrees() && a.agrees());
    }

    /**
     * Salt that was not used in the period after, at its own use, kg; below 0 where more was used.
     *
     * <pre>A = r_b T_a − S_a</pre>
     *
     * <p>r_b {@link SaltRate} of the period before, at use and hardness of the period after; T_a its days, S_a its salt.
     * Validity: as in {@link #of}. Source: [IPMVP] avoided use. Deviation: none.
     */
    public static double avoidedKilograms(SavingsPeriod before, SavingsPeriod after, UseScatter scatter) {
        boolean read = before.litresPerDay().isPresent() && after.litresPerDay().isPresent();
        boolean tested = before.hardness().isPresent() && after.hardness().isPresent();
        SaltRate b = SaltRate.of(before, read ? after.litresPerDay() : OptionalDouble.empty(),
                tested ? after.hardness() : OptionalDouble.empty(), scatter);
        return b.kilogramsPerDay() * after.days() - after.kilograms();
    }

    /** Share of the salt that is saved; below 0 where more is used. */
    public double share() {
        return 1 - after / before;
    }

    /** Standard uncertainty of the logarithm of what is left. */
    public double logUncertainty() {
        return Math.sqrt(variances.values().stream().mapToDouble(Double::doubleValue).sum());
    }

    /** Standard uncertainty of the share. */
    public double uncertainty() {
        return after / before * logUncertainty();
    }

    /** Low end of the interval of the share. */
    public double low() {
        return 1 - after / before * StrictMath.exp(quantile(INTERVAL) * logUncertainty());
    }

    /** High end of it. */
    public double high() {
        return 1 - after / before * StrictMath.exp(-quantile(INTERVAL) * logUncertainty());
    }

    /** Probability that at least this share is saved. */
    public double probabilityOfAtLeast(double share) {
        return NORMAL.cumulativeProbability((StrictMath.log(1 - share) - StrictMath.log(after / before)) / logUncertainty());
    }

    /** What makes it most uncertain. */
    public SavingsError largestError() {
        return variances.entrySet().stream().max(Comparator.<Map.Entry<SavingsError, Double>>comparingDouble(Map.Entry::getValue)
                .thenComparing(entry -> -entry.getKey().ordinal())).orElseThrow().getKey();
    }

    /** Half-width of a two-sided interval, in standard uncertainties. */
    static double quantile(double probability) {
        return NORMAL.inverseCumulativeProbability((1 + probability) / 2);
    }

    /** One-sided quantile. */
    static double oneSided(double probability) {
        return NORMAL.inverseCumulativeProbability(probability);
    }
}
