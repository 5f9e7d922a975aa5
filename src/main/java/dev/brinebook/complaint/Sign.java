// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.complaint;

import dev.brinebook.text.ListedOnce;
import dev.brinebook.text.Localizable;

/** What can be seen or measured of a fault. The constant's name is the stable code on the wire. */
@ListedOnce("What can be seen or measured of a fault.")
public enum Sign implements Localizable {
    SALT_LEVEL_UNCHANGED, SALT_BRIDGE, CONTROLLER_RIGHT, DISPLAY_COUNTS, BYPASS_NOT_SHUT, DRAIN_RUNS_IN_SERVICE, AIR_BUBBLES,
    SUCTION_WITHOUT_DRAIN_HOSE, LEVEL_RISES_IN_SERVICE, ACID_TURNS_YELLOW, BED_LOW, BEADS_IN_SCREEN, AIR_GAP_MISSING, RAW_THE_SAME,
    METER_MOVES_AT_NIGHT, HOT_STAYS_HARD, SOFT_AFTER_HAND_START,
    /** Over months, instead of from one day to another. */
    CAME_SLOWLY,
    /** Enough of it to foul resin; of the water test. */
    IRON_IN_WATER,
    /** Of raw water at the tap. */
    RAW_SHARE,
    /** Hardness at the outlet over that of raw water. */
    OUTLET_SHARE,
    /** Raw hardness over that of the water test. */
    RAW_CHANGE,
    /** Hardness that hot water has more than cold, over that which raw water has more. */
    HOT_SHARE,
    /** Days from a regeneration until it runs hard, over those that the capacity should last. */
    SOFT_DAYS,
    /** Over that of the design. */
    SUCTION, DRAIN_FLOW, REFILL_WATER,
    /** Degrees over 100. */
    BRINE_STRENGTH,
    /** Of a regeneration, over the salt set. */
    SALT_BY_BOOKS, METER_SHARE,
    /** Regenerations over those that right settings give. */
    REGENERATION_RATE,
    /** By the display, over that of the household. */
    METERED_USE,
    /** Volume until the meter calls over that which the capacity softens. */
    METER_SETTING,
    /** Hardness taken up in a run, over the capacity. */
    BREAKTHROUGH,
    /** Over that of the clean bed. */
    PRESSURE_LOSS,
    /** In the tank, over the volume given. */
    RESIN_VOLUME,
    /** In the first water after a regeneration, over {@link CaseDesign#CHLORIDE_LIMIT_MG_PER_L}. */
    CHLORIDE_EXCESS,
    /** Share of nights before which the reserve does not last the day. */
    HARD_NIGHTS;

    /** Whether it is answered by yes or no. */
    public boolean isLook() {
        return compareTo(IRON_IN_WATER) <= 0;
    }

    @Override
    public String textId() {
        return Localizable.idOf("complaintSign", this);
    }
}
