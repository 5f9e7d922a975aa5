// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.verdict;

import dev.brinebook.payback.AgainstBaseline;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Value of a step over another.
 *
 * @param over the other step
 * @param savedPerYear salt and water of the first year, money; negative where it costs more
 * @param savedPerYearOverSeasonal the same where the other is a clock that is set again every season
 * @param worthUpTo extra first cost at which it breaks even; 0 or less where it saves nothing
 * @param worth by every measure, where both first costs are known
 * @param chanceOfPaying that what is saved over the horizon is more than the first cost, where that is known
 */
public record Increment(Step over, double savedPerYear, OptionalDouble savedPerYearOverSeasonal, double worthUpTo,
        Optional<AgainstBaseline> worth, OptionalDouble chanceOfPaying) {

    /** Whether it is worth its cost; never where that is not known. */
    public boolean pays() {
        return worth.isPresent() && worth.get().netPresentValue() > 0;
    }
}
