// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.upkeep;

import dev.brinebook.guard.Guard;
import dev.brinebook.resin.ResinEfficiency;
import dev.brinebook.water.WaterAnalysis;
import java.util.Objects;

/**
 * What the upkeep of a softener depends on.
 *
 * @param water the raw water
 * @param bedVolumesPerDay softened water of a mean day over the resin
 * @param sitesLeft share of the exchange sites of new resin that the resin has now
 * @param yearlyLossShare share of its sites that it loses in a year
 * @param rockSalt whether it is run on rock salt, which leaves dirt
 * @param sedimentFilter whether a filter is fitted before it
 */
public record UpkeepConditions(WaterAnalysis water, double bedVolumesPerDay, double sitesLeft, double yearlyLossShare, boolean rockSalt,
        boolean sedimentFilter) {

    public UpkeepConditions {
        Objects.requireNonNull(water, "water");
        Guard.notNegative(bedVolumesPerDay, "bedVolumesPerDay");
        Guard.positive(sitesLeft, "sitesLeft");
        Guard.within(yearlyLossShare, ResinEfficiency.LOW_YEARLY_LOSS_SHARE, ResinEfficiency.HIGH_YEARLY_LOSS_SHARE, "yearlyLossShare");
    }
}
