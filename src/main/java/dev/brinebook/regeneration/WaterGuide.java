// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;
import dev.brinebook.quantity.Exact;

/** Water that a whole regeneration takes, in bed volumes, as the guides have it. */
public final class WaterGuide {

    /** A household's cubic foot of resin takes 25 to 65 US gallons. Source: [CP-CYCLE]. */
    public static final double MIN_BED_VOLUMES = bedVolumes(25);
    public static final double MAX_BED_VOLUMES = bedVolumes(65);
    /** Public plants take about 80 gal/ft³. Source: [AWWA-ASCE]. */
    public static final double PLANT_BED_VOLUMES = bedVolumes(80);

    private WaterGuide() {
    }

    /** Whether a household's regeneration takes as much water for its resin as is usual. */
    public static boolean isUsual(double bedVolumes) {
        return Guard.isWithin(bedVolumes, MIN_BED_VOLUMES, MAX_BED_VOLUMES);
    }

    /** Bed volumes in {@code gallonsPerCubicFoot}. */
    public static double bedVolumes(double gallonsPerCubicFoot) {
        return gallonsPerCubicFoot * Exact.US_GALLON_LITRES / Exact.CUBIC_FOOT_LITRES;
    }
}
