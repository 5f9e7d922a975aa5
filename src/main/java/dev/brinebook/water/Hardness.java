// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water;

import dev.brinebook.guard.Guard;

/** Hardness of a water and the classes it falls in. Hardness is in mg/L as CaCO3 throughout. */
public final class Hardness {

    /** More than sea water, so that any test result fits. */
    public static final double MAX_MG_PER_L = 10_000;
    /** Highest calcium or magnesium accepted, mg/L; both together stay within {@link #MAX_MG_PER_L}. */
    public static final double MAX_ION_MG_PER_L = 1_500;

    private static final double CALCIUM_FACTOR = 2.497;
    private static final double MAGNESIUM_FACTOR = 4.118;

    private Hardness() {
    }

    /**
     * Hardness from calcium and magnesium.
     *
     * <pre>hardness = 2.497 Ca + 4.118 Mg</pre>
     *
     * @param calciumMgPerL Ca, 0 to {@value #MAX_ION_MG_PER_L} mg/L
     * @param magnesiumMgPerL Mg, 0 to {@value #MAX_ION_MG_PER_L} mg/L
     * @return mg/L as CaCO3. Source: [SM2340B] calculation; the factors are molar masses' ratios to four digits
     */
    public static double fromIonsMgPerL(double calciumMgPerL, double magnesiumMgPerL) {
        Guard.within(calciumMgPerL, 0, MAX_ION_MG_PER_L, "calciumMgPerL");
        Guard.within(magnesiumMgPerL, 0, MAX_ION_MG_PER_L, "magnesiumMgPerL");
        return CALCIUM_FACTOR * calciumMgPerL + MAGNESIUM_FACTOR * magnesiumMgPerL;
    }
}
