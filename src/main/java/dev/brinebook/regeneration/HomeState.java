// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.CancellationToken;
import java.util.List;
import java.util.function.Function;

/**
 * One state in which the home may be.
 *
 * @param weight chance of it
 * @param weightBelow chance of the same scatter with a lower level
 * @param isUsualScatter whether the scatter is the middle one
 * @param isUsualLevel whether the level is the middle one
 * @param level use over the mean, as meters see it
 * @param levelOfSums the same as clocks see it
 * @param days what meters see, which go by each day
 * @param sums what clocks see, which go by sums of days
 */
record HomeState(double weight, double weightBelow, boolean isUsualScatter, boolean isUsualLevel, double level,
        double levelOfSums, SteadyRun days, SteadyRun sums) {

    /** Levels with less chance than this, of one scatter, are the outer ones. */
    private static final double OUTER_WEIGHT = 0.1;

    /** The mean over states of {@link SteadyRun#SUMS} sums of a year, with hard litres in mean days of the home. */
    static double[] mean(List<HomeState> states, double meanLitres, Function<HomeState, double[]> sums) {
        CancellationToken.obey();
        double[] mean = new double[SteadyRun.SUMS];
        for (HomeState state : states) {
            double[] of = sums.apply(state);
            for (int i = 0; i < mean.length; i++) {
                mean[i] += state.weight() * of[i];
            }
        }
        mean[3] /= meanLitres;
        return mean;
    }

    SteadyRun of(Policy policy) {
        return policy.byClock() ? sums : days;
    }

    boolean isOuterLevel() {
        return weight < OUTER_WEIGHT;
    }

    HomeState times(double factor) {
        return new HomeState(weight, weightBelow, isUsualScatter, isUsualLevel, level, levelOfSums, days.times(factor),
                sums.times(factor));
    }

    /** The same at the mean level. */
    HomeState atMean() {
        return new HomeState(weight, weightBelow, isUsualScatter, isUsualLevel, 1, 1, days.times(1 / level), sums.times(1 / levelOfSums));
    }

    /** The only state of its scatter, with its weight raised by 1 / share. */
    HomeState alone(double share) {
        return new HomeState(weight / share, 0, isUsualScatter, isUsualLevel, level, levelOfSums, days, sums);
    }
}
