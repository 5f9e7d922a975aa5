// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.softener;

/**
 * How far a setting may differ from the one to set without being changed, as shares: steps of the setting and of the table, whole
 * minutes, and brine that is not quite saturated.
 *
 * @param doseAboveShare a dose above the one to set
 * @param refillShare a refill beside the dose
 * @param capacityAboveShare a capacity above the real one
 * @param capacityBelowShare a capacity below it
 * @param reserveAboveShare a reserve above the smallest that serves, and one step more
 * @param hardnessMarginGpg grains per gallon above the hardness to set
 * @param hardnessByTest whether a hardness that leaves out the uncertainty of the test stays
 */
record Slack(double doseAboveShare, double refillShare, double capacityAboveShare, double capacityBelowShare,
        double reserveAboveShare, double hardnessMarginGpg, boolean hardnessByTest) {

    /** A setting that comes back with the digits of an answer is still the same. */
    static final double ROUNDING_SHARE = 1e-3;
    static final Slack ASSUMED = new Slack(0.10, 0.08, 0.02, 0.10, 0.50, 1, true);
    /** Where the standard is missed with what {@link #ASSUMED} would leave. */
    static final Slack NONE = new Slack(ROUNDING_SHARE, 0.03, ROUNDING_SHARE, ROUNDING_SHARE, ROUNDING_SHARE, ROUNDING_SHARE, false);
}
