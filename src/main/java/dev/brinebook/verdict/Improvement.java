// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.verdict;

import dev.brinebook.text.Localizable;

/** What can be improved on a softener beyond its settings and its control. */
public enum Improvement implements Localizable {
    /** A second bed of the same size, of which one is always in service. */
    SECOND_TANK,
    /** The next larger standard tank, with the resin it is sold with. */
    LARGER_BED,
    /** Brine against the direction of service. */
    COUNTER_CURRENT,
    /** Some hard water mixed in, so that the water is still soft by its class, but not without hardness. */
    MIXING_VALVE,
    /** Cold taps stay hard. */
    HOT_WATER_ONLY;

    @Override
    public String textId() {
        return Localizable.idOf("improvement", this);
    }
}
