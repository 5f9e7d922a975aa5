// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.api.quantity;

import dev.brinebook.api.Explanation;
import dev.brinebook.caution.Caution;
import dev.brinebook.household.Country;
import dev.brinebook.quantity.HardnessUnit;

/** Defaults by country: units, and the rules for drains. */
public final class HomeCountry {

    /** What every request says of its country. */
    public static final String DESCRIPTION = "Country. Sets the default units and the rules for drains.";
    /** What every request says of its units. */
    public static final String FALLBACK = "us in the United States, metric elsewhere";

    private HomeCountry() {
    }

    /** {@code asked}, or those of {@code country}, which may be null. */
    public static AnswerUnits units(AnswerUnits asked, Country country) {
        return asked != null ? asked : Country.orAssumed(country) == Country.UNITED_STATES ? AnswerUnits.US : AnswerUnits.METRIC;
    }

    /** An explanation that says everything in {@code units}, and hardness in the degree of {@code country}, which may be null. */
    public static Explanation explanation(AnswerUnits units, Country country) {
        return units.explanation().statingHardnessIn(units == AnswerUnits.US ? HardnessUnit.GPG : switch (Country.orAssumed(country)) {
            case GERMANY -> HardnessUnit.GERMAN_DEGREE;
            case FRANCE -> HardnessUnit.FRENCH_DEGREE;
            default -> HardnessUnit.MG_PER_L;
        });
    }

    /** The air gap of the drain line by the rules of a country, which may be null. */
    public static Caution airGap(Country country) {
        return Country.orAssumed(country) == Country.UNITED_STATES ? Caution.DRAIN_AIR_GAP : Caution.DRAIN_AIR_GAP_EUROPE;
    }

    /** The country asked for or assumed, for a request without a household; recorded in {@code explanation}. */
    public static Country of(Country asked, Explanation explanation) {
        return explanation.resolve("/country", asked, Country.UNITED_STATES, "OWN-ASSUMPTION");
    }
}
