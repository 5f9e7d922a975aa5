// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.commissioning;

import static dev.brinebook.commissioning.CommissioningCheck.BACKWASH_FLOW;
import static dev.brinebook.commissioning.CommissioningCheck.BRINE_LEVEL_FALL;
import static dev.brinebook.commissioning.CommissioningCheck.BRINE_STRENGTH;
import static dev.brinebook.commissioning.CommissioningCheck.DRAW_MINUTES;
import static dev.brinebook.commissioning.CommissioningCheck.FAST_RINSE_FLOW;
import static dev.brinebook.commissioning.CommissioningCheck.METER_COUNT;
import static dev.brinebook.commissioning.CommissioningCheck.OUTLET_HARDNESS;
import static dev.brinebook.commissioning.CommissioningCheck.PRESSURE_LOSS;
import static dev.brinebook.commissioning.CommissioningCheck.REFILL_FLOW;
import static dev.brinebook.commissioning.CommissioningCheck.REFILL_WATER;
import static dev.brinebook.commissioning.CommissioningCheck.RINSE_CHLORIDE;
import static dev.brinebook.commissioning.CommissioningCheck.RINSE_CONDUCTIVITY;
import static dev.brinebook.commissioning.CommissioningCheck.SLOW_RINSE_FLOW;
import static dev.brinebook.commissioning.CommissioningCheck.TAP_ABOVE_OUTLET;

import dev.brinebook.commissioning.CommissioningCheck.Kind;
import dev.brinebook.field.BrineStrength;
import dev.brinebook.field.FieldFinding;
import dev.brinebook.measurement.Instrument;
import dev.brinebook.quantity.Exact;
import dev.brinebook.regeneration.CycleStep;
import dev.brinebook.resin.CyclicColumn;
import dev.brinebook.resin.Salt;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * The band of each reading of a first regeneration, by what sound equipment and the usual instruments may be off.
 *
 * @param regeneration the regeneration
 * @param dropMgPerL hardness of one drop of the test, mg/L as CaCO₃
 */
public record CommissioningBands(FirstRegeneration regeneration, double dropMgPerL) {

    /** How far flow controls may be off, as a share. */
    public static final double ASSUMED_FLOW_CONTROL_SHARE = 0.10;
    /** How far an injector's suction may be off, as a share. */
    public static final double ASSUMED_SUCTION_SHARE = 0.20;
    /** How far brine over salt may be from saturation, as a share. */
    public static final double ASSUMED_SATURATION_SHARE = 0.025;
    /** Chloride above that of raw water that may be left at the end of the rinse, mg/L. */
    public static final double ASSUMED_MOST_CHLORIDE_MG_PER_L = 50;
    /** Pressure that valve and pipes may lose beside the bed, kPa: 2 psi. */
    public static final double ASSUMED_VALVE_LOSS_KILOPASCALS = 2 * Exact.PSI_PASCALS / 1000;
    /** How far a strip or drop test of chloride may be off, mg/L. */
    public static final double ASSUMED_CHLORIDE_HALF_WIDTH = 20;
    /** How far the difference of two readings of a conductivity meter may be off, µS/cm. */
    public static final double ASSUMED_CONDUCTIVITY_HALF_WIDTH = 10;
    /** How well it is seen when the level stops, minutes. */
    public static final double ASSUMED_DRAW_HALF_WIDTH_MINUTES = 0.5;
    /** Water run for the check of the meter, L: 30 US gallons, in buckets of five. */
    public static final double ASSUMED_METER_CHECK_LITRES = 30 * Exact.US_GALLON_LITRES;
    /** Flow from which a large bucket is taken, L/min. */
    private static final double ASSUMED_LARGE_BUCKET_FROM = 2 * Exact.US_GALLON_LITRES;
    private static final double LARGE_BUCKET_LITRES = 5 * Exact.US_GALLON_LITRES;
    private static final double SMALL_BUCKET_LITRES = Exact.US_GALLON_LITRES;
    private static final double SATURATED_DEGREES = 100;

