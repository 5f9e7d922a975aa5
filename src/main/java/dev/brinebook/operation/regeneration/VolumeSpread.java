// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.api.quantity.AnswerUnits;
import dev.brinebook.api.quantity.VolumeQuantity;
import dev.brinebook.regeneration.Spread;

@SchemaDescription("Distribution of a volume over the simulated years.")
public record VolumeSpread(
        @Property("Mean of the simulated years.") VolumeQuantity mean,
        @Property("Standard error of the mean.") VolumeQuantity standardError,
        @Property("Quantile at 5 %.") VolumeQuantity percentile5,
        @Property("Median.") VolumeQuantity median,
        @Property("Quantile at 95 %.") VolumeQuantity percentile95) {

    /** The spread, from litres. */
    static VolumeSpread of(Spread spread, AnswerUnits units) {
        return new VolumeSpread(units.volume(spread.mean()), units.volume(spread.standardError()),
                units.volume(spread.percentile5()), units.volume(spread.median()),
                units.volume(spread.percentile95()));
    }
}
