// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.savings;

import dev.brinebook.guard.Guard;

/**
 * What has to be shown.
 *
 * @param promised share of the salt that was promised to be saved; 0 to show any saving
 * @param tolerated share of the promise that fulfils it
 * @param confidence probability of a verdict
 */
public record SavingsGoal(double promised, double tolerated, double confidence) {

    public static final double MAX_PROMISE = 0.9;
    public static final double ASSUMED_TOLERATED = 0.8;
    public static final double ASSUMED_CONFIDENCE = 0.9;
    public static final double MIN_CONFIDENCE = 0.6;
    public static final double MAX_CONFIDENCE = 0.99;

    public SavingsGoal {
        Guard.within(promised, 0, MAX_PROMISE, "promised");
        Guard.within(tolerated, 0, 1, "tolerated");
        Guard.within(confidence, MIN_CONFIDENCE, MAX_CONFIDENCE, "confidence");
    }

    /** Least saving that fulfils the promise. */
    public double leastShare() {
        return tolerated * promised;
    }
}