    /** Bands of all checks that this softener has, in their order; a yes or no has none. */
    public Map<CommissioningCheck, PassBand> all() {
        Map<CommissioningCheck, PassBand> bands = new EnumMap<>(CommissioningCheck.class);
        for (CommissioningCheck check : CommissioningCheck.values()) {
            if (has(check) && check.kind() != Kind.YES_NO) {
                bands.put(check, band(check, OptionalDouble.empty()));
            }
        }
        return bands;
    }

    /** Whether a check can be made on this softener: no step that is left out is read, no hydrometer is for potassium. */
    public boolean has(CommissioningCheck check) {
        return switch (check) {
            case BRINE_STRENGTH -> regeneration.softener().salt() == Salt.SODIUM_CHLORIDE;
            case BRINE_LEVEL_FALL -> regeneration.brineTank().isPresent();
            case BACKWASH_FLOW -> regeneration.step(CycleStep.Kind.BACKWASH).isPresent();
            case DRAW_MINUTES, SLOW_RINSE_FLOW -> regeneration.step(CycleStep.Kind.BRINE_AND_SLOW_RINSE).isPresent();
            case FAST_RINSE_FLOW -> regeneration.step(CycleStep.Kind.FAST_RINSE).isPresent();
            default -> true;
        };
    }

    /** The band of a check, for a reading that may be off by a stated half-width, or by that of the usual instrument. */
    public PassBand band(CommissioningCheck check, OptionalDouble halfWidth) {
        double u = readingUncertainty(check, halfWidth);
        double expected = expected(check);
        return switch (check) {
            case BRINE_STRENGTH -> PassBand.atLeast(expected, BrineStrength.LEAST_DEGREES, u);
            case RINSE_CHLORIDE -> PassBand.atMost(expected, ASSUMED_MOST_CHLORIDE_MG_PER_L, u);
            case RINSE_CONDUCTIVITY -> PassBand.atMost(expected,
                    ASSUMED_MOST_CHLORIDE_MG_PER_L * regeneration.conductivityPerChloride(), u);
            case OUTLET_HARDNESS -> PassBand.atMost(expected,
                    Math.min(expected, CyclicColumn.DEFAULT_END_POINT_MG_PER_L) + dropMgPerL, u);
            case TAP_ABOVE_OUTLET -> PassBand.same(u, Math.max(CyclicColumn.DEFAULT_END_POINT_MG_PER_L, dropMgPerL));
            case PRESSURE_LOSS -> PassBand.atMost(expected, Math.min(FieldFinding.MOST_LOSS_KILOPASCALS,
                    expected + ASSUMED_VALVE_LOSS_KILOPASCALS), u);
            default -> PassBand.about(expected, expected * equipmentShare(check), u);
        };
    }

    /** What sound equipment shows, base unit. */
    public double expected(CommissioningCheck check) {
        return switch (check) {
            case BACKWASH_FLOW -> regeneration.step(CycleStep.Kind.BACKWASH).orElseThrow().flowLitresPerMinute();
            case FAST_RINSE_FLOW -> regeneration.step(CycleStep.Kind.FAST_RINSE).orElseThrow().flowLitresPerMinute();
            case REFILL_FLOW -> regeneration.refillLitresPerMinute();
            case REFILL_WATER -> regeneration.refillLitres();
            case BRINE_STRENGTH, METER_COUNT -> SATURATED_DEGREES;
            case DRAW_MINUTES -> regeneration.drawMinutes();
            case SLOW_RINSE_FLOW -> regeneration.brineFlowLitresPerMinute();
            case BRINE_LEVEL_FALL -> regeneration.levelFallMetres(regeneration.brineTank().orElseThrow());
            case RINSE_CHLORIDE -> regeneration.rinseChlorideMgPerL();
            case RINSE_CONDUCTIVITY -> regeneration.rinseChlorideMgPerL() * regeneration.conductivityPerChloride();
            case OUTLET_HARDNESS -> regeneration.leakageMgPerL();
            case PRESSURE_LOSS -> regeneration.bedLossKilopascals();
            case TAP_ABOVE_OUTLET -> 0;
            default -> throw new IllegalArgumentException(check + " is a yes or no");
        };
    }

    /** Salt that a sound first regeneration gives, kg, with its band. */
    public PassBand salt() {
        double expected = regeneration.saltKilograms();
        return PassBand.about(expected, expected * Math.hypot(uniform(ASSUMED_FLOW_CONTROL_SHARE), uniform(ASSUMED_SATURATION_SHARE)),
                expected * bucketShare(regeneration.refillLitresPerMinute()));
    }

