// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.AtomicWeights;

/**
 * Sodium or potassium that softening puts into the water in exchange for hardness.
 */
public final class AddedSalt {

    /** Volume of the glass that answers speak of, litres. */
    public static final double GLASS_LITRES = 0.25;
    /** Sodium above which people on a restricted diet are warned, mg/L. Source: [EPA-822-R-03-006]. */
    public static final double SODIUM_DIET_MG_PER_L = 20;
    /** Taste and parametric value of sodium, mg/L. Source: [WHO-GDWQ]. */
    public static final double SODIUM_TASTE_MG_PER_L = 200;

    private AddedSalt() {
    }

    /**
     * Sodium added by exchange, two sodium ions for each divalent one.
     *
     * <pre>Na = 2 · 22.990 / 100.086 · hardness removed = 0.4594 · hardness removed</pre>
     *
     * @param removedMgPerL hardness removed, with iron and manganese at their equivalents, mg/L as CaCO3
     * @return mg/L. Source: [CIAAW], computed; [CT-DPH-29] prints 46 mg/L per 100 mg/L
     */
    public static double sodiumMgPerL(double removedMgPerL) {
        return 2 * AtomicWeights.SODIUM / AtomicWeights.CALCIUM_CARBONATE
                * Guard.notNegative(removedMgPerL, "removedMgPerL");
    }

    /**
     * Potassium added by exchange when the salt is potassium chloride.
     *
     * <pre>K = 2 · 39.098 / 100.086 · hardness removed = 0.7813 · hardness removed</pre>
     *
     * @param removedMgPerL as for sodium
     * @return mg/L. Source: [CIAAW], computed. [CT-DPH-29] prints 76 mg/L per 100 mg/L, 3 % less than the equivalents
     *     give; the chemistry is followed
     */
    public static double potassiumMgPerL(double removedMgPerL) {
        return 2 * AtomicWeights.POTASSIUM / AtomicWeights.CALCIUM_CARBONATE
                * Guard.notNegative(removedMgPerL, "removedMgPerL");
    }
}
