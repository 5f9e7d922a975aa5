// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.request.water;

import dev.brinebook.water.CompensationFactors;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/** The named factor sets for iron and manganese. */
public enum FactorSet {
    STOICHIOMETRIC(CompensationFactors.STOICHIOMETRIC),
    LIGHT(CompensationFactors.LIGHT),
    MODERATE(CompensationFactors.MODERATE),
    STANDARD(CompensationFactors.STANDARD),
    CONSERVATIVE(CompensationFactors.CONSERVATIVE),
    OWN(null);

    /** Those that have a name for their factors. */
    public static final Set<FactorSet> NAMED = Collections.unmodifiableSet(EnumSet.complementOf(EnumSet.of(OWN)));

    private final CompensationFactors factors;

    FactorSet(CompensationFactors factors) {
        this.factors = factors;
    }

    /** The factors of a named set; null for own factors. */
    public CompensationFactors factors() {
        return factors;
    }
}
