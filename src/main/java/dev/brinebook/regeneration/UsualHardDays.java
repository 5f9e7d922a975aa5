// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import dev.brinebook.household.Days;
import dev.brinebook.household.UseModel;

/**
 * How many hard days are within what is usual of a number of days: nine counts in ten lie in this range.
 *
 * <pre>P(k) = Σ w_i Poisson(k; h(f_i) n / 365),   f_i the {@link Levels}</pre>
 *
 * <p>k hard days, at most n; n days; h(f) expected hard days of a year in which every day uses f times as much; w_i weights
 * of the levels.
 *
 * <p>Validity: hard days that come singly at a given level, as those of a meter do. Those of a clock come several to a cycle, and
 * their counts spread wider.
 * Source: [DAIAD] counts of half a year spread somewhat wider than Poisson's.
 *
 * @param from the smallest count that is not among the lowest twentieth
 * @param to the smallest count that nineteen in twenty do not exceed
 */
public record UsualHardDays(int from, int to) {

    /** How a count compares with the range. */
    public enum Verdict {
        AS_PREDICTED, MORE_THAN_PREDICTED, FEWER_THAN_PREDICTED
    }

    private static final double LOWEST = 0.05;
    private static final double HIGHEST = 0.95;

    /**
     * The range of a household's days.
     *
     * @param days how many days
     */
    public static UsualHardDays of(UseModel model, Policy policy, double hardnessMilligramsPerLitre, Regeneration regeneration,
            int days) {
        LongRun atItsLevel = LongRun.of(model.with(model.change().withoutLevel()));
        Levels levels = Levels.fine(model.change());
        double[] factors = levels.factors(Levels.spread(model.change(), policy.byClock()));
        double[] means = new double[factors.length];
        for (int level = 0; level < factors.length; level++) {
            double perYear = atItsLevel.times(factors[level]).hardDaysPerYear(policy, hardnessMilligramsPerLitre,
                    regeneration);
            means[level] = perYear * days / Days.PER_YEAR;
        }
        return ofCounts(levels, means, days);
    }

    /** The range of a mixture of Poisson counts, by the mean of each level. */
    static UsualHardDays ofCounts(Levels levels, double[] means, int most) {
        double[] chances = new double[most + 1];
        for (int level = 0; level < means.length; level++) {
            double mean = Guard.notNegative(means[level], "mean");
            double logarithm = -mean;
            for (int count = 0; count <= most; count++) {
                logarithm += count == 0 ? 0 : StrictMath.log(mean / count);
                chances[count] += levels.weight(level) * StrictMath.exp(logarithm);
            }
        }
        return new UsualHardDays(quantile(chances, LOWEST), quantile(chances, HIGHEST));
    }

    /** The smallest count that a share of the counts does not exceed; counts beyond the number of days are taken as the last. */
    private static int quantile(double[] chances, double share) {
        double sum = 0;
        for (int count = 0; count < chances.length - 1; count++) {
            sum += chances[count];
            if (sum >= share) {
                return count;
            }
        }
        return chances.length - 1;
    }

    /** Whether {@code hardDays}, the mean of several runs, is outside of it once taken as a whole number. */
    public Verdict verdict(double hardDays) {
        long count = Math.round(hardDays);
        return count > to ? Verdict.MORE_THAN_PREDICTED : count < from ? Verdict.FEWER_THAN_PREDICTED : Verdict.AS_PREDICTED;
    }
}
