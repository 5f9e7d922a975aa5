// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.water.report;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * Why a water is tested: what is seen, tasted and smelled, or who drinks it. The tests that answer it come first. Source:
 * [CP-WATER-TESTS] for complaints, [CDC-WELL-TESTS] for bacteria and nitrate.
 */
public enum TestReason {
    RED_STAINS(Parameter.IRON, Parameter.IRON_DISSOLVED, Parameter.PH),
    BLACK_STAINS(Parameter.MANGANESE, Parameter.HYDROGEN_SULFIDE),
    /** Copper of pipes, in water that dissolves it. */
    BLUE_GREEN_STAINS(Parameter.PH, Parameter.ALKALINITY, Parameter.COPPER, Parameter.LEAD),
    ROTTEN_EGG_SMELL(Parameter.HYDROGEN_SULFIDE, Parameter.SULFATE),
    SALTY_TASTE(Parameter.CHLORIDE, Parameter.SODIUM, Parameter.DISSOLVED_SOLIDS, Parameter.NITRATE),
    SCALE(Parameter.HARDNESS, Parameter.ALKALINITY, Parameter.PH),
    /** The colour of tea, which does not clear. */
    YELLOW_COLOUR(Parameter.TANNIN, Parameter.COLOUR, Parameter.IRON),
    CLOUDY(Parameter.TURBIDITY),
    FLOOD_OR_REPAIR(Parameter.COLIFORM, Parameter.E_COLI, Parameter.NITRATE, Parameter.TURBIDITY),
    ILLNESS(Parameter.COLIFORM, Parameter.E_COLI, Parameter.NITRATE, Parameter.TURBIDITY),
    INFANT(Parameter.NITRATE, Parameter.NITRITE, Parameter.COLIFORM, Parameter.E_COLI, Parameter.MANGANESE, Parameter.LEAD,
            Parameter.ARSENIC),
    PREGNANCY(Parameter.NITRATE, Parameter.NITRITE, Parameter.COLIFORM, Parameter.E_COLI, Parameter.MANGANESE, Parameter.LEAD,
            Parameter.ARSENIC),
    LOW_SODIUM_DIET(Parameter.SODIUM);

    private final Set<Parameter> tests;

    TestReason(Parameter first, Parameter... others) {
        tests = Collections.unmodifiableSet(EnumSet.of(first, others));
    }

    /** The tests that answer it. */
    public Set<Parameter> tests() {
        return tests;
    }
}
