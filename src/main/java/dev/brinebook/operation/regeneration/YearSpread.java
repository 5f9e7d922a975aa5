// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.regeneration;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.regeneration.Spread;
import java.math.BigDecimal;

@SchemaDescription("Distribution of a number over the simulated years.")
public record YearSpread(
        @Property(value = "Mean of the simulated years.", min = 0, example = "90.4") BigDecimal mean,
        @Property(value = "Standard error of the mean.", min = 0, example = "0.1")
        BigDecimal standardError,
        @Property(value = "Quantile at 5 %.", min = 0, example = "87") BigDecimal percentile5,
        @Property(value = "Median.", min = 0, example = "90") BigDecimal median,
        @Property(value = "Quantile at 95 %.", min = 0, example = "94") BigDecimal percentile95) {

    static YearSpread of(Spread spread) {
        return new YearSpread(Rounding.answer(spread.mean()), Rounding.answer(spread.standardError()),
                Rounding.answer(spread.percentile5()), Rounding.answer(spread.median()),
                Rounding.answer(spread.percentile95()));
    }
}
