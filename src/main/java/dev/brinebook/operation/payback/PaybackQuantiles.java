// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.payback;

import dev.brinebook.api.OptionalResultAnswer;
import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.guard.NoResultReason;
import dev.brinebook.guard.OptionalResult;
import dev.brinebook.payback.UncertainWorth.Quantiles;

@SchemaDescription("Quantiles of the simple payback over the simulated cases, in years. 0 if there is no extra first cost.")
public record PaybackQuantiles(
        @Property("Quantile at 5 %.") OptionalResultAnswer percentile5,
        @Property("Quantile at 25 %.") OptionalResultAnswer percentile25,
        @Property("Median.") OptionalResultAnswer median,
        @Property("Quantile at 75 %.") OptionalResultAnswer percentile75,
        @Property("Quantile at 95 %.") OptionalResultAnswer percentile95) {

    static PaybackQuantiles of(Quantiles years) {
        return new PaybackQuantiles(at(years, 0.05), at(years, 0.25), at(years, 0.5), at(years, 0.75), at(years, 0.95));
    }

    private static OptionalResultAnswer at(Quantiles years, double share) {
        double value = years.at(share);
        return OptionalResultAnswer.of(value < Double.POSITIVE_INFINITY ? OptionalResult.of(value)
                : OptionalResult.none(NoResultReason.NOTHING_SAVED), 1);
    }
}
