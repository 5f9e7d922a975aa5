// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.AtomicWeights;
import dev.brinebook.water.WaterAnalysis;

/**
 * The cations of a water, or of a brine, that the resin exchanges.
 *
 * <p>Iron and manganese are left out: their equivalents are small in any water that may be put on a softener, and what
 * they do to a resin is to foul it, which an equilibrium does not describe.
 *
 * @param calciumEquivalentsPerLitre calcium
 * @param magnesiumEquivalentsPerLitre magnesium
 * @param sodiumEquivalentsPerLitre sodium
 * @param potassiumEquivalentsPerLitre potassium
 */
public record FeedWater(double calciumEquivalentsPerLitre, double magnesiumEquivalentsPerLitre,
        double sodiumEquivalentsPerLitre, double potassiumEquivalentsPerLitre) {

    /** Sea water has 0.6; saturated brine of sodium chloride 5.4. */
    public static final double MAX_EQUIVALENTS_PER_LITRE = 6;
    /** Share of the hardness that is calcium when the water test does not give it: the 2:1 of [RESIN-DATA-SHEET]. */
    public static final double ASSUMED_CALCIUM_SHARE = 2 / 3.0;
    /** Sodium when neither sodium nor dissolved solids were tested: an ordinary ground water, 23 mg/L. */
    public static final double ASSUMED_SODIUM_EQUIVALENTS_PER_LITRE = 0.001;

    /** Milligrams of CaCO₃ in an equivalent of hardness: 50,043. */
    static final double MG_PER_EQUIVALENT = 1000 * AtomicWeights.CALCIUM_CARBONATE / 2;

    public FeedWater {
        Guard.notNegative(calciumEquivalentsPerLitre, "calciumEquivalentsPerLitre");
        Guard.notNegative(magnesiumEquivalentsPerLitre, "magnesiumEquivalentsPerLitre");
        Guard.notNegative(sodiumEquivalentsPerLitre, "sodiumEquivalentsPerLitre");
        Guard.notNegative(potassiumEquivalentsPerLitre, "potassiumEquivalentsPerLitre");
        Guard.within(calciumEquivalentsPerLitre + magnesiumEquivalentsPerLitre + sodiumEquivalentsPerLitre
                + potassiumEquivalentsPerLitre, 0, MAX_EQUIVALENTS_PER_LITRE, "all equivalents");
    }

    /** The cations of an analysed water; potassium, which household tests do not measure, is 0 where it is not known. */
    public static FeedWater of(WaterAnalysis water, double calciumShare, double potassiumMgPerL) {
        Guard.within(calciumShare, 0, 1, "calciumShare");
        double hardness = water.hardnessMgPerL() / MG_PER_EQUIVALENT;
        return new FeedWater(hardness * calciumShare, hardness * (1 - calciumShare), sodiumEquivalentsPerLitre(water),
                Guard.notNegative(potassiumMgPerL, "potassiumMgPerL") / (1000 * AtomicWeights.POTASSIUM));
    }

    /**
     * Sodium of a water: as tested, or else what the dissolved solids leave for it.
     *
     * <pre>c = Na / M(Na)  or  c = max(0, TDS − H) / M(NaCl)</pre>
     *
     * <p>c eq/L; Na sodium, TDS dissolved solids, H hardness as CaCO₃, all g/L; M molar masses.
     * Validity: dissolved solids as weighed after drying, where hardness stays behind as carbonate.
     * Source: [CIAAW] atomic weights; the split of the solids is ours.
     * Deviation: all that is not hardness is treated as sodium chloride. Hardness that is sulfate or chloride weighs more, so
     * this rather overstates the sodium, and with it the leakage. Solids less than the hardness leave none.
     */
    static double sodiumEquivalentsPerLitre(WaterAnalysis water) {
        if (water.sodiumMgPerL().isPresent()) {
            return water.sodiumMgPerL().getAsDouble() / (1000 * AtomicWeights.SODIUM);
        }
        if (water.dissolvedSolidsMgPerL().isPresent()) {
            double rest = water.dissolvedSolidsMgPerL().getAsDouble() - water.hardnessMgPerL();
            return Math.max(0, rest) / (1000 * AtomicWeights.SODIUM_CHLORIDE);
        }
        return ASSUMED_SODIUM_EQUIVALENTS_PER_LITRE;
    }

    /** A brine of a salt alone. */
    public static FeedWater brine(Salt salt, double equivalentsPerLitre) {
        return switch (salt) {
            case SODIUM_CHLORIDE -> new FeedWater(0, 0, equivalentsPerLitre, 0);
            case POTASSIUM_CHLORIDE -> new FeedWater(0, 0, 0, equivalentsPerLitre);
        };
    }

    public double hardnessEquivalentsPerLitre() {
        return calciumEquivalentsPerLitre + magnesiumEquivalentsPerLitre;
    }

    public double hardnessMgPerL() {
        return hardnessEquivalentsPerLitre() * MG_PER_EQUIVALENT;
    }

    public double totalEquivalentsPerLitre() {
        return hardnessEquivalentsPerLitre() + sodiumEquivalentsPerLitre + potassiumEquivalentsPerLitre;
    }

    /** In the order of {@link StageEquilibrium}. */
    double[] ions() {
        return new double[] {calciumEquivalentsPerLitre, magnesiumEquivalentsPerLitre, sodiumEquivalentsPerLitre,
            potassiumEquivalentsPerLitre};
    }
}
