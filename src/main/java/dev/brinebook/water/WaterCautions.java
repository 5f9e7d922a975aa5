package dev.brinebook.water;

import dev.brinebook.caution.Caution;
import java.util.EnumSet;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What a water analysis must make a person careful about. None is an error.
 *
 * <p>The limits are those of the sources that each {@link Caution} names.
 */
public final class WaterCautions {

    /** Iron above which it stains, mg/L. Source for this and the next: [NSDWR]. */
    public static final double IRON_STAINS_MG_PER_L = 0.3;
    public static final double MANGANESE_STAINS_MG_PER_L = 0.05;
    static final double LOWEST_PH = 6.5;
    private static final double HIGHEST_PH = 8.5;
    private static final double SOLIDS_TASTE_MG_PER_L = 500;
    /** Iron and manganese from which public plants must treat first, mg/L. Source: [IL-604]. */
    private static final double TREATMENT_MG_PER_L = 1;
    /** Iron and solids above which the lowest salt doses do not hold, mg/L. Source: [TRADE-EFFICIENT]. */
    private static final double LOW_DOSE_IRON_MG_PER_L = 2;
    private static final double LOW_DOSE_SOLIDS_MG_PER_L = 750;
    /** Iron and manganese above which the resin is no treatment, mg/L. Source: [NDSU-WQ1031]. */
    static final double TREAT_FIRST_MG_PER_L = 10;
    /** Manganese health notice, mg/L. Source: [NH-DWGB-3-8]. */
    private static final double MANGANESE_INFANTS_MG_PER_L = 0.3;
    /** Free chlorine that shortens resin life, mg/L. Source: [CP-RESIN-CARE]. */
    public static final double CHLORINE_HARMS_MG_PER_L = 1;
    /** Turbidity before ion exchange, NTU. Source: [TEN-STATES]. */
    static final double TURBIDITY_NTU = 5;
    /** Water that counts as cold, degrees Celsius. Source: [WCP-2023]. */
    public static final double COLD_CELSIUS = 10;

    private WaterCautions() {
    }

    /** Cautions of the raw water as tested. */
    public static Set<Caution> of(WaterAnalysis water) {
        Set<Caution> cautions = EnumSet.noneOf(Caution.class);
        double together = water.ironAndManganeseMgPerL();
        add(cautions, together > TREAT_FIRST_MG_PER_L, Caution.IRON_TREAT_FIRST);
        add(cautions, together >= TREATMENT_MG_PER_L, Caution.IRON_BEFORE_RESIN);
        add(cautions, above(water.ironMgPerL(), IRON_STAINS_MG_PER_L), Caution.IRON_STAINS);
        add(cautions, above(water.manganeseMgPerL(), MANGANESE_STAINS_MG_PER_L), Caution.MANGANESE_STAINS);
        add(cautions, above(water.manganeseMgPerL(), MANGANESE_INFANTS_MG_PER_L), Caution.MANGANESE_INFANTS);
        add(cautions, water.ironMgPerL().isEmpty(), Caution.IRON_NOT_TESTED);
        add(cautions, water.ironForm() != WaterAnalysis.IronForm.DISSOLVED, Caution.IRON_NOT_DISSOLVED);
        add(cautions, lowestDosesWillNotHold(water), Caution.LOW_DOSE_WILL_NOT_HOLD);
        add(cautions, above(water.dissolvedSolidsMgPerL(), SOLIDS_TASTE_MG_PER_L), Caution.DISSOLVED_SOLIDS_TASTE);
        add(cautions, above(water.ph(), HIGHEST_PH) || below(water.ph(), LOWEST_PH), Caution.PH_OUT_OF_RANGE);
        add(cautions, above(water.hydrogenSulfideMgPerL(), 0), Caution.HYDROGEN_SULFIDE);
        add(cautions, above(water.freeChlorineMgPerL(), CHLORINE_HARMS_MG_PER_L), Caution.CHLORINE_RESIN_LIFE);
        add(cautions, above(water.turbidityNtu(), TURBIDITY_NTU), Caution.TURBIDITY_FILTER_FIRST);
        add(cautions, water.supply() == WaterAnalysis.Supply.PRIVATE_WELL && !water.bacteriaTested(),
                Caution.WELL_WITHOUT_BACTERIA_TEST);
        add(cautions, water.temperatureCelsius() < COLD_CELSIUS, Caution.COLD_WATER);
        return cautions;
    }

    /** Whether the lowest salt doses fail on this water: iron above 2 or solids above 750 mg/L. [TRADE-EFFICIENT]. */
    public static boolean lowestDosesWillNotHold(WaterAnalysis water) {
        return above(water.ironMgPerL(), LOW_DOSE_IRON_MG_PER_L)
                || above(water.dissolvedSolidsMgPerL(), LOW_DOSE_SOLIDS_MG_PER_L);
    }

    private static void add(Set<Caution> cautions, boolean applies, Caution caution) {
        if (applies) {
            cautions.add(caution);
        }
    }

    private static boolean above(OptionalDouble value, double limit) {
        return value.isPresent() && value.getAsDouble() > limit;
    }

    private static boolean below(OptionalDouble value, double limit) {
        return value.isPresent() && value.getAsDouble() < limit;
    }
}
