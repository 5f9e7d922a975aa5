// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.quantity.SurfaceFlowUnit;

/** Published bands of backwash velocities, which hold for ordinary temperatures. */
public enum BackwashGuide {
    /** Source: [DAVIS] table 8-2. */
    TEXTBOOK(BackwashEffect.GUIDE_MIN_VELOCITY_METRES_PER_HOUR, BackwashEffect.GUIDE_MAX_VELOCITY_METRES_PER_HOUR, "DAVIS"),
    /** Source: [TEN-STATES] 4.4.2, asked of public plants. */
    PUBLIC_PLANTS(SurfaceFlowUnit.GPM_PER_SQUARE_FOOT.toBase(6), SurfaceFlowUnit.GPM_PER_SQUARE_FOOT.toBase(8),
            "TEN-STATES");

    private final double minMetresPerHour;
    private final double maxMetresPerHour;
    private final String sourceKey;

    BackwashGuide(double minMetresPerHour, double maxMetresPerHour, String sourceKey) {
        this.minMetresPerHour = minMetresPerHour;
        this.maxMetresPerHour = maxMetresPerHour;
        this.sourceKey = sourceKey;
    }

    public double minMetresPerHour() {
        return minMetresPerHour;
    }

    public double maxMetresPerHour() {
        return maxMetresPerHour;
    }

    public String sourceKey() {
        return sourceKey;
    }
}
