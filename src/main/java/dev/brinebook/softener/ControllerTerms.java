// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.CapacityUnit;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.VolumeUnit;
import dev.brinebook.water.HardnessStep;
import java.util.Objects;

/**
 * The units and steps in which a controller takes its settings. Each is rounded in the safe direction: hardness, salt and reserve
 * up, capacity down. Whatever is chosen or evaluated is a value that can be set.
 *
 * <p>The usual steps are common practice without a source: degrees and grains in whole numbers, the other units in the step of
 * about the same size. A coarse step can also be set on a controller that has a finer one.
 *
 * @param hardness unit and step of the hardness
 * @param capacityUnit unit of the capacity
 * @param capacityStep its step, in that unit
 * @param saltStep how salt is set, and in which steps
 * @param newBedSaltStep the same for a bed that is still to be bought
 * @param volumeUnit unit of the water that the meter counts
 * @param reserveStep how the reserve is set, and in which steps
 */
public record ControllerTerms(HardnessStep hardness, CapacityUnit capacityUnit, double capacityStep,
        SaltStep saltStep, SaltStep newBedSaltStep, VolumeUnit volumeUnit, ReserveStep reserveStep) {

    public static final double MIN_HARDNESS_STEP_MG_PER_L = 0.1;
    public static final double MAX_HARDNESS_STEP_MG_PER_L = 200;
    public static final double MIN_CAPACITY_STEP_GRAMS = 0.01;
    public static final double MAX_CAPACITY_STEP_GRAMS = 100;

    /** Whole grains per gallon, hundreds of grains, half pounds of salt per cubic foot, tens of gallons. */
    public static final ControllerTerms US = of(HardnessUnit.GPG, CapacityUnit.GRAIN, SaltStep.PoundsPerCubicFoot.HALVES,
            VolumeUnit.US_GALLON, new ReserveStep.Volume(assumedStepLitres(VolumeUnit.US_GALLON)));

    /** A number of steps that misses a whole one by this is taken as that one: 34 steps that come as 34.0000000001. */
    private static final double STEP_TOLERANCE = 1e-6;

    public ControllerTerms {
        Objects.requireNonNull(saltStep, "saltStep");
        Objects.requireNonNull(newBedSaltStep, "newBedSaltStep");
        Objects.requireNonNull(volumeUnit, "volumeUnit");
        Objects.requireNonNull(reserveStep, "reserveStep");
        Objects.requireNonNull(hardness, "hardness");
        Guard.positive(capacityUnit.toBase(capacityStep), "capacityStep");
    }

    /** Hardness and capacity in the usual steps of their units. */
    public static ControllerTerms of(HardnessUnit hardnessUnit, CapacityUnit capacityUnit, SaltStep saltStep, VolumeUnit volumeUnit,
            ReserveStep reserveStep) {
        return new ControllerTerms(HardnessStep.of(hardnessUnit), capacityUnit, assumedStep(capacityUnit), saltStep,
                saltStep, volumeUnit, reserveStep);
    }

    /** Step of a capacity, in its unit. */
    public static double assumedStep(CapacityUnit unit) {
        return switch (unit) {
            case GRAIN -> 100;
            case KILOGRAIN, EQUIVALENT, MOLE -> 0.1;
            case GRAM -> 10;
            case GERMAN_DEGREE_CUBIC_METRE, FRENCH_DEGREE_CUBIC_METRE -> 1;
        };
    }

    /** Step of a volume that is counted in gallons or litres, in that unit. */
    public static final int ASSUMED_VOLUME_STEP = 10;

    /** Step of a volume: ten gallons, or ten litres. */
    public static double assumedStepLitres(VolumeUnit unit) {
        return switch (unit) {
            case US_GALLON, IMPERIAL_GALLON, LITRE -> unit.toBase(ASSUMED_VOLUME_STEP);
            case CUBIC_METRE -> unit.toBase(0.01);
            case CUBIC_FOOT -> unit.toBase(1);
        };
    }

    /** The capacity unit of a controller that counts hardness in {@code unit}: capacity is hardness times water. */
    public static CapacityUnit capacityUnitOf(HardnessUnit unit) {
        return switch (unit) {
            case GPG, GPG_IMPERIAL -> CapacityUnit.GRAIN;
            case GERMAN_DEGREE -> CapacityUnit.GERMAN_DEGREE_CUBIC_METRE;
            case FRENCH_DEGREE -> CapacityUnit.FRENCH_DEGREE_CUBIC_METRE;
            case MMOL_PER_L -> CapacityUnit.MOLE;
            case MEQ_PER_L -> CapacityUnit.EQUIVALENT;
            case MG_PER_L -> CapacityUnit.GRAM;
        };
    }

    /** The hardness unit of a controller that counts capacity in {@code unit}, the other way about. */
    public static HardnessUnit hardnessUnitOf(CapacityUnit unit) {
        return switch (unit) {
            case GRAIN, KILOGRAIN -> HardnessUnit.GPG;
            case GERMAN_DEGREE_CUBIC_METRE -> HardnessUnit.GERMAN_DEGREE;
            case FRENCH_DEGREE_CUBIC_METRE -> HardnessUnit.FRENCH_DEGREE;
            case MOLE -> HardnessUnit.MMOL_PER_L;
            case EQUIVALENT -> HardnessUnit.MEQ_PER_L;
            case GRAM -> HardnessUnit.MG_PER_L;
        };
    }

    /** The same for a bed that is still to be bought. */
    public ControllerTerms forNewBed() {
        return new ControllerTerms(hardness, capacityUnit, capacityStep, newBedSaltStep, newBedSaltStep, volumeUnit, reserveStep);
    }

    /** A capacity rounded down to a step, at least one, so that the meter never counts on what is not there; grams as CaCO3. */
    public double capacityDownGrams(double capacityGrams) {
        double steps = Math.floor(capacityUnit.fromBase(capacityGrams) / capacityStep + STEP_TOLERANCE);
        return capacityUnit.toBase(Math.max(1, steps) * capacityStep);
    }
}
