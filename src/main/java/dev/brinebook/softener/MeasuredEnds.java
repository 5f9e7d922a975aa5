// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.resin.CapacityTable;
import java.util.Optional;

/**
 * A softener at either end of what was measured of it, with its settings unchanged.
 *
 * @param low with as little of it as there may be
 * @param high with as much
 */
public record MeasuredEnds(ExistingSoftener low, ExistingSoftener high) {

    /**
     * The ends of a softener; none where all of it is taken as exact, or where at one end its dose restores no capacity to state or one
     * step of its salt is more than the tables cover.
     */
    public static Optional<MeasuredEnds> of(ExistingSoftener found, BedUncertainty uncertainty, DesignConditions duty) {
        if (uncertainty.isExact()) {
            return Optional.empty();
        }
        MeasuredEnds ends = new MeasuredEnds(found.withBed(1 - uncertainty.resinShare(), 1 - uncertainty.saltShare()),
                found.withBed(1 + uncertainty.resinShare(), 1 + uncertainty.saltShare()));
        return isCounted(ends.low, duty) && isCounted(ends.high, duty) ? Optional.of(ends) : Optional.empty();
    }

    private static boolean isCounted(ExistingSoftener found, DesignConditions duty) {
        Softener softener = found.setup().softener();
        return softener.capacity().isKnownAt(softener.salt(), found.setup().countedDoseGramsPerLitre())
                && duty.controller().saltStep().gramsPerLitre(softener, duty.water().temperatureCelsius())
                        <= CapacityTable.maxSaltDoseGramsPerLitre(softener.salt());
    }
}
