// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water;

import dev.brinebook.guard.Guard;

/**
 * Hardness once iron and manganese count, line by line.
 *
 * <p>The sum is what a controller is set to. It is not what the water holds: what exhausts a bed, the sodium that softening adds and
 * charge balance take {@link #realMgPerL}.
 *
 * @param hardnessMgPerL calcium and magnesium hardness as tested
 * @param ironLineMgPerL what iron adds by the factor set
 * @param manganeseLineMgPerL what manganese adds by the factor set
 * @param realMgPerL hardness with iron and manganese at their chemical equivalents: what a litre loads on the resin
 */
public record CompensatedHardness(double hardnessMgPerL, double ironLineMgPerL, double manganeseLineMgPerL,
        double realMgPerL) {

    /** Share of rounding to six digits, so that 18 dH that came as 321.264 mg/L, which is 18.00002, is not set as 19. */
    private static final double ROUNDING_SHARE = 1e-5;

    /**
     * Adds iron and manganese to a hardness.
     *
     * <pre>compensated = hardness + a_Fe Fe + a_Mn Mn</pre>
     *
     * @param hardnessMgPerL as tested, 0 to {@value Hardness#MAX_MG_PER_L} mg/L
     * @param ironMgPerL dissolved iron, 0 or above
     * @param manganeseMgPerL manganese, 0 or above
     * @param factors a_Fe and a_Mn. Source: [CP-IRON-FACTORS]
     */
    public static CompensatedHardness of(double hardnessMgPerL, double ironMgPerL, double manganeseMgPerL,
            CompensationFactors factors) {
        Guard.within(hardnessMgPerL, 0, Hardness.MAX_MG_PER_L, "hardnessMgPerL");
        Guard.notNegative(ironMgPerL, "ironMgPerL");
        Guard.notNegative(manganeseMgPerL, "manganeseMgPerL");
        CompensationFactors chemical = CompensationFactors.STOICHIOMETRIC;
        return new CompensatedHardness(hardnessMgPerL, factors.ironMgPerMg() * ironMgPerL,
                factors.manganeseMgPerMg() * manganeseMgPerL,
                hardnessMgPerL + chemical.ironMgPerMg() * ironMgPerL + chemical.manganeseMgPerMg() * manganeseMgPerL);
    }

    /** The exact sum, mg/L as CaCO3. */
    public double totalMgPerL() {
        return hardnessMgPerL + ironLineMgPerL + manganeseLineMgPerL;
    }

    /**
     * A water with its load on the resin multiplied by {@code factor}: harder or softer with the same iron and manganese, and without any
     * calcium and magnesium with less of these two.
     */
    public CompensatedHardness times(double factor) {
        double real = Guard.positive(factor, "factor") * realMgPerL;
        double hardness = hardnessMgPerL + real - realMgPerL;
        if (hardness >= 0) {
            return new CompensatedHardness(hardness, ironLineMgPerL, manganeseLineMgPerL, real);
        }
        double metals = real / (realMgPerL - hardnessMgPerL);
        return new CompensatedHardness(0, metals * ironLineMgPerL, metals * manganeseLineMgPerL, real);
    }

    /**
     * The number to set on a controller: the sum and the test's uncertainty, rounded up to a step, never down.
     *
     * @param step unit and step that the controller is set in; what is returned is in this unit
     * @param uncertaintyMgPerL uncertainty of the test, 0 or above; a drop-count kit resolves 1 gpg
     */
    public double setting(HardnessStep step, double uncertaintyMgPerL) {
        return step.size() * wholeUp(step.unit().fromBase(totalMgPerL()
                + Guard.notNegative(uncertaintyMgPerL, "uncertaintyMgPerL")) / step.size());
    }

    private static double wholeUp(double value) {
        return Math.ceil(value * (1 - ROUNDING_SHARE));
    }
}
