// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.randomness;

import dev.brinebook.guard.Guard;
import org.hipparchus.distribution.continuous.NormalDistribution;

/** A number that is not known exactly: how likely it is to stay below a value, the other way round. */
public sealed interface Uncertain {

    /** Mean 0, standard deviation 1. */
    NormalDistribution STANDARD_NORMAL = new NormalDistribution();

    /**
     * The value that the number stays below with a probability.
     *
     * @param probability above 0 and below 1
     */
    double quantile(double probability);

    /** The value that it stays below as often as above. */
    default double median() {
        return quantile(0.5);
    }

    /** A number that is known. */
    record Known(double value) implements Uncertain {

        public Known {
            Guard.finite(value, "value");
        }

        @Override
        public double quantile(double probability) {
            checked(probability);
            return value;
        }
    }

    /**
     * Anything in a range, as likely as anything else in it.
     *
     * <pre>x = a + p (b − a)</pre>
     *
     * <p>a least, b most.
     * Source: by definition.
     */
    record Range(double least, double most) implements Uncertain {

        public Range {
            Guard.finite(most - Guard.finite(least, "least"), "most");
            Guard.within(most, least, Double.MAX_VALUE, "most");
        }

        @Override
        public double quantile(double probability) {
            return least + checked(probability) * (most - least);
        }
    }

    /**
     * Most likely one value, and less and less likely down to the least and up to the most.
     *
     * <pre>
     * x = a + √(p (b − a)(c − a))         for p ≤ (c − a)/(b − a)
     * x = b − √((1 − p)(b − a)(b − c))    else
     * </pre>
     *
     * <p>a least, c likeliest, b most.
     * Source: by definition.
     */
    record Triangular(double least, double likeliest, double most) implements Uncertain {

        public Triangular {
            Guard.finite(most - Guard.finite(least, "least"), "most");
            Guard.within(most, least, Double.MAX_VALUE, "most");
            Guard.within(likeliest, least, most, "likeliest");
        }

        @Override
        public double quantile(double probability) {
            checked(probability);
            double width = most - least;
            if (probability * width <= likeliest - least) {
                return least + Math.sqrt(probability * width * (likeliest - least));
            }
            return most - Math.sqrt((1 - probability) * width * (most - likeliest));
        }
    }

    /**
     * Normally distributed.
     *
     * <pre>x = μ + σ z(p)</pre>
     *
     * <p>z quantile of the standard normal distribution.
     * Source: by definition.
     */
    record Normal(double mean, double standardDeviation) implements Uncertain {

        public Normal {
            Guard.finite(mean, "mean");
            Guard.notNegative(standardDeviation, "standardDeviation");
        }

        @Override
        public double quantile(double probability) {
            return mean + standardDeviation * standardNormal(probability);
        }
    }

    /**
     * Its logarithm normally distributed: never below zero, and sometimes far above its median.
     *
     * <pre>x = m exp(s z(p)),   s² = ln(1 + CV²)</pre>
     *
     * <p>m median; CV standard deviation over mean; z as above.
     * Source: by definition.
     */
    record Lognormal(double middle, double coefficientOfVariation) implements Uncertain {

        public static final double MAX_COEFFICIENT_OF_VARIATION = 5;

        public Lognormal {
            Guard.positive(middle, "middle");
            Guard.within(coefficientOfVariation, 0, MAX_COEFFICIENT_OF_VARIATION, "coefficientOfVariation");
        }

        @Override
        public double quantile(double probability) {
            double spread = Math.sqrt(StrictMath.log1p(coefficientOfVariation * coefficientOfVariation));
            return middle * StrictMath.exp(spread * standardNormal(probability));
        }
    }

    private static double standardNormal(double probability) {
        return STANDARD_NORMAL.inverseCumulativeProbability(checked(probability));
    }

    private static double checked(double probability) {
        if (!(probability > 0 && probability < 1)) {
            throw new IllegalArgumentException("probability must be above 0 and below 1, was " + probability);
        }
        return probability;
    }
}
