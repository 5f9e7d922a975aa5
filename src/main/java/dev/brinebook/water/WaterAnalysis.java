// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water;

import dev.brinebook.guard.Guard;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What a water test found. A substance that was not tested is absent, never zero.
 *
 * @param hardnessMgPerL calcium and magnesium hardness, mg/L as CaCO3
 * @param hardnessUncertaintyMgPerL uncertainty of the test, mg/L as CaCO3
 * @param ironMgPerL iron, in the form that {@code ironForm} says
 * @param manganeseMgPerL manganese
 * @param sodiumMgPerL sodium of the raw water
 * @param ph pH
 * @param dissolvedSolidsMgPerL total dissolved solids
 * @param freeChlorineMgPerL free chlorine
 * @param hydrogenSulfideMgPerL hydrogen sulfide
 * @param turbidityNtu turbidity, nephelometric units
 * @param temperatureCelsius the coldest the water gets in use
 * @param ironForm how the iron is present
 * @param supply where the water comes from
 * @param bacteriaTested whether a bacteria test was made and passed
 */
public record WaterAnalysis(double hardnessMgPerL, double hardnessUncertaintyMgPerL, OptionalDouble ironMgPerL,
        OptionalDouble manganeseMgPerL, OptionalDouble sodiumMgPerL, OptionalDouble ph,
        OptionalDouble dissolvedSolidsMgPerL, OptionalDouble freeChlorineMgPerL, OptionalDouble hydrogenSulfideMgPerL,
        OptionalDouble turbidityNtu, double temperatureCelsius, IronForm ironForm, Supply supply,
        boolean bacteriaTested) {

    public static final double MAX_UNCERTAINTY_MG_PER_L = 500;
    /** Highest iron and manganese accepted, mg/L: more is waste water, not drinking water. */
    public static final double MAX_IRON_MG_PER_L = 100;
    public static final double MAX_MANGANESE_MG_PER_L = 50;
    public static final double MAX_SODIUM_MG_PER_L = 10_000;
    public static final double MAX_POTASSIUM_MG_PER_L = 1_000;
    public static final double MAX_DISSOLVED_SOLIDS_MG_PER_L = 35_000;
    public static final double MAX_CHLORINE_MG_PER_L = 20;
    public static final double MAX_HYDROGEN_SULFIDE_MG_PER_L = 50;
    public static final double MAX_TURBIDITY_NTU = 1_000;
    public static final double MAX_PH = 14;
    public static final double MIN_TEMPERATURE_CELSIUS = 1;
    public static final double MAX_TEMPERATURE_CELSIUS = 35;
    /** Uncertainty of the hardness when none is given: the test is taken as exact. */
    public static final double ASSUMED_UNCERTAINTY_MG_PER_L = 0;
    /** Temperature when none is given: between deep ground water and a mains in winter. */
    public static final double ASSUMED_TEMPERATURE_CELSIUS = 12;

    /** How iron is present in the water. Only dissolved iron is exchanged. */
    public enum IronForm {
        DISSOLVED, VISIBLE, COLLOIDAL, BACTERIAL
    }

    /** Where the water comes from. */
    public enum Supply {
        PUBLIC_SUPPLY, PRIVATE_WELL
    }

    public WaterAnalysis {
        Guard.within(hardnessMgPerL, 0, Hardness.MAX_MG_PER_L, "hardnessMgPerL");
        Guard.within(hardnessUncertaintyMgPerL, 0, MAX_UNCERTAINTY_MG_PER_L, "hardnessUncertaintyMgPerL");
        within(ironMgPerL, MAX_IRON_MG_PER_L, "ironMgPerL");
        within(manganeseMgPerL, MAX_MANGANESE_MG_PER_L, "manganeseMgPerL");
        within(sodiumMgPerL, MAX_SODIUM_MG_PER_L, "sodiumMgPerL");
        within(ph, MAX_PH, "ph");
        within(dissolvedSolidsMgPerL, MAX_DISSOLVED_SOLIDS_MG_PER_L, "dissolvedSolidsMgPerL");
        within(freeChlorineMgPerL, MAX_CHLORINE_MG_PER_L, "freeChlorineMgPerL");
        within(hydrogenSulfideMgPerL, MAX_HYDROGEN_SULFIDE_MG_PER_L, "hydrogenSulfideMgPerL");
        within(turbidityNtu, MAX_TURBIDITY_NTU, "turbidityNtu");
        Guard.within(temperatureCelsius, MIN_TEMPERATURE_CELSIUS, MAX_TEMPERATURE_CELSIUS, "temperatureCelsius");
        Objects.requireNonNull(ironForm, "ironForm");
        Objects.requireNonNull(supply, "supply");
    }

    /** The water of a hardness test alone: nothing else was tested. */
    public static Builder ofHardness(double hardnessMgPerL) {
        return new Builder(hardnessMgPerL);
    }

    /** This water, to be changed. */
    public Builder toBuilder() {
        Builder builder = new Builder(hardnessMgPerL);
        builder.hardnessUncertaintyMgPerL = hardnessUncertaintyMgPerL;
        builder.ironMgPerL = ironMgPerL;
        builder.manganeseMgPerL = manganeseMgPerL;
        builder.sodiumMgPerL = sodiumMgPerL;
        builder.ph = ph;
        builder.dissolvedSolidsMgPerL = dissolvedSolidsMgPerL;
        builder.freeChlorineMgPerL = freeChlorineMgPerL;
        builder.hydrogenSulfideMgPerL = hydrogenSulfideMgPerL;
        builder.turbidityNtu = turbidityNtu;
        builder.temperatureCelsius = temperatureCelsius;
        builder.ironForm = ironForm;
        builder.supply = supply;
        builder.bacteriaTested = bacteriaTested;
        return builder;
    }

    /** Sets what else a test found; each value in the unit of its component. */
    public static final class Builder {

        private double hardnessMgPerL;
        private double hardnessUncertaintyMgPerL = ASSUMED_UNCERTAINTY_MG_PER_L;
        private OptionalDouble ironMgPerL = OptionalDouble.empty();
        private OptionalDouble manganeseMgPerL = OptionalDouble.empty();
        private OptionalDouble sodiumMgPerL = OptionalDouble.empty();
        private OptionalDouble ph = OptionalDouble.empty();
        private OptionalDouble dissolvedSolidsMgPerL = OptionalDouble.empty();
        private OptionalDouble freeChlorineMgPerL = OptionalDouble.empty();
        private OptionalDouble hydrogenSulfideMgPerL = OptionalDouble.empty();
        private OptionalDouble turbidityNtu = OptionalDouble.empty();
        private double temperatureCelsius = ASSUMED_TEMPERATURE_CELSIUS;
        private IronForm ironForm = IronForm.DISSOLVED;
        private Supply supply = Supply.PUBLIC_SUPPLY;
        private boolean bacteriaTested;

        private Builder(double hardnessMgPerL) {
            this.hardnessMgPerL = hardnessMgPerL;
        }

        public Builder hardnessMgPerL(double value) {
            hardnessMgPerL = value;
            return this;
        }

        public Builder hardnessUncertaintyMgPerL(double value) {
            hardnessUncertaintyMgPerL = value;
            return this;
        }

        public Builder ironMgPerL(double value) {
            return ironMgPerL(OptionalDouble.of(value));
        }

        public Builder ironMgPerL(OptionalDouble value) {
            ironMgPerL = value;
            return this;
        }

        public Builder manganeseMgPerL(double value) {
            return manganeseMgPerL(OptionalDouble.of(value));
        }

        public Builder manganeseMgPerL(OptionalDouble value) {
            manganeseMgPerL = value;
            return this;
        }

        public Builder sodiumMgPerL(double value) {
            return sodiumMgPerL(OptionalDouble.of(value));
        }

        public Builder sodiumMgPerL(OptionalDouble value) {
            sodiumMgPerL = value;
            return this;
        }

        public Builder ph(double value) {
            return ph(OptionalDouble.of(value));
        }

        public Builder ph(OptionalDouble value) {
            ph = value;
            return this;
        }

        public Builder dissolvedSolidsMgPerL(double value) {
            return dissolvedSolidsMgPerL(OptionalDouble.of(value));
        }

        public Builder dissolvedSolidsMgPerL(OptionalDouble value) {
            dissolvedSolidsMgPerL = value;
            return this;
        }

        public Builder freeChlorineMgPerL(double value) {
            return freeChlorineMgPerL(OptionalDouble.of(value));
        }

        public Builder freeChlorineMgPerL(OptionalDouble value) {
            freeChlorineMgPerL = value;
            return this;
        }

        public Builder hydrogenSulfideMgPerL(double value) {
            return hydrogenSulfideMgPerL(OptionalDouble.of(value));
        }

        public Builder hydrogenSulfideMgPerL(OptionalDouble value) {
            hydrogenSulfideMgPerL = value;
            return this;
        }

        public Builder turbidityNtu(double value) {
            return turbidityNtu(OptionalDouble.of(value));
        }

        public Builder turbidityNtu(OptionalDouble value) {
            turbidityNtu = value;
            return this;
        }

        public Builder temperatureCelsius(double value) {
            temperatureCelsius = value;
            return this;
        }

        public Builder ironForm(IronForm value) {
            ironForm = value;
            return this;
        }

        public Builder supply(Supply value) {
            supply = value;
            return this;
        }

        public Builder bacteriaTested(boolean value) {
            bacteriaTested = value;
            return this;
        }

        public WaterAnalysis build() {
            return new WaterAnalysis(hardnessMgPerL, hardnessUncertaintyMgPerL, ironMgPerL, manganeseMgPerL, sodiumMgPerL, ph,
                    dissolvedSolidsMgPerL, freeChlorineMgPerL, hydrogenSulfideMgPerL, turbidityNtu, temperatureCelsius, ironForm, supply,
                            bacteriaTested);
        }
    }

    /**
     * Hardness with iron and manganese counted by {@code factors}; what was not tested counts nothing, nor does iron that is no
     * ion: a resin does not exchange it, and no setting takes it out.
     */
    public CompensatedHardness compensated(CompensationFactors factors) {
        return CompensatedHardness.of(hardnessMgPerL, dissolvedIronMgPerL(), manganeseMgPerL.orElse(0), factors);
    }

    /** Iron that a resin exchanges, mg/L, as far as tested. */
    public double dissolvedIronMgPerL() {
        return ironForm == IronForm.DISSOLVED ? ironMgPerL.orElse(0) : 0;
    }

    /** Iron and manganese together, mg/L, as far as tested. */
    public double ironAndManganeseMgPerL() {
        return ironMgPerL.orElse(0) + manganeseMgPerL.orElse(0);
    }

    private static void within(OptionalDouble value, double max, String name) {
        value.ifPresent(given -> Guard.within(given, 0, max, name));
    }
}
