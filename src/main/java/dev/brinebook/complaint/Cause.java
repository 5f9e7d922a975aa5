// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.complaint;

import dev.brinebook.text.Localizable;

/** What may be wrong, or only seem so; those that can hurt somebody first. Properties are in {@link CauseTable}. */
public enum Cause implements Localizable {
    /** Waste water can be drawn back through the drain line. */
    CROSS_CONNECTION,
    /** Raw water reaches the tap past the softener. */
    BYPASS_LEAK,
    /** Hot water is fed from before the softener. */
    HOT_SIDE_HARD,
    /** None, a bridge, or mush. */
    NO_SALT,
    /** Injector or its screen. */
    INJECTOR_PLUGGED,
    /** In the brine line. */
    AIR_LEAK,
    /** Blocked, frozen, or too high. */
    DRAIN_RESTRICTED,
    /** The refill control is lost, or the float is stuck. */
    REFILL_TOO_MUCH, SALT_DOSE_LOW, HARDNESS_SET_LOW,
    /** Or the capacity is set low. */
    HARDNESS_SET_HIGH, RESERVE_SMALL, METER_NOT_COUNTING, CLOCK_LOST, SEAL_WORN, STUCK_IN_STEP,
    /** Or the riser. */
    DISTRIBUTOR_BROKEN, RESIN_FOULED, RESIN_OXIDISED, RESIN_LOST,
    /** In the bed or a filter before it. */
    SEDIMENT, RINSE_SHORT, USE_RISEN, HARDNESS_RISEN, HOUSE_LEAK, HEATER, BACTERIA,
    /** No fault: soft water feels so. */
    SOFT_FEEL,
    /** Something that is not in this list. */
    OTHER;

    @Override
    public String textId() {
        return Localizable.idOf("complaintCause", this);
    }

    /** What to do about it, and how that is proved. */
    public enum Fix implements Localizable {
        CROSS_CONNECTION, BYPASS_LEAK, HOT_SIDE_HARD, NO_SALT, INJECTOR_PLUGGED, AIR_LEAK, DRAIN_RESTRICTED, REFILL_TOO_MUCH, SALT_DOSE_LOW,
        HARDNESS_SET_LOW, HARDNESS_SET_HIGH, RESERVE_SMALL, METER_NOT_COUNTING, CLOCK_LOST, SEAL_WORN, STUCK_IN_STEP,
        DISTRIBUTOR_BROKEN, RESIN_FOULED, RESIN_OXIDISED, RESIN_LOST, SEDIMENT, RINSE_SHORT, USE_RISEN, HARDNESS_RISEN, HOUSE_LEAK,
        HEATER, BACTERIA, SOFT_FEEL, OTHER;

        @Override
        public String textId() {
            return Localizable.idOf("complaintFix", this);
        }
    }

    /** What to do about it. */
    public Fix fix() {
        return Fix.valueOf(name());
    }
}
