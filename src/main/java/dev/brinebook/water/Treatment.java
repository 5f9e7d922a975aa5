// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water;

import dev.brinebook.text.Localizable;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;

/**
 * What must be done to a water before a softener can do its work, in the order in which the water should meet it.
 *
 * <p>Source: each names its own; the order is common practice: what hurts the treatments after it comes first.
 */
public enum Treatment implements Localizable {
    /** Acid dissolves what a neutralising filter is made of, and keeps iron from being oxidised. */
    NEUTRALISE("NEB-G1491",
            water -> water.ph().isPresent() && water.ph().getAsDouble() < WaterCautions.LOWEST_PH),
    REMOVE_SULFIDE("NEB-G1491", water -> water.hydrogenSulfideMgPerL().orElse(0) > 0),
    REMOVE_IRON_BACTERIA("CP-RESIN-CARE",
            water -> isIron(water, WaterAnalysis.IronForm.BACTERIAL)),
    FILTER_IRON("CP-RESIN-CARE", water -> isIron(water, WaterAnalysis.IronForm.VISIBLE)
            || isIron(water, WaterAnalysis.IronForm.COLLOIDAL)),
    REMOVE_IRON("NDSU-WQ1031",
            water -> water.ironAndManganeseMgPerL() > WaterCautions.TREAT_FIRST_MG_PER_L),
    FILTER_TURBIDITY("TEN-STATES",
            water -> water.turbidityNtu().orElse(0) > WaterCautions.TURBIDITY_NTU);

    private final String sourceKey;

    private final Predicate<WaterAnalysis> needed;

    Treatment(String sourceKey, Predicate<WaterAnalysis> needed) {
        this.sourceKey = sourceKey;
        this.needed = needed;
    }

    /** Key of the source that says so. */
    public String sourceKey() {
        return sourceKey;
    }

    /** All that a water needs, first things first; empty where it can be softened as it is. */
    public static List<Treatment> neededBy(WaterAnalysis water) {
        return Arrays.stream(values()).filter(treatment -> treatment.needed.test(water)).toList();
    }

    /** Iron of a form, above the limit of staining [NSDWR] or not measured: whoever names its form has seen it. */
    private static boolean isIron(WaterAnalysis water, WaterAnalysis.IronForm form) {
        return water.ironForm() == form && water.ironMgPerL().orElse(Double.POSITIVE_INFINITY) > WaterCautions.IRON_STAINS_MG_PER_L;
    }

    @Override
    public String textId() {
        return Localizable.idOf("treatment", this);
    }
}
