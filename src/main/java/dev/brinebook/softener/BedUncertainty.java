// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

import dev.brinebook.guard.Guard;

/**
 * How far what was measured of a softener may be off either way, with 95 %, as shares of it; 0 for what is taken as exact.
 *
 * @param resinShare of the volume of the resin
 * @param saltShare of the salt of a regeneration
 */
public record BedUncertainty(double resinShare, double saltShare) {

    /** Beyond it, a measurement says hardly more than a guess. */
    public static final double MAX_SHARE = 0.5;
    public static final BedUncertainty NONE = new BedUncertainty(0, 0);

    public BedUncertainty {
        Guard.within(resinShare, 0, MAX_SHARE, "resinShare");
        Guard.within(saltShare, 0, MAX_SHARE, "saltShare");
    }

    /** That of the resin alone. */
    public BedUncertainty ofResin() {
        return new BedUncertainty(resinShare, 0);
    }

    /** That of the salt alone. */
    public BedUncertainty ofSalt() {
        return new BedUncertainty(0, saltShare);
    }

    boolean isExact() {
        return resinShare == 0 && saltShare == 0;
    }
}
