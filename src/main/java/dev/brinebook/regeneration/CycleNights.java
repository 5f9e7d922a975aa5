// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.regeneration;

/** The nights of a household's cycles under a delayed meter, and the use before them: what {@link MeterRates} reads for any count. */
interface CycleNights {

    /** Expected days of a class of a cycle that starts in a state, by the lattice points used before them; not to be changed. */
    double[] before(int state, int of);

    /** The cycles, where the controller calls at a lattice point. */
    Cycles cycles(int point);
}
