// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

/**
 * Starts a cycle where the last two are heading, so that a column settles in fewer: the secant rule for many unknowns.
 *
 * <pre>x = g − θ (g − g′),  θ = r·(r − r′) / |r − r′|²,  r = g − b</pre>
 *
 * <p>b and g the bed at the start and the end of the last cycle, primes of the one before, as vectors of what each stage holds.
 * Source: Anderson, Iterative procedures for nonlinear integral equations, Journal of the ACM 12, page 547, 1965; with one cycle kept.
 */
final class CycleAcceleration {

    /** Cycles that a step may go ahead of the last. */
    private static final double MOST_AHEAD = 20;

    private StagedBed began;
    private StagedBed ended;
    private boolean stopped;

    /** No more steps ahead. */
    void stop() {
        stopped = true;
    }

    /**
     * Moves the bed from the end of a cycle to where the cycles are heading.
     *
     * @param bed the bed at the end of the cycle
     * @param start the bed at its start
     * @return whether it is moved: not before there are two cycles that started at rest with the feed water, nor where the step would
     *     go too far
     */
    boolean moveOn(StagedBed bed, StagedBed start) {
        StagedBed lastBegan = began;
        StagedBed lastEnded = ended;
        if (stopped || !start.isAsStrongAs(bed)) {
            return false;
        }
        began = start;
        ended = bed.copy();
        if (lastBegan == null) {
            return false;
        }
        double own = StagedBed.product(ended, began, ended, began);
        double both = StagedBed.product(ended, began, lastEnded, lastBegan);
        double before = StagedBed.product(lastEnded, lastBegan, lastEnded, lastBegan);
        double back = (own - both) / (own - 2 * both + before);
        return back > -MOST_AHEAD && back < 1 && bed.blend(new StagedBed[] {ended, lastEnded}, new double[] {1 - back, back});
    }
}
