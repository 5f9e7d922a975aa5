// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.field;

import dev.brinebook.guard.Guard;

/** Raw water that reaches the tap past the softener. */
public final class RawWaterShare {

    private RawWaterShare() {
    }

    /**
     * Share of raw water at the tap, by three tests of the same minute.
     *
     * <pre>b = (H_tap − H_out) / (H_raw − H_out)</pre>
     *
     * <p>H hardness at tap, softener outlet and before the softener, any one unit.
     * Validity: H_raw above H_out.
     * Source: by balance.
     * Deviation: none.
     */
    public static double of(double rawHardness, double outletHardness, double tapHardness) {
        return (tapHardness - outletHardness) / Guard.positive(rawHardness - outletHardness, "rawHardness - outletHardness");
    }

    /** Hardness of soft water is far enough below that of raw water for a share to mean something: by twice what both may be off. */
    public static boolean isKnown(double rawHardness, double outletHardness, double rawUncertainty, double outletUncertainty) {
        return rawHardness - outletHardness > 2 * Math.sqrt(3) * (rawUncertainty + outletUncertainty);
    }
}
