// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.softener;

import dev.brinebook.api.Alternatives;
import dev.brinebook.api.Explanation;
import dev.brinebook.api.Property;
import dev.brinebook.api.Resolved;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.api.quantity.HardnessQuantity;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.household.Country;
import dev.brinebook.model.Model;
import dev.brinebook.model.ModelChange;
import dev.brinebook.quantity.CapacityUnit;
import dev.brinebook.quantity.HardnessUnit;
import dev.brinebook.quantity.MassUnit;
import dev.brinebook.quantity.Quantity;
import dev.brinebook.quantity.SaltDoseUnit;
import dev.brinebook.quantity.VolumeUnit;
import dev.brinebook.softener.ControllerTerms;
import dev.brinebook.softener.ReserveStep;
import dev.brinebook.softener.SaltStep;
import dev.brinebook.water.HardnessStep;
import java.math.BigDecimal;

@SchemaDescription("Units and steps of the controller's settings. Recommended settings use them and are rounded in the safe direction: "
        + "hardness, salt and reserve up, capacity down.")
@Alternatives({"refillMinutesStep", "saltStep"})
@Alternatives({"reserveDaysStep", "reservePercentStep"})
public record ControllerUnitsRequest(
        @Property(value = "Step of the hardness setting.", min = ControllerTerms.MIN_HARDNESS_STEP_MG_PER_L,
                max = ControllerTerms.MAX_HARDNESS_STEP_MG_PER_L, unit = "mg/L", fallback = "a usual step of the unit of"
                + " hardnessSetting; else 1 gpg, and in metric answers 1 dH, in France 1 fH, in the United Kingdom 10 mg/L")
        HardnessQuantity hardnessStep,
        @Property(value = "Step of the capacity setting.", min = ControllerTerms.MIN_CAPACITY_STEP_GRAMS,
                max = ControllerTerms.MAX_CAPACITY_STEP_GRAMS, unit = "g", fallback = "a usual step of the unit of capacitySetting;"
                + " else 100 gr with gpg, 1 dH.m3 with dH, 1 fH.m3 with fH, 0.1 mol with mmol/L, 0.1 eq with meq/L, 10 g with mg/L")
        CapacityQuantity capacityStep,
        @Property(value = "Step of the salt per regeneration. Give this, or refillMinutesStep.",
                min = SaltStep.MIN_MASS_GRAMS / 1000, max = SaltStep.MAX_MASS_GRAMS / 1000, unit = "kg",
                fallback = SaltStep.PoundsPerCubicFoot.ASSUMED_STEP + " lb/ft3, and in metric answers "
                + ControllerUnitsRequest.ASSUMED_SALT_STEP_KILOGRAMS + " kg") MassQuantity saltStep,
        @Property(value = "Step of the brine refill, if its minutes set the salt.", min = SaltStep.MIN_MINUTES,
                max = SaltStep.MAX_MINUTES, unit = "minutes", fallback = "saltStep", example = "0.1") BigDecimal refillMinutesStep,
        @Property(value = "Step of the reserve, if it is set as a share of the water between regenerations. Without this or "
                + "reserveDaysStep, the reserve is a volume in steps of preferences.reserveStep.", min = ReserveStep.MIN_PERCENT,
                max = ReserveStep.MAX_PERCENT,
                unit = "%", fallback = "a volume", example = "5") BigDecimal reservePercentStep,
        @Property(value = "Step of the reserve, if it is set in days of mean use.", min = ReserveStep.MIN_DAYS,
                max = ReserveStep.MAX_DAYS, unit = "days", fallback = "a volume", example = "1") BigDecimal reserveDaysStep) {

    static final ControllerUnitsRequest NONE = new ControllerUnitsRequest(null, null, null, null, null, null);
    private static final String POINTER = "/preferences/controller/";
    /** Step of the salt where the answer is metric. Common practice, no source is at hand. */
    static final double ASSUMED_SALT_STEP_KILOGRAMS = 0.1;

    /**
     * The terms in the domain, with every default recorded in {@code explanation}.
     *
     * @param control the existing control, whose units count where it has any; or null
     * @param country where the household lives, or null
     * @param volumeStep step of a reserve that is a volume, or null
     */
    ControllerTerms toDomain(ControlRequest control, Country country, VolumeQuantity volumeStep, AnswerUnits units,
            Model model, Explanation explanation) {
        HardnessUnit unit = hardnessUnit(control, country, units);
        CapacityUnit capacity = capacityUnit(control, unit);
        HardnessStep hardness = hardnessStep == null ? HardnessStep.of(unit)
                : new HardnessStep(unit, hardnessStep.value().doubleValue());
        double capacitySize = capacityStep != null ? capacityStep.value().doubleValue() : ControllerTerms.assumedStep(capacity);
        assumeStep("hardnessStep", hardnessStep, hardness.size(), unit.symbol(), explanation);
        assumeStep("capacityStep", capacityStep, capacitySize, capacity.symbol(), explanation);
        VolumeUnit volume = volumeStep != null ? volumeStep.unit() : units == AnswerUnits.METRIC ? VolumeUnit.LITRE
                : VolumeUnit.US_GALLON;
        SaltStep salt = salt(units, explanation);
        return new ControllerTerms(hardness, capacity, capacitySize, salt,
                model.has(ModelChange.SALT_STEPS_OF_NEW_BEDS) ? salt : salt.forAnyBed(), volume,
                reserve(volumeStep, volume, explanation));
    }

    private HardnessUnit hardnessUnit(ControlRequest control, Country country, AnswerUnits units) {
        if (hardnessStep != null) {
            return hardnessStep.unit();
        }
        if (control != null && control.hardnessSetting() != null) {
            return control.hardnessSetting().unit();
        }
        CapacityUnit capacity = capacityStep != null ? capacityStep.unit()
                : control != null && control.capacitySetting() != null ? control.capacitySetting().unit() : CapacityUnit.GRAM;
        return capacity == CapacityUnit.GRAM ? usualHardnessUnit(country, units) : ControllerTerms.hardnessUnitOf(capacity);
    }

    /** Grains per gallon in the United States; elsewhere the degree of the country, or what its suppliers write. */
    private static HardnessUnit usualHardnessUnit(Country country, AnswerUnits units) {
        return units == AnswerUnits.US ? HardnessUnit.GPG : country == Country.FRANCE ? HardnessUnit.FRENCH_DEGREE
                : country == Country.UNITED_KINGDOM ? HardnessUnit.MG_PER_L : HardnessUnit.GERMAN_DEGREE;
    }

    private CapacityUnit capacityUnit(ControlRequest control, HardnessUnit hardness) {
        return capacityStep != null ? capacityStep.unit()
                : control != null && control.capacitySetting() != null ? control.capacitySetting().unit()
                : ControllerTerms.capacityUnitOf(hardness);
    }

    private SaltStep salt(AnswerUnits units, Explanation explanation) {
        if (refillMinutesStep != null) {
            explanation.assume(Resolved.of(POINTER + "refillMinutesStep", refillMinutesStep, "minutes"));
            return new SaltStep.RefillMinutes(refillMinutesStep.doubleValue());
        }
        if (units == AnswerUnits.METRIC || saltStep != null) {
            assumeStep("saltStep", saltStep, ASSUMED_SALT_STEP_KILOGRAMS, MassUnit.KILOGRAM.symbol(), explanation);
        } else { // a request gives a mass: this step depends on the resin
            explanation.assume(Resolved.of("saltDoseStep", SaltStep.PoundsPerCubicFoot.ASSUMED_STEP,
                    SaltDoseUnit.POUND_PER_CUBIC_FOOT.symbol()).byDefault("OWN-ASSUMPTION"));
        }
        return saltStep != null ? new SaltStep.Mass(saltStep.unit(), saltStep.value().doubleValue())
                : units == AnswerUnits.METRIC ? new SaltStep.Mass(MassUnit.KILOGRAM, ASSUMED_SALT_STEP_KILOGRAMS)
                : ControllerTerms.US.saltStep();
    }

    private ReserveStep reserve(VolumeQuantity volumeStep, VolumeUnit volume, Explanation explanation) {
        if (reservePercentStep != null) {
            explanation.assume(Resolved.of(POINTER + "reservePercentStep", reservePercentStep, "%"));
            return new ReserveStep.Percent(reservePercentStep.doubleValue());
        }
        if (reserveDaysStep != null) {
            explanation.assume(Resolved.of(POINTER + "reserveDaysStep", reserveDaysStep, "days"));
            return new ReserveStep.MeanDays(reserveDaysStep.doubleValue());
        }
        double usual = ControllerTerms.assumedStepLitres(volume);
        return new ReserveStep.Volume(explanation.resolve(volumeStep, usual, Resolved.of("/preferences/reserveStep",
                volume.fromBase(usual), volume.symbol()).byDefault("OWN-ASSUMPTION")));
    }

    private static void assumeStep(String name, Quantity<?> given, double usual, String unit, Explanation explanation) {
        explanation.assume(given != null ? Resolved.of(POINTER + name, given)
                : Resolved.of(POINTER + name, usual, unit).byDefault("OWN-ASSUMPTION"));
    }
}
