// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.resin;

import dev.brinebook.guard.Guard;

/** How hard water holds a falling sphere. */
final class SphereDrag {

    static final double MAX_REYNOLDS_NUMBER = 2e5;

    private SphereDrag() {
    }

    /**
     * Drag coefficient of a smooth sphere.
     *
     * <pre>Cd = 5.4856e9 tanh(4.3774e-9 / Re) + 0.0709 tanh(700.6574 / Re) + 0.3894 tanh(74.1539 / Re)
     *     − 0.1198 tanh(7429.0843 / Re) + 1.7174 tanh(9.9851 / (Re + 2.3384)) + 0.4744</pre>
     *
     * <p>Cd drag over the dynamic pressure on the cross-section; Re Reynolds number of the sphere.
     * Validity: Re above 0 to 2e5; the first term is Stokes' 24 / Re, which alone is left at small Re.
     * Source: [BARATI-2014] the model for Re below 2e5.
     * Deviation: none.
     */
    static double coefficient(double reynoldsNumber) {
        double re = Guard.within(Guard.positive(reynoldsNumber, "reynoldsNumber"), 0, MAX_REYNOLDS_NUMBER,
                "reynoldsNumber");
        return 5.4856e9 * StrictMath.tanh(4.3774e-9 / re) + 0.0709 * StrictMath.tanh(700.6574 / re)
                + 0.3894 * StrictMath.tanh(74.1539 / re) - 0.1198 * StrictMath.tanh(7429.0843 / re)
                + 1.7174 * StrictMath.tanh(9.9851 / (re + 2.3384)) + 0.4744;
    }
}
