// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.savings;

/** Whether a saving is as promised. */
public enum SavingsVerdict {
    /** It is, with the probability asked for. */
    CONFIRMED,
    /** It is not, with that probability. */
    NOT_CONFIRMED,
    /** The readings do not say yet. */
    TOO_EARLY,
    /** The readings contradict each other, or less salt made the water harder: they never say. */
    NO_VERDICT;

    /**
     * The verdict.
     *
     * <pre>confirmed if P(s ≥ s0) ≥ p,   not confirmed if P(s &lt; s0) ≥ p,   else too early</pre>
     *
     * <p>s saving, s0 the least that fulfils the promise, p probability. Source: [OWN-ASSUMPTION] for p and s0. Deviation: none.
     */
    public static SavingsVerdict of(SavingsEstimate estimate, SavingsGoal goal) {
        double kept = estimate.probabilityOfAtLeast(goal.leastShare());
        return kept >= goal.confidence() ? CONFIRMED : 1 - kept >= goal.confidence() ? NOT_CONFIRMED : TOO_EARLY;
    }
}
