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