    /** Standard uncertainty of sound equipment as a share of what it should show. */
    private double equipmentShare(CommissioningCheck check) {
        double control = uniform(ASSUMED_FLOW_CONTROL_SHARE);
        return switch (check) {
            case DRAW_MINUTES -> Math.hypot(Math.hypot(uniform(ASSUMED_SUCTION_SHARE), control), uniform(ASSUMED_SATURATION_SHARE));
            case BRINE_LEVEL_FALL -> Math.hypot(Math.hypot(control, uniform(voidsHalfWidth())), uniform(slump()));
            case METER_COUNT -> uniform(FieldFinding.METER_LIMIT_SHARE);
            default -> control;
        };
    }

    /** The half-width of the voids as a share of them. */
    private double voidsHalfWidth() {
        double voids = regeneration.brineTank().orElseThrow().voidShare();
        return Instrument.VOIDS_OF_OTHER_SALT.halfWidth(voids) / voids;
    }

    private static double slump() {
        return Instrument.SALT_SLUMP.halfWidth(1);
    }

    /** Standard uncertainty of a reading by its stated half-width, or by the usual instrument, base unit. */
    public double readingUncertainty(CommissioningCheck check, OptionalDouble halfWidth) {
        return halfWidth.isPresent() ? uniform(halfWidth.getAsDouble()) : usualUncertainty(check);
    }

    private double usualUncertainty(CommissioningCheck check) {
        return switch (check) {
            case BACKWASH_FLOW, FAST_RINSE_FLOW, REFILL_FLOW, SLOW_RINSE_FLOW -> expected(check) * bucketShare(expected(check));
            case REFILL_WATER -> expected(check) * bucketShare(regeneration.refillLitresPerMinute());
            case BRINE_STRENGTH -> uniform(Instrument.HYDROMETER.halfWidth(SATURATED_DEGREES));
            case DRAW_MINUTES -> uniform(ASSUMED_DRAW_HALF_WIDTH_MINUTES);
            case BRINE_LEVEL_FALL -> Math.sqrt(2) * uniform(Instrument.TAPE_IN_BRINE_TANK.halfWidth(1));
            case RINSE_CHLORIDE -> uniform(ASSUMED_CHLORIDE_HALF_WIDTH);
            case RINSE_CONDUCTIVITY -> uniform(ASSUMED_CONDUCTIVITY_HALF_WIDTH);
            case OUTLET_HARDNESS -> uniform(dropMgPerL / 2);
            case TAP_ABOVE_OUTLET -> Math.sqrt(2) * uniform(dropMgPerL / 2);
            case METER_COUNT -> SATURATED_DEGREES * meterCheckShare();
            case PRESSURE_LOSS -> uniform(Instrument.GAUGE_DIFFERENCE.halfWidth(1));
            default -> 0;
        };
    }

    /** By a marked bucket and a watch: the mark is the same error in every fill, start and stop of the watch count once each. */
    private static double bucketShare(double litresPerMinute) {
        double bucket = litresPerMinute >= ASSUMED_LARGE_BUCKET_FROM ? LARGE_BUCKET_LITRES : SMALL_BUCKET_LITRES;
        double seconds = 60 * bucket / litresPerMinute;
        return Math.hypot(uniform(Instrument.MARKED_BUCKET.halfWidth(bucket) / bucket),
                Math.sqrt(2) * uniform(Instrument.STOPWATCH.halfWidth(seconds) / seconds));
    }

    /** By the mark of the bucket and a display in gallons, read before and after. */
    private static double meterCheckShare() {
        return Math.hypot(uniform(Instrument.MARKED_BUCKET.halfWidth(LARGE_BUCKET_LITRES) / LARGE_BUCKET_LITRES),
                Math.sqrt(2) * uniform(Exact.US_GALLON_LITRES / 2 / ASSUMED_METER_CHECK_LITRES));
    }

    /** Standard uncertainty of what is within a half-width, equally likely anywhere. Source: [GUM] 4.3.7. */
    private static double uniform(double halfWidth) {
        return halfWidth / Math.sqrt(3);
    }
}
