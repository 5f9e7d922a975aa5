// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.field;

import static dev.brinebook.field.ReadingCode.BRINE_DEGREES;
import static dev.brinebook.field.ReadingCode.BRINE_DRAW_SECONDS;
import static dev.brinebook.field.ReadingCode.BRINE_DRAW_VOLUME;
import static dev.brinebook.field.ReadingCode.BRINE_LEVEL_FALL;
import static dev.brinebook.field.ReadingCode.BRINE_TANK_WIDTH;
import static dev.brinebook.field.ReadingCode.BRINE_TEMPERATURE;
import static dev.brinebook.field.ReadingCode.BRINE_WELL_WIDTH;
import static dev.brinebook.field.ReadingCode.DRAIN_SECONDS;
import static dev.brinebook.field.ReadingCode.DRAIN_VOLUME;
import static dev.brinebook.field.ReadingCode.FREEBOARD;
import static dev.brinebook.field.ReadingCode.GRAVEL_DEPTH;
import static dev.brinebook.field.ReadingCode.METER_CHECK_COUNT;
import static dev.brinebook.field.ReadingCode.METER_CHECK_VOLUME;
import static dev.brinebook.field.ReadingCode.METER_ERROR;
import static dev.brinebook.field.ReadingCode.NAMEPLATE_RESIN;
import static dev.brinebook.field.ReadingCode.OUTLET_HARDNESS;
import static dev.brinebook.field.ReadingCode.PRESSURE_DROP;
import static dev.brinebook.field.ReadingCode.RAW_HARDNESS;
import static dev.brinebook.field.ReadingCode.REFILL_MINUTES;
import static dev.brinebook.field.ReadingCode.REFILL_SECONDS;
import static dev.brinebook.field.ReadingCode.REFILL_VOLUME;
import static dev.brinebook.field.ReadingCode.REGENERATIONS;
import static dev.brinebook.field.ReadingCode.RUN_VOLUME;
import static dev.brinebook.field.ReadingCode.SALT_BOUGHT;
import static dev.brinebook.field.ReadingCode.SALT_SLUMP;
import static dev.brinebook.field.ReadingCode.SERVICE_SECONDS;
import static dev.brinebook.field.ReadingCode.SERVICE_VOLUME;
import static dev.brinebook.field.ReadingCode.TANK_DIAMETER;
import static dev.brinebook.field.ReadingCode.TANK_HEIGHT;
import static dev.brinebook.field.ReadingCode.TAP_HARDNESS;
import static dev.brinebook.field.ReadingCode.VOID_SHARE;
import static dev.brinebook.field.ReadingCode.WATER_FOR_BRINE;
import static dev.brinebook.field.ReadingCode.WATER_TEMPERATURE;

import dev.brinebook.measurement.Formula;
import dev.brinebook.measurement.Formula.Values;
import java.util.List;

