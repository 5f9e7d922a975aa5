// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water;

import dev.brinebook.guard.Guard;

/**
 * A bypass round a softener: raw water mixed into softened water, so that a chosen hardness is left.
 *
 * <p>Hardness is what a test finds, calcium and magnesium, in mg/L as CaCO3. What the resin takes up, the ions that it
 * gives in exchange and the salt of its regenerations all shrink with {@link #resinShare}.
 *
 * @param rawMgPerL hardness of the raw water
 * @param residualMgPerL hardness that the mixed water is to have: from the leakage to below the raw hardness
 * @param leakageMgPerL hardness that passes the resin; 0 in the textbooks
 */
public record Blend(double rawMgPerL, double residualMgPerL, double leakageMgPerL) {

    /** Hardness assumed to pass the resin when none is given, as in [DAVIS-CORNWELL]. */
    public static final double DEFAULT_LEAKAGE_MG_PER_L = 0;

    public Blend {
        Guard.within(rawMgPerL, 0, Hardness.MAX_MG_PER_L, "rawMgPerL");
        Guard.notNegative(leakageMgPerL, "leakageMgPerL");
        if (!isPossible(rawMgPerL, residualMgPerL, leakageMgPerL)) {
            throw new IllegalArgumentException("residualMgPerL must be at least " + leakageMgPerL + " and below "
                    + rawMgPerL + ", was " + residualMgPerL);
        }
    }

    /** Whether a bypass can leave the residual hardness: not less than leaks, and less than the raw water has. */
    public static boolean isPossible(double rawMgPerL, double residualMgPerL, double leakageMgPerL) {
        return residualMgPerL >= leakageMgPerL && residualMgPerL < rawMgPerL;
    }

    /**
     * Share of the water that passes by the softener.
     *
     * <pre>b = (H − L) / (R − L)</pre>
     *
     * <p>b share of the water, 0 to below 1; H residual, R raw hardness and L leakage of the resin, mg/L as CaCO3: the
     * hardness of the mixture, b R + (1 − b) L, solved for b.
     * Validity: L ≤ H &lt; R; the two streams are mixed wholly and the bypass keeps its share at every flow.
     * Source: [DAVIS-CORNWELL] split treatment by a bypass, with L = 0.
     * Deviation: the leakage, which the textbook takes as none.
     */
    public double bypassShare() {
        return (residualMgPerL - leakageMgPerL) / (rawMgPerL - leakageMgPerL);
    }

    /**
     * Share of the water that passes the resin, and the factor of all that softening takes and adds.
     *
     * <pre>1 − b = (R − H) / (R − L)</pre>
     *
     * <p>Symbols, validity, source and deviation: as {@link #bypassShare}. Never 0, however little is softened.
     */
    public double resinShare() {
        return (rawMgPerL - residualMgPerL) / (rawMgPerL - leakageMgPerL);
    }

    /** What the mixed water has of a substance, from what it is in the raw and in the softened water. */
    public double mixed(double raw, double softened) {
        return bypassShare() * raw + resinShare() * softened;
    }
}
