// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.softener.Fit.Shortcoming;
import java.util.Set;

/**
 * What is known of the size of a tank. What is not is calculated with the smallest standard tank that holds the resin: good enough for
 * salt and water, but no softener is refused for the size of a tank that nobody measured.
 */
public enum TankSize {
    /** Diameter and height. */
    KNOWN(Set.of()),
    /** The diameter alone, so that the room above the bed is unknown. */
    DIAMETER_KNOWN(Set.of(Shortcoming.NO_ROOM_FOR_BACKWASH)),
    /** Not the diameter, so that velocity, pressure drop, depth and room are unknown. */
    UNKNOWN(Set.of(Shortcoming.CONTINUOUS_FLOW_TOO_HIGH, Shortcoming.PEAK_FLOW_TOO_HIGH, Shortcoming.BED_TOO_SHALLOW,
            Shortcoming.NO_ROOM_FOR_BACKWASH));

    private final Set<Shortcoming> open;

    TankSize(Set<Shortcoming> open) {
        this.open = open;
    }

    /** Whether the size of the tank is enough to judge it. */
    boolean judges(Shortcoming shortcoming) {
        return !open.contains(shortcoming);
    }

    /** Whether velocity and pressure drop of a flow are known. */
    boolean knowsDiameter() {
        return this != UNKNOWN;
    }
}
