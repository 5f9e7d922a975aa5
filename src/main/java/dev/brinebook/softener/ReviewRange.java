// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import java.util.Optional;

/**
 * What an uncertain measurement does to a review: the whole path at either end of it.
 *
 * @param low where there is as little as there may be
 * @param high where there is as much
 */
public record ReviewRange(Review low, Review high) {

    /** By the uncertainty of what was measured; none where it is exact, or where an end has no capacity to state. */
    public static Optional<ReviewRange> of(ExistingSoftener found, BedUncertainty uncertainty, DesignConditions duty, RunningCost cost) {
        return MeasuredEnds.of(found, uncertainty, duty).map(ends -> new ReviewRange(end(ends.low(), duty, cost),
                end(ends.high(), duty, cost)));
    }

    private static Review end(ExistingSoftener found, DesignConditions duty, RunningCost cost) {
        SetRight best = SetRight.of(found, duty, cost);
        return Review.path(found, duty.practice().keepsCloseSettings() ? best.reachedFrom(found, duty, cost) : best, duty, cost);
    }

    /** Whether other settings are to change at one end than at the other. */
    public boolean differs() {
        return !low.findings().stream().map(Finding::code).toList().equals(high.findings().stream().map(Finding::code).toList());
    }
}
