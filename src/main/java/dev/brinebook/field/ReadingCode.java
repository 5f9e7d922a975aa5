// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.field;

/** The readings that quantities are calculated from, each in its base unit; a share or factor about 1 without one. */
public enum ReadingCode {
    DRAIN_VOLUME, DRAIN_SECONDS, REFILL_VOLUME, REFILL_SECONDS, REFILL_MINUTES, BRINE_DRAW_VOLUME, BRINE_DRAW_SECONDS,
    /** How much faster water is drawn than brine; 1 where brine was drawn. */
    WATER_FOR_BRINE, SERVICE_VOLUME, SERVICE_SECONDS, METER_CHECK_VOLUME, METER_CHECK_COUNT,
    /** What the meter of the run counts of a litre, where it was not checked. */
    METER_ERROR, TANK_DIAMETER, TANK_HEIGHT, FREEBOARD,
    /** 0 where there is none. */
    GRAVEL_DEPTH, BRINE_TANK_WIDTH,
    /** 0 where there is none. */
    BRINE_WELL_WIDTH, BRINE_LEVEL_FALL, VOID_SHARE, SALT_SLUMP,
    BRINE_DEGREES, BRINE_TEMPERATURE, WATER_TEMPERATURE, PRESSURE_DROP, RAW_HARDNESS, OUTLET_HARDNESS, TAP_HARDNESS,
    RUN_VOLUME, SALT_BOUGHT, REGENERATIONS, NAMEPLATE_RESIN, CAPACITY_TABLE
}
