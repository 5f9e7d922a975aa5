// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water;

import dev.brinebook.caution.Caution;
import dev.brinebook.quantity.AtomicWeights;
import dev.brinebook.quantity.HardnessUnit;
import java.util.EnumSet;
import java.util.List;
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
    /** Water below this is cold, degrees Celsius. Source: [WCP-2023]. */
    public static final double COLD_CELSIUS = 10;
    /** Hardness from which its unit is doubted, 60 gpg, mg/L as CaCO3. Source: [CP-WATER-TESTS]. */
    static final double HARDEST_USUAL_MG_PER_L = HardnessUnit.GPG.toBase(60);
    /** Hardness below which its unit is doubted where a softener is used, mg/L as CaCO3. Source: [USGS-HARDNESS]. */
    static final double SOFT_MG_PER_L = 60;
    /** Range of pH beyond which a test is doubted; ground water has 6.0 to 8.5. The margins are our own. Source: [HEM-2254]. */
    private static final double ASSUMED_LEAST_PH = 4.5;
    private static final double ASSUMED_MOST_PH = 10.5;
    /** Share of the dissolved solids above which sodium is doubted: sodium carbonate, which is left of soda, weighs 2.3 times as much. */
    private static final double MOST_SODIUM_SHARE = 0.5;
    /** Detection limits of the tests of iron and of free chlorine, mg/L. Source: [CP-WATER-TESTS]. */
    private static final double TRACE_MG_PER_L = 0.1;
    /** Least that a mg/L of hardness as CaCO3 weighs in a residue: as magnesium oxide. Source: [CIAAW]. */
    private static final double LIGHTEST_HARDNESS_SHARE = (AtomicWeights.MAGNESIUM + AtomicWeights.OXYGEN)
            / AtomicWeights.CALCIUM_CARBONATE;

    private WaterCautions() {
    }

    /** Cautions of the raw water as tested. */
    public static Set<Caution> of(WaterAnalysis water) {
        Set<Caution> cautions = EnumSet.noneOf(Caution.class);
        double together = water.ironAndManganeseMgPerL();
        add(cautions, together > TREAT_FIRST_MG_PER_L, Caution.IRON_TREAT_FIRST);
        add(cautions, together >= TREATMENT_MG_PER_L && together <= TREAT_FIRST_MG_PER_L, Caution.IRON_BEFORE_RESIN);
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
        question(water, cautions);
        return cautions;
    }

    /** Whether treatment is advised of a water that can be softened as it is: its cautions on iron say so. */
    public static boolean adviseTreatment(WaterAnalysis water) {
        Set<Caution> cautions = of(water);
        return cautions.contains(Caution.IRON_BEFORE_RESIN) || cautions.contains(Caution.IRON_NOT_DISSOLVED);
    }

    /** What two tests of one water say that seldom holds together. */
    private static void question(WaterAnalysis water, Set<Caution> cautions) {
        OptionalDouble solids = water.dissolvedSolidsMgPerL();
        add(cautions, below(solids, water.hardnessMgPerL()), Caution.HARDNESS_ABOVE_SOLIDS);
        add(cautions, solids.isPresent() && above(water.sodiumMgPerL(), MOST_SODIUM_SHARE * solids.getAsDouble()),
                Caution.SODIUM_ABOVE_SOLIDS);
        add(cautions, above(water.ph(), ASSUMED_MOST_PH) || below(water.ph(), ASSUMED_LEAST_PH), Caution.PH_IMPLAUSIBLE);
        add(cautions, water.dissolvedIronMgPerL() > TRACE_MG_PER_L && above(water.freeChlorineMgPerL(), TRACE_MG_PER_L),
                Caution.CHLORINE_BESIDE_IRON);
    }

    /**
     * The least that the dissolved solids of a water can weigh, mg/L: nothing can be true of a test that finds less.
     *
     * <pre>least = 0.4027 hardness + Na</pre>
     *
     * <p>Hardness as CaCO3 and Na, mg/L; 0.4027 magnesium oxide over calcium carbonate.
     * Source: [CIAAW], computed; [SM1030E] parts against the whole.
     * Deviation: none; real salts weigh two to three times as much.
     */
    public static double leastSolidsMgPerL(double hardnessMgPerL, double sodiumMgPerL) {
        return LIGHTEST_HARDNESS_SHARE * hardnessMgPerL + sodiumMgPerL;
    }

    /** Whether a hardness that was given in another unit was perhaps tested in mg/L. */
    public static boolean isMaybeMgPerL(double hardnessMgPerL) {
        return hardnessMgPerL > HARDEST_USUAL_MG_PER_L;
    }

    /** Whether a hardness that was given in mg/L, for a water that is softened, was perhaps tested in grains per gallon. */
    public static boolean isMaybeGrains(double hardnessMgPerL) {
        return hardnessMgPerL < SOFT_MG_PER_L;
    }

    /** Cautions on the brine of a house whose waste water route is not given: with a public supply, the sewer. */
    public static List<Caution> ofDischarge(WaterAnalysis.Supply supply) {
        return supply == WaterAnalysis.Supply.PRIVATE_WELL ? Caution.OF_DISCHARGE : List.of(Caution.SEWER_SALT_LIMITS);
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
