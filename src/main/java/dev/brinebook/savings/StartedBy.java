// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.savings;

/** What started regenerations in a period. */
public enum StartedBy {
    /** Days, whatever was used. */
    CLOCK,
    /** Water used, at the hour set. */
    METER_DELAYED,
    /** Water used, at once. */
    METER_IMMEDIATE;

    /** Whether more water means more regenerations. */
    public boolean byWater() {
        return this != CLOCK;
    }
}
