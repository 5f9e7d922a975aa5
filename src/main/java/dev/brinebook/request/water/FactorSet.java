// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.water;

import dev.brinebook.water.CompensationFactors;

/** The named factor sets for iron and manganese. */
public enum FactorSet {
    STOICHIOMETRIC(CompensationFactors.STOICHIOMETRIC),
    LIGHT(CompensationFactors.LIGHT),
    MODERATE(CompensationFactors.MODERATE),
    STANDARD(CompensationFactors.STANDARD),
    CONSERVATIVE(CompensationFactors.CONSERVATIVE),
    OWN(null);

    private final CompensationFactors factors;

    FactorSet(CompensationFactors factors) {
        this.factors = factors;
    }

    /** The factors of a named set; null for own factors. */
    public CompensationFactors factors() {
        return factors;
    }
}
