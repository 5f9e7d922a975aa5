// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.measurement;

import dev.brinebook.guard.Guard;
import dev.brinebook.randomness.Uncertain;
import java.util.Arrays;
import java.util.function.DoubleFunction;

/**
 * A number that was read, in its base unit, and how far it may be off.
 *
 * @param value what was read
 * @param distribution of the true number about it
 * @param standardUncertainty standard deviation of that distribution, above 0
 */
public record Reading(double value, Uncertain distribution, double standardUncertainty) {

    /** From this many repeats on, their scatter alone says how far their mean may be off. */
    public static final int ENOUGH_REPEATS = 4;

    public Reading {
        Guard.finite(value, "value");
        Guard.positive(standardUncertainty, "standardUncertainty");
    }

    /**
     * A reading by a mark, a scale or a watch that may be off by a half-width either way.
     *
     * <pre>u = a / √3</pre>
     *
     * <p>a half-width. Validity: anything within the bounds as likely as anything else. Source: [GUM] 4.3.7. Deviation: none.
     */
    public static Reading within(double value, double halfWidth) {
        return new Reading(value, new Uncertain.Range(value - halfWidth, value + halfWidth), halfWidth / Math.sqrt(3));
    }

    /**
     * A reading in steps, such as of a display or of drops, rounded to the nearest.
     *
     * <pre>u = r / √12</pre>
     *
     * <p>r step. Validity: as above. Source: [GUM] 4.3.7 with a half-width of r/2. Deviation: none.
     */
    public static Reading toStep(double value, double step) {
        return within(value, step / 2);
    }

    /**
     * The difference of two readings that may each be off by a half-width, such as start and stop of a watch.
     *
     * <pre>u = √2 a / √3 = 2a / √6</pre>
     *
     * <p>a half-width of each. Validity: the two do not depend on each other. Source: [GUM] 4.3.9, triangular. Deviation: none.
     */
    public static Reading difference(double value, double halfWidthOfEach) {
        double most = 2 * halfWidthOfEach;
        return new Reading(value, new Uncertain.Triangular(value - most, value, value + most), most / Math.sqrt(6));
    }

    /** A number with a standard uncertainty, taken as normally distributed. */
    public static Reading normal(double value, double standardUncertainty) {
        return new Reading(value, new Uncertain.Normal(value, standardUncertainty), standardUncertainty);
    }

    /** The same instrument where it shows another value: as far off either way. */
    public Reading shiftedTo(double other) {
        double by = other - value;
        if (distribution instanceof Uncertain.Range range) {
            return new Reading(other, new Uncertain.Range(range.least() + by, range.most() + by), standardUncertainty);
        }
        return distribution instanceof Uncertain.Triangular triangular ? new Reading(other, new Uncertain.Triangular(
                triangular.least() + by, triangular.likeliest() + by, triangular.most() + by), standardUncertainty)
                : normal(other, standardUncertainty);
    }

    /**
     * The mean of repeats of one reading.
     *
     * <pre>u = s / √n from 4 repeats on;  else the larger of s / √n and the u of a single reading</pre>
     *
     * <p>s standard deviation of the repeats, n their number. Validity: one repeat at least; what is the same in every repeat, such as a
     * mark on a bucket, does not belong here. Source: [GUM] 4.2.3; the rule for few repeats is common practice. Deviation: four and more
     * equal repeats are not taken as exact: their mean keeps u / √n of a single reading.
     *
     * @param single the kind of a single reading, such as {@code value -> difference(value, 0.3)}
     */
    public static Reading mean(double[] repeats, DoubleFunction<Reading> single) {
        int n = repeats.length;
        double mean = Arrays.stream(repeats).sum() / Guard.within(n, 1, Integer.MAX_VALUE, "number of repeats");
        Reading one = single.apply(mean);
        if (n == 1) {
            return one;
        }
        double squares = Arrays.stream(repeats).map(repeat -> (repeat - mean) * (repeat - mean)).sum();
        double scatter = Math.sqrt(squares / (n - 1) / n);
        double least = n < ENOUGH_REPEATS ? one.standardUncertainty : one.standardUncertainty / Math.sqrt(n);
        return scatter > least || n >= ENOUGH_REPEATS ? normal(mean, Math.max(scatter, least)) : one;
    }
}
