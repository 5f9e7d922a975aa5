// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.MassQuantity;
import dev.brinebook.regeneration.Spread;

@SchemaDescription("Distribution of a mass over the simulated years.")
public record MassSpread(
        @Property("Mean of the simulated years.") MassQuantity mean,
        @Property("Standard error of the mean.") MassQuantity standardError,
        @Property("Quantile at 5 %.") MassQuantity percentile5,
        @Property("Median.") MassQuantity median,
        @Property("Quantile at 95 %.") MassQuantity percentile95) {

    /** The spread, from grams. */
    static MassSpread of(Spread spread, AnswerUnits units) {
        return new MassSpread(units.mass(spread.mean() / 1000), units.mass(spread.standardError() / 1000),
                units.mass(spread.percentile5() / 1000), units.mass(spread.median() / 1000),
                units.mass(spread.percentile95() / 1000));
    }
}
