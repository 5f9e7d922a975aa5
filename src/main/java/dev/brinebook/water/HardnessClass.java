// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.HardnessUnit;

/** The words for a hardness. Three publics use three scales that disagree, so every answer gives all three. */
public enum HardnessClass {
    SOFT,
    SLIGHTLY_HARD,
    MODERATELY_HARD,
    MEDIUM,
    HARD,
    VERY_HARD;

    /** Upper ends of soft, moderately hard and hard, mg/L. Source: [USGS-HARDNESS]. */
    private static final double[] USGS_MG_PER_L = {60, 120, 180};

    /** Upper ends of soft and medium, mmol/L. Source: [WRMG]. */
    private static final double[] GERMAN_MMOL_PER_L = {1.5, 2.5};
    /** Upper ends of soft, slightly hard, moderately hard and hard, gpg. Source: [CP-HARDNESS-CLASSES]. */
    private static final double[] TRADE_GPG = {1, 3.5, 7, 10.5};
    /** Class by the US Geological Survey. Its print leaves gaps such as 60 to 61; the upper end belongs to the softer. */
    public static HardnessClass usgs(double hardnessMgPerL) {
        return pick(hardnessMgPerL, USGS_MG_PER_L, SOFT, MODERATELY_HARD, HARD, VERY_HARD);
    }

    /**
     * Class by the German detergents act: soft below 1.5 mmol/L, medium from 1.5 to 2.5, hard above. The lower end is
     * exclusive in the act, so that exactly 1.5 mmol/L is medium.
     */
    public static HardnessClass german(double hardnessMgPerL) {
        double mmolPerL = HardnessUnit.MMOL_PER_L.fromBase(Guard.notNegative(hardnessMgPerL, "hardnessMgPerL"));
        if (mmolPerL < GERMAN_MMOL_PER_L[0]) {
            return SOFT;
        }
        return mmolPerL <= GERMAN_MMOL_PER_L[1] ? MEDIUM : HARD;
    }

    /** Class by the US trade: soft below 1 gpg. */
    public static HardnessClass trade(double hardnessMgPerL) {
        return pick(HardnessUnit.GPG.fromBase(hardnessMgPerL), TRADE_GPG,
                SOFT, SLIGHTLY_HARD, MODERATELY_HARD, HARD, VERY_HARD);
    }

    private static HardnessClass pick(double hardness, double[] upperEnds, HardnessClass... classes) {
        Guard.notNegative(hardness, "hardness");
        int at = 0;
        while (at < upperEnds.length && hardness > upperEnds[at]) {
            at++;
        }
        return classes[at];
    }
}
