// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.commissioning;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.Exact;

/** Chlorine bleach for the first brine, where the maker's manual does not say otherwise. */
public final class ResinSanitising {

    /** Bleach of the usual strength per cubic foot of resin: 1.2 US fluid ounces. Source: [CP-RESIN-SANITISING]. */
    public static final double LITRES_PER_CUBIC_FOOT = 1.2 * Exact.US_GALLON_LITRES / 128;
    /** The strength that this is for, percent. Source: [CP-RESIN-SANITISING]. */
    public static final double USUAL_PERCENT = 5.25;
    public static final double MIN_PERCENT = 1;
    public static final double MAX_PERCENT = 15;
    /** Contact of the bleach with the resin, minutes. Source: [CP-RESIN-SANITISING]. */
    public static final double CONTACT_MINUTES = 60;

    private static final double BLEACH_KILOGRAMS_PER_LITRE = 1.08;
    /** Chlorine in sodium hypochlorite, 70.906 / 74.44. */
    private static final double CHLORINE_SHARE = 0.953;

    private ResinSanitising() {
    }

    /**
     * Bleach for a bed.
     *
     * <pre>V = 1.2 fl oz · V_R / 1 ft³ · 5.25 / p</pre>
     *
     * <p>V and V_R litres; p percent of sodium hypochlorite.
     * Validity: plain bleach, no scent, no thickener.
     * Source: [CP-RESIN-SANITISING].
     * Deviation: none.
     */
    public static double bleachLitres(double resinLitres, double percent) {
        return LITRES_PER_CUBIC_FOOT * Guard.positive(resinLitres, "resinLitres") / Exact.CUBIC_FOOT_LITRES * USUAL_PERCENT
                / Guard.within(percent, MIN_PERCENT, MAX_PERCENT, "percent");
    }

    /**
     * Chlorine that it makes in water.
     *
     * <pre>c = 10⁶ V · 1.08 · p/100 · 0.953 / V_w</pre>
     *
     * <p>c mg/L; V bleach and V_w water, L; 1.08 density of bleach, kg/L; 0.953 chlorine in sodium hypochlorite by weight.
     * Validity: nothing has used it up yet.
     * Source: by definition; the density is of [CP-RESIN-SANITISING].
     * Deviation: none.
     */
    public static double chlorineMgPerL(double bleachLitres, double percent, double waterLitres) {
        return 1e6 * bleachLitres * BLEACH_KILOGRAMS_PER_LITRE * percent / 100 * CHLORINE_SHARE
                / Guard.positive(waterLitres, "waterLitres");
    }
}
