package dev.brinebook.water;

import dev.brinebook.wording.Worded;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;

/**
 * What must be done to a water before a softener can do its work, in the order in which the water should meet it.
 *
 * <p>Source: each names its own; the order is common practice: what hurts the treatments after it comes first.
 */
public enum Treatment implements Worded {
    /** Acid dissolves what a neutralising filter is made of, and keeps iron from being oxidised. */
    NEUTRALISE("NEB-G1491", "raise the pH to 6.5 or more",
            water -> water.ph().isPresent() && water.ph().getAsDouble() < WaterCautions.LOWEST_PH),
    REMOVE_SULFIDE("NEB-G1491", "remove the hydrogen sulfide", water -> water.hydrogenSulfideMgPerL().orElse(0) > 0),
    REMOVE_IRON_BACTERIA("CP-RESIN-CARE", "disinfect the well and remove the iron that bacteria hold",
            water -> isIron(water, WaterAnalysis.IronForm.BACTERIAL)),
    FILTER_IRON("CP-RESIN-CARE", "filter the visible or colloidal iron out", water -> isIron(water, WaterAnalysis.IronForm.VISIBLE)
            || isIron(water, WaterAnalysis.IronForm.COLLOIDAL)),
    REMOVE_IRON("NDSU-WQ1031", "bring iron and manganese together below 10 mg/L",
            water -> water.ironAndManganeseMgPerL() > WaterCautions.TREAT_FIRST_MG_PER_L),
    FILTER_TURBIDITY("TEN-STATES", "filter the water below 5 NTU",
            water -> water.turbidityNtu().orElse(0) > WaterCautions.TURBIDITY_NTU);

    private final String sourceKey;
    private final String words;
    private final Predicate<WaterAnalysis> needed;

    Treatment(String sourceKey, String words, Predicate<WaterAnalysis> needed) {
        this.sourceKey = sourceKey;
        this.words = words;
        this.needed = needed;
    }

    /** Key of the source that says so. */
    public String sourceKey() {
        return sourceKey;
    }

    @Override
    public String words() {
        return words;
    }

    /** All that a water needs, first things first; empty where it can be softened as it is. */
    public static List<Treatment> neededBy(WaterAnalysis water) {
        return Arrays.stream(values()).filter(treatment -> treatment.needed.test(water)).toList();
    }

    /** Iron of a form, above the limit of staining [NSDWR] or not measured: whoever names its form has seen it. */
    private static boolean isIron(WaterAnalysis water, WaterAnalysis.IronForm form) {
        return water.ironForm() == form && water.ironMgPerL().orElse(Double.POSITIVE_INFINITY) > WaterCautions.IRON_STAINS_MG_PER_L;
    }
}
