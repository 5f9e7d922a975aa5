// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

import dev.brinebook.guard.Guard;

/**
 * Water of the two rinses as a manual for plants has it, in bed volumes.
 *
 * <p>Source: [UFC-3-240-13FN] slow rinse 7.5 to 22.5 gal/ft³, fast rinse 35 to 100 gal/ft³. The manual counts 7.5 US
 * gallons to the cubic foot where there are 7.4805: its 7.5 to 22.5 are one to three bed volumes. A household's fast rinse
 * is shorter, see {@link dev.brinebook.resin.Brining#ASSUMED_FAST_RINSE_BED_VOLUMES}.
 */
public enum RinseGuide {
    SLOW(7.5, 22.5),
    FAST(35, 100);

    private static final double GALLONS_PER_CUBIC_FOOT = 7.5;

    private final double minGallonsPerCubicFoot;
    private final double maxGallonsPerCubicFoot;

    RinseGuide(double minGallonsPerCubicFoot, double maxGallonsPerCubicFoot) {
        this.minGallonsPerCubicFoot = minGallonsPerCubicFoot;
        this.maxGallonsPerCubicFoot = maxGallonsPerCubicFoot;
    }

    public double minBedVolumes() {
        return minGallonsPerCubicFoot / GALLONS_PER_CUBIC_FOOT;
    }

    public double maxBedVolumes() {
        return maxGallonsPerCubicFoot / GALLONS_PER_CUBIC_FOOT;
    }

    /** Whether {@code bedVolumes} of rinse lie inside; a hair outside, from a division, still does. */
    public boolean includes(double bedVolumes) {
        return Guard.isWithin(bedVolumes, minBedVolumes(), maxBedVolumes());
    }
}
