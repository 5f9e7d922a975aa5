// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

/**
 * Exchange equilibrium between resin and water in one stage: one unknown, r = y_Na/x_Na, fixes how every ion divides.
 *
 * <p>Arrays of ions are in the order calcium, magnesium, sodium, potassium. Nothing is allocated: a column asks this some
 * ten thousand times.
 */
final class StageEquilibrium {

    static final int CALCIUM = 0;
    static final int MAGNESIUM = 1;
    static final int SODIUM = 2;
    static final int POTASSIUM = 3;
    static final int IONS = 4;

    private static final int MAX_ITERATIONS = 200;
    /** Relative step after which the error is its third power or so, 1e-10. */
    private static final double LAST_STEP = 4e-4;

    private final double sites;
    private final double calcium;
    private final double magnesium;
    private final double potassium;

    StageEquilibrium(Resin resin) {
        sites = resin.totalEquivalentsPerLitre();
        calcium = resin.selectivity().calcium() * sites * sites;
        magnesium = resin.selectivity().magnesium() * sites * sites;
        potassium = resin.selectivity().potassium() * sites;
    }

    /**
     * The ratio r of a stage with given ions in it.
     *
     * <pre>
     * Σ x = T_Na/(q r + B) + T_K/(q K_K r + B) + Σ T_i/(q k_i r² + B) = 1,  k_i = K_i q / C,  B = C · L
     * </pre>
     *
     * <p>T equivalents of an ion per litre of stage; q sites, eq/L; K {@link Selectivity}; C strength of the water, eq/L; L
     * litres of water per litre of stage. The sum falls all the way from more than 1 to 0, so a step of Halley's method that
     * leaves the bracket is halved and the root is always found.
     * Validity: Σ T = q + B, not all zero.
     * Source: [BONNER-SMITH] for the constants; the equilibrium by its definition in {@link Selectivity}.
     * Deviation: concentrations are used for activities.
     */
    double ratio(double[] supply, double strength, double litres, double guess) {
        double b = strength * litres;
        double divalentCalcium = calcium / strength;
        double divalentMagnesium = magnesium / strength;
        double low = 0;
        double high = Double.POSITIVE_INFINITY;
        double r = guess;
        for (int n = 0; n < MAX_ITERATIONS; n++) {
            double perCalcium = 1 / (divalentCalcium * r * r + b);
            double perMagnesium = 1 / (divalentMagnesium * r * r + b);
            double perSodium = 1 / (sites * r + b);
            double perPotassium = 1 / (potassium * r + b);
            double xCalcium = supply[CALCIUM] * perCalcium;
            double xMagnesium = supply[MAGNESIUM] * perMagnesium;
            double xSodium = supply[SODIUM] * perSodium;
            double xPotassium = supply[POTASSIUM] * perPotassium;
            double excess = xCalcium + xMagnesium + xSodium + xPotassium - 1;
            double fallCalcium = divalentCalcium * xCalcium * perCalcium;
            double fallMagnesium = divalentMagnesium * xMagnesium * perMagnesium;
            double fallSodium = sites * xSodium * perSodium;
            double fallPotassium = potassium * xPotassium * perPotassium;
            double slope = -2 * r * (fallCalcium + fallMagnesium) - fallSodium - fallPotassium;
            double halfBend = fallCalcium * (3 - 4 * b * perCalcium) + fallMagnesium * (3 - 4 * b * perMagnesium)
                    + fallSodium * sites * perSodium + fallPotassium * potassium * perPotassium;
            if (excess > 0) {
                low = r;
            } else {
                high = r;
            }
            double next = r - excess * slope / (slope * slope - excess * halfBend);
            if (Math.abs(next - r) <= LAST_STEP * r) {
                return next;
            }
            r = next > low && next < high ? next : high == Double.POSITIVE_INFINITY ? 2 * r : 0.5 * (low + high);
        }
        throw new IllegalStateException("no exchange equilibrium after " + MAX_ITERATIONS + " steps, ratio " + r);
    }

    /**
     * Shares the ions of a stage out between its resin and its water.
     *
     * @param ratio of {@link #ratio} for the same supply, strength and litres
     * @param water where to put equivalents per litre of water, the first ion at {@code first}, each other {@code stride} on
     */
    void share(double[] supply, double strength, double litres, double ratio, double[] water, int first, int stride) {
        double b = strength * litres;
        double square = ratio * ratio / strength;
        water[first] = supply[CALCIUM] * strength / (calcium * square + b);
        water[first + MAGNESIUM * stride] = supply[MAGNESIUM] * strength / (magnesium * square + b);
        water[first + SODIUM * stride] = supply[SODIUM] * strength / (sites * ratio + b);
        water[first + POTASSIUM * stride] = supply[POTASSIUM] * strength / (potassium * ratio + b);
    }

    /** Litres of water that hold as much of an ion as a litre of resin, at a ratio and a strength of the water. */
    double partition(int ion, double ratio, double strength) {
        return switch (ion) {
            case CALCIUM -> calcium * ratio * ratio / (strength * strength);
            case MAGNESIUM -> magnesium * ratio * ratio / (strength * strength);
            case SODIUM -> sites * ratio / strength;
            default -> potassium * ratio / strength;
        };
    }

    /**
     * The ratio r of resin that has come to rest with a water.
     *
     * <pre>(k_Ca x_Ca + k_Mg x_Mg) r² + (x_Na + K_K x_K) r = 1</pre>
     *
     * <p>Symbols as above, x shares of the equivalents in the water: all shares on the resin make one.
     * Validity: any water but pure.
     * Source: as above.
     * Deviation: as above.
     */
    double ratioIn(double[] water, double strength) {
        double a = (calcium * water[CALCIUM] + magnesium * water[MAGNESIUM]) / (sites * strength * strength);
        double b = (water[SODIUM] + potassium / sites * water[POTASSIUM]) / strength;
        return 2 / (b + Math.sqrt(b * b + 4 * a));
    }
}
