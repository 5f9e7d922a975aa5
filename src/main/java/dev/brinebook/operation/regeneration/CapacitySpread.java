// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.CapacityQuantity;
import dev.brinebook.regeneration.Spread;

@SchemaDescription("Distribution of a capacity over the simulated years.")
public record CapacitySpread(
        @Property("Mean of the simulated years.") CapacityQuantity mean,
        @Property("Standard error of the mean.") CapacityQuantity standardError,
        @Property("Quantile at 5 %.") CapacityQuantity percentile5,
        @Property("Median.") CapacityQuantity median,
        @Property("Quantile at 95 %.") CapacityQuantity percentile95) {

    /** The spread, from grams as CaCO3. */
    static CapacitySpread of(Spread spread, AnswerUnits units) {
        return new CapacitySpread(units.capacity(spread.mean()), units.capacity(spread.standardError()),
                units.capacity(spread.percentile5()), units.capacity(spread.median()),
                units.capacity(spread.percentile95()));
    }
}
