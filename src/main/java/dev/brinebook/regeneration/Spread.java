// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import dev.brinebook.randomness.Quantile;
import java.util.Arrays;

/**
 * How a number spreads over many years.
 *
 * @param mean mean of the years
 * @param standardError what the mean is uncertain by, as its standard deviation; 0 for a single year
 * @param percentile5 a twentieth of the years stay below it
 * @param median half of the years stay below it
 * @param percentile95 a twentieth of the years are above it
 */
public record Spread(double mean, double standardError, double percentile5, double median, double percentile95) {

    /** The spread of {@code values}, of which there must be one at least. */
    public static Spread of(double... values) {
        Guard.within(values.length, 1, Integer.MAX_VALUE, "number of values");
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        double sum = 0;
        for (double value : sorted) {
            sum += value;
        }
        double mean = sum / sorted.length;
        double squares = 0;
        for (double value : sorted) {
            squares += (value - mean) * (value - mean);
        }
        double error = sorted.length < 2 ? 0 : Math.sqrt(squares / (sorted.length - 1) / sorted.length);
        return new Spread(mean, error, Quantile.ofSorted(sorted, 0.05), Quantile.ofSorted(sorted, 0.5),
                Quantile.ofSorted(sorted, 0.95));
    }
}
