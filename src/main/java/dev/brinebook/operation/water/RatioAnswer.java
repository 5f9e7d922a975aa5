// SPDX-License-Identifier: Apache-2.0
package dev.brinebook.operation.water;

import dev.brinebook.api.Property;
import dev.brinebook.api.SchemaDescription;
import dev.brinebook.quantity.Rounding;
import dev.brinebook.water.report.RatioCheck;
import dev.brinebook.water.report.Sample;
import java.math.BigDecimal;

@SchemaDescription("Two ways to one number, compared.")
public record RatioAnswer(
        @Property("What is compared.") RatioCheck check,
        @Property(value = "Their ratio.", min = 0, example = "1.05") BigDecimal ratio,
        @Property(value = "Lower end of the range where both are right.", min = 0, example = "0.9") BigDecimal low,
        @Property(value = "Upper end of the range.", min = 0, example = "1.1") BigDecimal high,
        @Property(value = "Whether the ratio is in the range.", example = "true") Boolean holds) {

    static RatioAnswer of(RatioCheck check, Sample sample) {
        return new RatioAnswer(check, Rounding.answer(check.of(sample).orElseThrow()), Rounding.answer(check.low()),
                Rounding.answer(check.high()), check.holds(sample));
    }
}