/** Quantities that follow from readings alone, each in its base unit, with the readings that it needs. */
public enum FieldQuantity {
    /** L/min. */
    DRAIN_FLOW((x, at) -> flow(x, DRAIN_VOLUME, DRAIN_SECONDS), DRAIN_VOLUME, DRAIN_SECONDS),
    /** L/min. */
    REFILL_FLOW((x, at) -> flow(x, REFILL_VOLUME, REFILL_SECONDS), REFILL_VOLUME, REFILL_SECONDS),
    /** Of brine, L/min. */
    BRINE_DRAW_FLOW((x, at) -> flow(x, BRINE_DRAW_VOLUME, BRINE_DRAW_SECONDS) / x.of(WATER_FOR_BRINE), BRINE_DRAW_VOLUME,
            BRINE_DRAW_SECONDS, WATER_FOR_BRINE),
    /** L/min. */
    SERVICE_FLOW((x, at) -> flow(x, SERVICE_VOLUME, SERVICE_SECONDS), SERVICE_VOLUME, SERVICE_SECONDS),
    /** What the meter counts of a litre. */
    METER_SHARE((x, at) -> x.of(METER_CHECK_COUNT) / x.of(METER_CHECK_VOLUME), METER_CHECK_COUNT, METER_CHECK_VOLUME),
    /** At 60 °F; 100 are saturated. */
    BRINE_DEGREES_AT_SCALE((x, at) -> degrees(x), BRINE_DEGREES, BRINE_TEMPERATURE),
    /** kg/L. */
    SALT_PER_WATER((x, at) -> BrineStrength.saltPerWaterKilogramsPerLitre(at.salt(), degrees(x), x.of(BRINE_TEMPERATURE)), BRINE_DEGREES,
            BRINE_TEMPERATURE),
    /** kg/L. */
    SALT_PER_BRINE((x, at) -> BrineStrength.saltPerBrineKilogramsPerLitre(at.salt(), degrees(x), x.of(BRINE_TEMPERATURE)), BRINE_DEGREES,
            BRINE_TEMPERATURE),
    /** In each regeneration, kg. */
    SALT_BY_REFILL((x, at) -> REFILL_FLOW.of(x, at) * x.of(REFILL_MINUTES) * SALT_PER_WATER.of(x, at), REFILL_VOLUME, REFILL_SECONDS,
            REFILL_MINUTES, BRINE_DEGREES, BRINE_TEMPERATURE),
    /** In each regeneration, kg. */
    SALT_BY_DRAW((x, at) -> at.brineTank().litres(x.of(BRINE_TANK_WIDTH), x.of(BRINE_WELL_WIDTH), x.of(VOID_SHARE),
            x.of(BRINE_LEVEL_FALL), x.of(SALT_SLUMP)) * SALT_PER_BRINE.of(x, at), BRINE_TANK_WIDTH, BRINE_WELL_WIDTH, VOID_SHARE,
            BRINE_LEVEL_FALL, SALT_SLUMP, BRINE_DEGREES, BRINE_TEMPERATURE),
    /** In each regeneration, kg. */
    SALT_BY_BOOKS((x, at) -> x.of(SALT_BOUGHT) / x.of(REGENERATIONS), SALT_BOUGHT, REGENERATIONS),
    /** L. */
    RESIN_BY_GEOMETRY((x, at) -> at.tankBottom().resinLitres(x.of(TANK_DIAMETER), depth(x), gravel(x)), TANK_DIAMETER, TANK_HEIGHT,
            FREEBOARD, GRAVEL_DEPTH),
    /** L. */
    RESIN_BY_NAMEPLATE((x, at) -> x.of(NAMEPLATE_RESIN), NAMEPLATE_RESIN),
    /** Room above the resin as a share of its depth. */
    FREEBOARD_SHARE((x, at) -> x.of(FREEBOARD) / (depth(x) - gravel(x)), TANK_HEIGHT, FREEBOARD, GRAVEL_DEPTH),
    /** Hardness taken up in a run, grams as CaCO₃, by a meter that was not checked. */
    CAPACITY((x, at) -> capacity(x, 1 / x.of(METER_ERROR)), RUN_VOLUME, METER_ERROR, RAW_HARDNESS, OUTLET_HARDNESS),
    /** The same by a meter that was checked. */
    CAPACITY_BY_CHECKED_METER((x, at) -> capacity(x, 1 / METER_SHARE.of(x, at)), RUN_VOLUME, METER_CHECK_COUNT, METER_CHECK_VOLUME,
            RAW_HARDNESS, OUTLET_HARDNESS),
    /** Share of raw water at the tap. */
    RAW_SHARE((x, at) -> RawWaterShare.of(x.of(RAW_HARDNESS), x.of(OUTLET_HARDNESS), x.of(TAP_HARDNESS)), RAW_HARDNESS, OUTLET_HARDNESS,
            TAP_HARDNESS),
    /** Expansion of the bed by the drain flow, a share of its depth. */
    LIFT((x, at) -> BedLift.expansionOrMost(DRAIN_FLOW.of(x, at), x.of(TANK_DIAMETER), x.of(WATER_TEMPERATURE)), DRAIN_VOLUME,
            DRAIN_SECONDS, TANK_DIAMETER, WATER_TEMPERATURE),
    /** Pressure lost between raw and softened side, kPa. */
    PRESSURE_LOSS((x, at) -> x.of(PRESSURE_DROP), PRESSURE_DROP),
    /** Pressure that the clean bed loses at the service flow, kPa. */
    CLEAN_BED_LOSS((x, at) -> BedLift.dropKilopascals(RESIN_BY_GEOMETRY.of(x, at), x.of(TANK_DIAMETER), SERVICE_FLOW.of(x, at),
            x.of(WATER_TEMPERATURE)), SERVICE_VOLUME, SERVICE_SECONDS, TANK_DIAMETER, TANK_HEIGHT, FREEBOARD, GRAVEL_DEPTH,
            WATER_TEMPERATURE);

    private final Calculation calculation;
    private final List<ReadingCode> needs;

    /** A quantity from readings, of a softener. */
    @FunctionalInterface
    private interface Calculation {

        double of(Values<ReadingCode> readings, FieldSetup setup);
    }

    FieldQuantity(Calculation calculation, ReadingCode... needs) {
        this.calculation = calculation;
        this.needs = List.of(needs);
    }

    /** The readings that it needs. */
    public List<ReadingCode> needs() {
        return needs;
    }

    /** Its value of readings. */
    public double of(Values<ReadingCode> readings, FieldSetup setup) {
        return calculation.of(readings, setup);
    }

    /** The same as a formula of readings alone. */
    public Formula<ReadingCode> formula(FieldSetup setup) {
        return readings -> calculation.of(readings, setup);
    }

    private static double flow(Values<ReadingCode> x, ReadingCode volume, ReadingCode seconds) {
        return BucketFlow.litresPerMinute(x.of(volume), x.of(seconds));
    }

    private static double depth(Values<ReadingCode> x) {
        return x.of(TANK_HEIGHT) - x.of(FREEBOARD);
    }

    /** A draw of none may be a little less than none. */
    private static double gravel(Values<ReadingCode> x) {
        return Math.max(0, x.of(GRAVEL_DEPTH));
    }

    private static double degrees(Values<ReadingCode> x) {
        return BrineStrength.correctedDegrees(x.of(BRINE_DEGREES), x.of(BRINE_TEMPERATURE));
    }

    private static double capacity(Values<ReadingCode> x, double litresPerCount) {
        return BreakthroughRun.capacityGrams(x.of(RUN_VOLUME) * litresPerCount, x.of(RAW_HARDNESS), x.of(OUTLET_HARDNESS));
    }
}
