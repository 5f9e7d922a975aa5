// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.household;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.household.GammaFit;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.text.Message;
import java.math.BigDecimal;

@SchemaDescription("Goodness of fit of a gamma distribution to the days.")
public record UseFitAnswer(
        @Property(value = "The Anderson-Darling statistic: distance between the days and the fitted distribution.",
                min = 0, example = "0.412") BigDecimal andersonDarling,
        @Property("good, doubtful or poor: days simulated from the fitted gamma distribution exceed the "
                + "statistic more than 1 time in 20, more than 1 time in 100, or less often.") GammaFit.Verdict verdict,
        @Property(value = "The same as a sentence.", example = "\"A gamma distribution describes the days well.\"") Message message) {

    static UseFitAnswer of(double statistic, double shape) {
        GammaFit.Verdict verdict = GammaFit.verdict(statistic, shape);
        return new UseFitAnswer(Rounding.answer(statistic), verdict, switch (verdict) {
            case GOOD -> Message.of("useFit.gammaDistributionDescribesDays");
            case DOUBTFUL -> Message.of("useFit.gammaDistributionDescribesDaysRoughly");
            case POOR -> Message.of("useFit.gammaDistributionDoesDescribe");
        });
    }
}
