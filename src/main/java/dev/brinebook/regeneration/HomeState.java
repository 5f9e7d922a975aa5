// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

/**
 * One state in which the home may be, as meters see it or as clocks do.
 *
 * @param weight chance of it
 * @param weightBelow chance of the same scatter with a lower level
 * @param isUsualScatter whether the scatter is the middle one
 * @param isUsualLevel whether the level is the middle one
 * @param isOuterLevel whether the level is seldom reached
 * @param level use over the mean
 * @param days the long run of it
 */
record HomeState(double weight, double weightBelow, boolean isUsualScatter, boolean isUsualLevel, boolean isOuterLevel, double level,
        SteadyRun days) {

    HomeState times(double factor) {
        return new HomeState(weight, weightBelow, isUsualScatter, isUsualLevel, isOuterLevel, level, days.times(factor));
    }

    /** Hard days of a year that count as none. */
    static final double NEGLIGIBLE_HARD_DAYS = 1e-6;

    /**
     * Whether lower levels have no hard days either, where this one has so few that they count as none: less use makes them rarer, save
     * above the mean, where the meter may call every night, and where days scatter little, which fill a count by whole days.
     */
    boolean hasNoneBelow(double hardDays) {
        return hardDays < NEGLIGIBLE_HARD_DAYS && level <= 1 && days.model().cv() >= MeterRates.LEAST_CV;
    }

    /** The same at the mean level. */
    HomeState atMean() {
        return new HomeState(weight, weightBelow, isUsualScatter, isUsualLevel, isOuterLevel, 1, days.times(1 / level));
    }

    /** The only state of its scatter, with its weight raised by 1 / share. */
    HomeState alone(double share) {
        return new HomeState(weight / share, 0, isUsualScatter, isUsualLevel, isOuterLevel, level, days);
    }
}
