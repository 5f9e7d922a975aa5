// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.savings;

import dev.brinebook.guard.Guard;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * The savings of many homes together.
 *
 * @param homes number of homes pooled
 * @param meanLog mean of the logarithm of what is left of the salt, weighted
 * @param standardError of it
 * @param spread standard deviation of the true logarithm from home to home
 */
public record FleetSavings(int homes, double meanLog, double standardError, double spread) {

    /** From this many standard deviations off the other homes on, a home is an outlier. */
    public static final double ASSUMED_OUTLIER_DEVIATION = 3;
    /** A home whose salt changed by more than this, as a logarithm, about twentyfold, is an outlier in any fleet. */
    public static final double ASSUMED_MOST_LOG = 3;
    /** Fewest homes that say something of others. */
    public static final int MIN_HOMES = 3;

    public FleetSavings {
        Guard.within(homes, MIN_HOMES, Integer.MAX_VALUE, "homes");
        Guard.positive(standardError, "standardError");
        Guard.notNegative(spread, "spread");
    }

    /**
     * Homes that differ, pooled.
     *
     * <pre>
     * τ² = max(0, (Q − (n − 1)) / (Σw − Σw² / Σw)),   w = 1/u²,   Q = Σ w (y − ȳ)²
     * ȳ = Σ w* y / Σ w*,   w* = 1 / (u² + τ²),   se² = max(1, Σ w* (y − ȳ)² / (n − 1)) / Σ w*
     * </pre>
     *
     * <p>y logarithm of what is left of the salt of a home, u its uncertainty, τ spread.
     * Validity: {@value #MIN_HOMES} homes or more, each read on its own. Source: [DERSIMONIAN-LAIRD] for τ; [HARTUNG-KNAPP] for se, used
     * with the t distribution. Deviation: se is never below that of the weights.
     */
    public static FleetSavings of(List<SavingsEstimate> homes) {
        double[] y = homes.stream().mapToDouble(home -> StrictMath.log(1 - home.share())).toArray();
        double[] variance = homes.stream().mapToDouble(home -> home.logUncertainty() * home.logUncertainty()).toArray();
        double between = between(y, variance);
        double[] w = Arrays.stream(variance).map(one -> 1 / (one + between)).toArray();
        double mean = mean(y, w);
        double scale = Math.max(1, squares(y, w, mean) / (y.length - 1));
        return new FleetSavings(y.length, mean, Math.sqrt(scale / Arrays.stream(w).sum()), Math.sqrt(between));
    }

    private static double between(double[] y, double[] variance) {
        double[] w = Arrays.stream(variance).map(one -> 1 / one).toArray();
        double sum = Arrays.stream(w).sum();
        double sumOfSquares = Arrays.stream(w).map(one -> one * one).sum();
        return Math.max(0, (squares(y, w, mean(y, w)) - (y.length - 1)) / (sum - sumOfSquares / sum));
    }

    private static double mean(double[] y, double[] w) {
        return IntStream.range(0, y.length).mapToDouble(i -> w[i] * y[i]).sum() / Arrays.stream(w).sum();
    }

    private static double squares(double[] y, double[] w, double mean) {
        return IntStream.range(0, y.length).mapToDouble(i -> w[i] * (y[i] - mean) * (y[i] - mean)).sum();
    }

    /**
     * Mean saving of such homes.
     *
     * <pre>s = 1 − exp(ȳ + τ²/2)</pre>
     *
     * <p>Symbols as in {@link #of}. Validity: logarithms that scatter normally. Source: mean of a lognormal distribution. Deviation: none.
     */
    public double share() {
        return shareAt(meanLog);
    }

    /** Low end of its interval of 90 %. */
    public double low() {
        return shareAt(meanLog + quantile() * standardError);
    }

    /** High end of it. */
    public double high() {
        return shareAt(meanLog - quantile() * standardError);
    }

    /**
     * Factor on the use of the next homes with which a calculation predicts the saving seen instead of that promised.
     *
     * <pre>f = ((1 − s) / (1 − P))^(1/e)</pre>
     *
     * <p>s {@link #share}; P promised; e change of the salt a day with the use of a day, both as logarithms.
     * Validity: a clock replaced by a meter, so that use moves the salt after the change alone. Source: solved for the use.
     * Deviation: all of the difference is put down to the use.
     */
    public double useFactor(double promised, double response) {
        return StrictMath.pow((1 - share()) / (1 - promised), 1 / response);
    }

    private double shareAt(double log) {
        return 1 - StrictMath.exp(log + spread * spread / 2);
    }

    private double quantile() {
        return new TDistribution(homes - 1.0).inverseCumulativeProbability((1 + SavingsEstimate.INTERVAL) / 2);
    }

    /** Whether a home is not pooled: it lies far from the others, or changed beyond what a softener does. */
    public static boolean isOutlier(SavingsEstimate home, Optional<Double> deviation) {
        return Math.abs(StrictMath.log(1 - home.share())) > ASSUMED_MOST_LOG
                || deviation.isPresent() && Math.abs(deviation.get()) > ASSUMED_OUTLIER_DEVIATION;
    }

    /** How far a home lies from the others, in standard deviations; above 0 where it saves less. Empty for fewer than four homes. */
    public static Optional<Double> deviation(List<SavingsEstimate> homes, int home) {
        if (homes.size() <= MIN_HOMES) {
            return Optional.empty();
        }
        List<SavingsEstimate> rest = IntStream.range(0, homes.size()).filter(i -> i != home).mapToObj(homes::get).toList();
        FleetSavings others = of(rest);
        double own = homes.get(home).logUncertainty();
        return Optional.of((StrictMath.log(1 - homes.get(home).share()) - others.meanLog)
                / Math.sqrt(own * own + others.spread * others.spread + others.standardError * others.standardError));
    }
}
